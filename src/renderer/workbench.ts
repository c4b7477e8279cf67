/** The workbench: what every part of the screen works with, handed down once from the top. */
import { createContext } from 'svelte';
import type { HostClient, HostInfo } from '../bridge';
import type { PriceEntry } from '../core/cost/price-entry';
import type { WrittenCutter } from '../core/job/written-cutter';
import type { StockSheet } from '../core/sheets/stock-sheet';
import type { ShelfItem } from '../core/shelf/shelf';
import type { PictureImageStore } from './canvas/picture-images.svelte';
import type { Stage } from './canvas/stage.svelte';
import type { CostsDesk } from './costs/costs-desk.svelte';
import type { Dialogs } from './dialogs/dialogs.svelte';
import type { KeptList } from './files/kept-list.svelte';
import type { JobFile } from './files/job-file.svelte';
import type { Look } from './session/look.svelte';
import type { Notice } from './session/notice.svelte';
import type { Session } from './session/session.svelte';
import type { SheetsDesk } from './sheets/sheets-desk.svelte';

export interface Workbench {
  readonly host: HostClient;
  readonly info: HostInfo;
  readonly session: Session;
  readonly file: JobFile;
  readonly look: Look;
  readonly stage: Stage;
  readonly images: PictureImageStore;
  readonly cutters: KeptList<WrittenCutter>;
  /** Frames, mouldings, boards, glazing and fixings that the user has. */
  readonly shelf: KeptList<ShelfItem>;
  /** Sheets and remnants that boards are cut from. */
  readonly stock: KeptList<StockSheet>;
  /** What the user asks for boards, work and parts, and by which rules. */
  readonly prices: KeptList<PriceEntry>;
  /** Where sheets are planned. */
  readonly desk: SheetsDesk;
  /** Where costs are reckoned. */
  readonly costs: CostsDesk;
  readonly dialogs: Dialogs;
  readonly notice: Notice;
}

export const [useWorkbench, provideWorkbench] = createContext<Workbench>();
