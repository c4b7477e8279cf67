/** Where the board of a sheet goes: pieces, what is kept, waste, and what trimming and the saw take; it adds up exactly. */
import type { Box } from '../geometry/box';
import { toGrid } from './grid';
import type { PlannedSheet } from './plan';
import { keepingOf, USUAL_KEEP, type KeepRule } from './remnants';

/** Areas in whole squares of the grid, which no double holds exactly. */
export interface SheetAccount {
  readonly sheet: bigint;
  readonly pieces: bigint;
  readonly kept: bigint;
  readonly waste: bigint;
  /** Trimmed edges and sawdust. */
  readonly cuts: bigint;
}

/** `sheet = pieces + kept + waste + cuts`, since the last is what the others leave; with a knife and no trim it is nothing. */
export function accountOf({ stock, pieces, left }: PlannedSheet, rule: KeepRule = USUAL_KEEP): SheetAccount {
  const sheet = BigInt(toGrid(stock.width)) * BigInt(toGrid(stock.height));
  const taken = sumOf(pieces.map(({ box }) => box));
  const kept = sumOf(left.filter((box) => keepingOf(box, rule) !== 'waste'));
  const waste = sumOf(left.filter((box) => keepingOf(box, rule) === 'waste'));
  return { sheet, pieces: taken, kept, waste, cuts: sheet - taken - kept - waste };
}

export function totalOf(accounts: readonly SheetAccount[]): SheetAccount {
  const of = (key: keyof SheetAccount) => accounts.reduce((sum, account) => sum + account[key], 0n);
  return { sheet: of('sheet'), pieces: of('pieces'), kept: of('kept'), waste: of('waste'), cuts: of('cuts') };
}

/** Of the first in the second, to a ten-thousandth. */
export function shareOf(part: bigint, whole: bigint): number {
  return whole === 0n ? 0 : Number((part * 10_000n) / whole) / 10_000;
}

function sumOf(boxes: readonly Box[]): bigint {
  return boxes.reduce(
    (sum, box) => sum + BigInt(toGrid(box.right) - toGrid(box.left)) * BigInt(toGrid(box.top) - toGrid(box.bottom)),
    0n,
  );
}
