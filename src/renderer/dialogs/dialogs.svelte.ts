/** The dialogs that stand open, the last one on top, and the questions they were opened to answer. */
import type { Recovery } from '../../bridge';
import type { PriceEntry } from '../../core/cost/price-entry';
import type { PriceWhat } from '../../core/cost/price-rows';
import type { Problem } from '../../core/problem';
import type { StockSheet } from '../../core/sheets/stock-sheet';
import type { ShelfItem, ShelfKind } from '../../core/shelf/shelf';

export interface FileQuestion {
  readonly title: string;
  /** Words on the button that ends it. */
  readonly action: string;
  /** The same of several files, where several may be chosen. */
  readonly actionOnMany?: string;
  /** Endings of the files shown, without dot; none when a folder is wanted. */
  readonly endings: readonly string[];
  /** A name to save under; undefined to choose what is there. */
  readonly name?: string;
  readonly folderOnly?: boolean;
  /** Where to begin. */
  readonly folder?: string;
}

export interface ChoiceQuestion<T extends string = string> {
  readonly title: string;
  readonly text: string;
  /** What it is about, a line each. */
  readonly lines?: readonly string[];
  /** That which one most likely wants comes first here, and stands last. */
  readonly choices: readonly { readonly value: T; readonly label: string; readonly weight?: 'main' }[];
  /** Things to choose from, listed above the answers. */
  readonly listed?: readonly { readonly value: T; readonly label: string; readonly note?: string }[];
}

/** A new thing of a kind, or one of the shelf to be changed. */
export interface ShelfQuestion {
  readonly kind: ShelfKind;
  readonly item?: ShelfItem;
}

/** A row of the stock to be changed, or a new one, of a board where that is known. */
export interface StockQuestion {
  readonly row?: StockSheet;
  readonly board?: string;
}

/** A row of the price list to be changed, or a new one about something, of a name where that is known. */
export interface PriceQuestion {
  readonly what: PriceWhat;
  readonly name?: string;
  readonly entry?: PriceEntry;
}

export interface Telling {
  readonly title: string;
  readonly text: string;
  readonly problems?: readonly Problem[];
}

/** Which kept work to open, and which to forget. */
export interface RecoveryAnswer {
  readonly open?: string;
  readonly dropped: readonly string[];
}

export type OpenDialog =
  | { readonly kind: 'file'; readonly question: FileQuestion; readonly answer: (paths: readonly string[]) => void }
  | { readonly kind: 'choice'; readonly question: ChoiceQuestion; readonly answer: (value: string | undefined) => void }
  | { readonly kind: 'telling'; readonly telling: Telling; readonly answer: () => void }
  | {
      readonly kind: 'recovery';
      readonly recoveries: readonly Recovery[];
      readonly answer: (answer: RecoveryAnswer) => void;
    }
  | { readonly kind: 'export'; readonly answer: () => void }
  | { readonly kind: 'calibration'; readonly answer: () => void }
  | { readonly kind: 'how-many'; readonly answer: () => void }
  | { readonly kind: 'shelf-item'; readonly question: ShelfQuestion; readonly answer: () => void }
  | { readonly kind: 'stock-row'; readonly question: StockQuestion; readonly answer: () => void }
  | { readonly kind: 'sheet-papers'; readonly answer: () => void }
  | { readonly kind: 'price-row'; readonly question: PriceQuestion; readonly answer: () => void }
  | { readonly kind: 'cost-papers'; readonly answer: () => void }
  | { readonly kind: 'show'; readonly answer: () => void }
  | { readonly kind: 'keys'; readonly answer: () => void };

export class Dialogs {
  open = $state.raw<readonly OpenDialog[]>([]);
  readonly isOpen = $derived(this.open.length > 0);

  async chooseFile(question: FileQuestion): Promise<string | undefined> {
    const [path] = await this.chooseFiles(question);
    return path;
  }

  /** None when the user changed their mind. */
  chooseFiles(question: FileQuestion): Promise<readonly string[]> {
    return this.#ask((answer) => ({ kind: 'file', question, answer }));
  }

  choose<T extends string>(question: ChoiceQuestion<T>): Promise<T | undefined> {
    return this.#ask((answer) => ({ kind: 'choice', question, answer: answer as (value: string | undefined) => void }));
  }

  tell(telling: Telling): Promise<void> {
    return this.#ask<void>((answer) => ({ kind: 'telling', telling, answer: () => answer() }));
  }

  recover(recoveries: readonly Recovery[]): Promise<RecoveryAnswer> {
    return this.#ask((answer) => ({ kind: 'recovery', recoveries, answer }));
  }

  openExport(): Promise<void> {
    return this.#ask<void>((answer) => ({ kind: 'export', answer: () => answer() }));
  }

  openCalibration(): Promise<void> {
    return this.#ask<void>((answer) => ({ kind: 'calibration', answer: () => answer() }));
  }

  openHowMany(): Promise<void> {
    return this.#ask<void>((answer) => ({ kind: 'how-many', answer: () => answer() }));
  }

  openShelfItem(question: ShelfQuestion): Promise<void> {
    return this.#ask<void>((answer) => ({ kind: 'shelf-item', question, answer: () => answer() }));
  }

  openStockRow(question: StockQuestion): Promise<void> {
    return this.#ask<void>((answer) => ({ kind: 'stock-row', question, answer: () => answer() }));
  }

  openSheetPapers(): Promise<void> {
    return this.#ask<void>((answer) => ({ kind: 'sheet-papers', answer: () => answer() }));
  }

  openPriceRow(question: PriceQuestion): Promise<void> {
    return this.#ask<void>((answer) => ({ kind: 'price-row', question, answer: () => answer() }));
  }

  openCostPapers(): Promise<void> {
    return this.#ask<void>((answer) => ({ kind: 'cost-papers', answer: () => answer() }));
  }

  openShow(): Promise<void> {
    return this.#ask<void>((answer) => ({ kind: 'show', answer: () => answer() }));
  }

  openKeys(): Promise<void> {
    return this.#ask<void>((answer) => ({ kind: 'keys', answer: () => answer() }));
  }

  #ask<T>(make: (answer: (value: T) => void) => OpenDialog): Promise<T> {
    return new Promise((resolve) => {
      const dialog: OpenDialog = make((value) => {
        this.open = this.open.filter((each) => each !== dialog);
        resolve(value);
      });
      this.open = [...this.open, dialog];
    });
  }
}
