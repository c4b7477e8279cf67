/** One-dimensional cutting stock: the fewest sticks of one length that give all the lengths asked for. */

/** A length that is wanted so many times; sizes are whole numbers, so that every comparison is exact. */
export interface Wanted {
  readonly size: number;
  readonly count: number;
}

/** How many of each wanted length come from one stick. */
export type Pattern = readonly number[];

/** Longest first; none is longer than the stick. */
export interface StockAsk {
  readonly stick: number;
  readonly wanted: readonly Wanted[];
}

export function sizeOf({ wanted }: StockAsk, pattern: Pattern): number {
  return wanted.reduce((sum, { size }, index) => sum + size * (pattern[index] ?? 0), 0);
}
