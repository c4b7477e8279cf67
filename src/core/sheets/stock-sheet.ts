/** What the list of stock says of one size of one board: how many there are, what one costs, and how it is cut. */
import type { Money } from '../money';

export const STOCK_KINDS = ['sheet', 'remnant'] as const;

/** Along which side of the sheet, as it is listed, grain or pattern runs. */
export const GRAINS = ['none', 'width', 'height'] as const;
export type Grain = (typeof GRAINS)[number];

/** One row. */
export interface StockSheet {
  /** What jobs call it. */
  readonly board: string;
  readonly kind: (typeof STOCK_KINDS)[number];
  /** mm. */
  readonly width: number;
  readonly height: number;
  /** Undefined: as many as are wanted. */
  readonly count?: number;
  /** Of one; undefined: unknown. */
  readonly price?: Money;
  /** What one cut takes away of this board, mm; undefined: as is said for all. */
  readonly kerf?: number;
  /** Taken off a new sheet all round, mm; undefined: as is said for all. */
  readonly trim?: number;
  readonly grain?: Grain;
  readonly note?: string;
}

/** By which rows are told apart: one board, kind and size is one row. Lengths that were read in another unit are the same. */
export function stockName({ board, kind, width, height, grain }: StockSheet): string {
  const side = (mm: number) => String(Number(mm.toFixed(4)));
  return [board.trim().toLowerCase(), kind, side(width), side(height), grain ?? 'none'].join(' | ');
}
