/** The desk on which costs are reckoned: by which prices, of which jobs, and what comes out. */
import type { BoardsUsed } from '../../core/cost/boards-used';
import type { CostWay } from '../../core/cost/compare';
import { makeCosts, type CostsMade } from '../../core/cost/make-costs';
import { planBoards } from '../../core/cost/plan-boards';
import { boardsOf } from '../../core/cost/planned-boards';
import type { PriceEntry } from '../../core/cost/price-entry';
import { understandPrices } from '../../core/cost/read-prices';
import type { LaidJob } from '../../core/pieces/pieces';
import { counted } from '../../core/phrases';
import type { Problem, Result } from '../../core/problem';
import { ofKind, type Shelf } from '../../core/shelf/shelf';
import type { BoardAsk } from '../../core/sheets/board-asks';
import type { Look } from '../session/look.svelte';
import type { Session } from '../session/session.svelte';
import type { SheetsDesk } from '../sheets/sheets-desk.svelte';

interface Sources {
  readonly session: Session;
  readonly look: Look;
  readonly desk: SheetsDesk;
  readonly shelf: () => Shelf;
  readonly prices: () => readonly PriceEntry[];
}

/** A job of another file, beside the one on the screen. */
export interface CostJob {
  readonly path: string;
  readonly title: string;
  /** The file's text, and what it says; undefined while it can't be read. */
  readonly read?: { readonly text: string; readonly laid: LaidJob };
  /** Why not, in words. */
  readonly wrong?: string;
}

/** Said where there is no other job yet. */
const ALONE: Readonly<Partial<Record<CostWay, string>>> = {
  together: 'Add another job, and each has its cost sheet here, with the sum of all.',
  compared: 'Add another job, and they stand here side by side, line by line.',
};

export class CostsDesk {
  how = $state<CostWay>('by itself');
  /** Of which the frame to size is made; undefined: that which is deep enough and costs least. */
  moulding = $state<string>();
  others = $state.raw<readonly CostJob[]>([]);

  constructor(private readonly from: Sources) {}

  readonly prices = $derived.by(() => understandPrices(this.from.prices()));
  /** The moulding that is wanted, as long as the shelf has it. */
  readonly chosenMoulding = $derived.by(() => {
    const isThere = ofKind(this.from.shelf(), 'moulding').some(({ name }) => name === this.moulding);
    return isThere ? this.moulding : undefined;
  });
  readonly beside = $derived(this.others.flatMap(({ read }) => read ?? []));
  /** Why nothing can be reckoned, in words; undefined where it can, or where the price list is why. */
  readonly notMade = $derived.by(() => {
    const { session } = this.from;
    if (!session.picture || session.picture.stale || (this.how !== 'against custom' && !session.plan)) {
      return 'The job on the screen has errors, listed at the foot of the window; mend them first.';
    }
    if (this.beside.length === 0) return ALONE[this.how];
    return undefined;
  });
  /** All that are told, that on the screen first. */
  readonly #jobs = $derived.by<readonly LaidJob[]>(() => {
    const { picture } = this.from.session;
    return [...(picture ? [picture] : []), ...(this.how === 'by itself' ? [] : this.beside.map(({ laid }) => laid))];
  });
  /** Undefined while there is nothing to reckon with. */
  readonly costs = $derived.by<Result<CostsMade> | undefined>(() => {
    const picture = this.from.session.picture;
    if (!this.prices.ok || this.notMade !== undefined || !picture) return undefined;
    const given = { shelf: this.from.shelf(), prices: this.prices.value };
    const { how } = this;
    if (how === 'against custom') return makeCosts({ ...given, how, job: picture.job, moulding: this.chosenMoulding });
    return makeCosts({ ...given, how, jobs: this.#jobs, boards: this.boards });
  });
  readonly made = $derived(this.costs?.ok ? this.costs.value : undefined);
  readonly problems = $derived<readonly Problem[]>(this.costs?.problems ?? []);

  /** True where what the job pays of its sheets is told by the plan of the sheets. */
  readonly #isPlanned = $derived.by(() => {
    const { desk } = this.from;
    const { slots } = desk.planning;
    const { asks } = desk.pinned;
    const isAsked = (now: BoardAsk, index: number) => {
      const slot = slots[index];
      if (!slot?.planned || slot.isOld) return false;
      // A plan that is used stays, though the stock it was made for is no longer what it was.
      return desk.used
        ? slot.asked.board === now.board && JSON.stringify(slot.asked.ask.pieces) === JSON.stringify(now.ask.pieces)
        : slot.text === JSON.stringify(now);
    };
    return desk.notPlanned === undefined && slots.length === asks.length && asks.length > 0 && asks.every(isAsked);
  });
  readonly #bySheet = $derived(this.prices.ok && this.prices.value.board.charge === 'by sheet used');
  /** Kept while prices change, since to look for a plan takes a while. */
  readonly #together = $derived.by(() => {
    if (this.how !== 'together' || !this.#bySheet || this.notMade !== undefined) return undefined;
    return planBoards(this.#jobs, this.from.shelf());
  });
  /** Of variants only one is made, so that none shares sheets with another. */
  readonly boards = $derived.by<BoardsUsed | undefined>(() => {
    const { session, desk } = this.from;
    if (this.how === 'together') return this.#together;
    if (this.how !== 'by itself' || !this.#bySheet || !this.#isPlanned || !session.picture) return undefined;
    return boardsOf(desk.boards.flatMap((one) => one ?? []), session.picture); // prettier-ignore
  });
  /** What boards that are charged by sheets rest on, in words. */
  readonly boardWords = $derived.by(() => {
    const { look } = this.from;
    if (!this.#bySheet || !this.made) return undefined;
    if (this.how === 'together') return 'Boards are charged by the sheets that the jobs share: new ones of your shelf, cut with a knife.'; // prettier-ignore
    if (!this.boards) {
      const alone = 'Boards are charged by the whole sheets that a job takes by itself.';
      return this.how === 'by itself' ? `${alone} Once its sheets are planned in the view Sheets, by its share of that plan.` : alone; // prettier-ignore
    }
    const others = look.sheetJobs.filter(({ laid }) => laid).length;
    const beside = [
      ...(look.copies > 1 ? [`${look.copies - 1} more ${look.copies === 2 ? 'copy' : 'copies'}`] : []),
      ...(others > 0 ? [counted(others, 'other job')] : []),
    ];
    const shared = beside.length === 0 ? 'of this job alone' : `of this job with ${beside.join(' and ')}`;
    return `Boards are charged by the plan in the view Sheets, ${shared}.`;
  });
}
