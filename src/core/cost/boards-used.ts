/** What a plan of sheets used of each board, and what of that is one job's: so that several jobs share the sheets they are cut from. */
import type { Size } from '../geometry/box';
import { money, type Money } from '../money';

/** Sheets of one size that were used. */
export interface UsedSheets {
  /** mm. */
  readonly size: Size;
  readonly count: number;
  /** True where they are left over from a sheet that was paid for. */
  readonly isRemnant?: true | undefined;
  /** Of one; nothing of a remnant, undefined where it is not known. */
  readonly price?: Money;
}

export interface BoardUsed {
  readonly board: string;
  readonly sheets: readonly UsedSheets[];
  /** Of the pieces of each job, mm², in the jobs' order. */
  readonly areas: readonly number[];
}

export type BoardsUsed = readonly BoardUsed[];

/** The same as one of the jobs sees it. */
export interface BoardsShare {
  readonly used: BoardsUsed;
  /** Which of the jobs, from 0. */
  readonly job: number;
}

/** The same as plain data that can be sent: amounts as decimals in text. */
export type PlainBoardsUsed = readonly (Omit<BoardUsed, 'sheets'> & {
  readonly sheets: readonly (Omit<UsedSheets, 'price'> & { readonly price?: string | undefined })[];
})[];

export function plainBoards(used: BoardsUsed): PlainBoardsUsed {
  return used.map(({ sheets, ...board }) => ({
    ...board,
    sheets: sheets.map(({ price, ...sheet }) => ({ ...sheet, ...(price ? { price: price.toFixed() } : {}) })),
  }));
}

export function boardsFrom(plain: PlainBoardsUsed): BoardsUsed {
  return plain.map(({ sheets, ...board }) => ({
    ...board,
    sheets: sheets.map(({ price, ...sheet }) => ({
      ...sheet,
      ...(price === undefined ? {} : { price: money(price) }),
    })),
  }));
}
