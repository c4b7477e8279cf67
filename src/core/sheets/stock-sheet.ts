/** What the list of stock says of one size of one board: how many there are, what one costs, and how it is cut. */
import type { Size } from '../geometry/box';
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
export function stockName(sheet: StockSheet): string {
  const { kind, width, height, grain = 'none' } = sheet;
  const side = (mm: number) => String(Math.floor(mm * 1e4 + ROUND_UP) / 1e4);
  return [plainName(sheet), kind, side(width), side(height), grain].join(' | ');
}

/**
 * From which part of a ten-thousandth of a millimetre on it is rounded up: at no part that halves of 1/64 in or decimals end
 * on, since their last bits would fall on either side.
 */
const ROUND_UP = 1 - 0.2937;

/** How many there are; undefined: as many as are wanted. Of a remnant there is one unless more are counted. */
export function countOf({ kind, count }: StockSheet): number | undefined {
  return count ?? (kind === 'remnant' ? 1 : undefined);
}

/** A sheet held so that its grain runs upright, as it does in every piece that hangs. */
export function grainUp({ width, height, grain }: StockSheet): Size {
  return grain === 'width' ? { width: height, height: width } : { width, height };
}

/** Whether both rows tell of the very same thing, which may be listed either way round. */
export function isSameStock(one: StockSheet, other: StockSheet): boolean {
  if (plainName(one) !== plainName(other) || one.kind !== other.kind || hasGrain(one) !== hasGrain(other)) return false;
  const [a, b] = [grainUp(one), grainUp(other)];
  const near = (x: number, y: number) => Math.abs(x - y) < NEAR;
  const asListed = near(a.width, b.width) && near(a.height, b.height);
  return asListed || (!hasGrain(one) && near(a.width, b.height) && near(a.height, b.width));
}

/** No board is measured finer, mm. */
const NEAR = 1e-3;

export function hasGrain({ grain = 'none' }: StockSheet): boolean {
  return grain !== 'none';
}

/** The board's name without regard to capitals. */
export function plainName({ board }: StockSheet): string {
  return board.trim().toLowerCase();
}
