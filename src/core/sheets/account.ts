/** Where the board of a sheet goes: pieces, what is kept, waste, and what trimming and the saw take; it adds up exactly. */
import type { Box } from '../geometry/box';
import { GRID, toGrid } from './grid';
import type { PlannedSheet } from './plan';
import { keepingOf, USUAL_KEEP, type KeepRule } from './remnants';

/** Of an area, to a square millimetre: they are counted in whole squares of the grid, which no double holds exactly. */
export const AREA_UNITS = GRID ** 2;

/** Areas in those units. */
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

/**
 * Parts of a whole in so many steps that they add up to exactly these: each is rounded down, and the steps that then lack go
 * where most was lost.
 *
 * @param parts that add up to the whole.
 */
export function apportioned(parts: readonly bigint[], steps: bigint): bigint[] {
  const whole = parts.reduce((sum, part) => sum + part, 0n);
  if (whole === 0n) return parts.map(() => 0n);
  const floors = parts.map((part) => (part * steps) / whole);
  const lost = (index: number) => (parts[index]! * steps) % whole;
  const lacking = Number(steps - floors.reduce((sum, floor) => sum + floor, 0n));
  const byLost = [...parts.keys()].sort((a, b) => (lost(a) === lost(b) ? a - b : lost(b) > lost(a) ? 1 : -1));
  const more = new Set(byLost.slice(0, lacking));
  return floors.map((floor, index) => (more.has(index) ? floor + 1n : floor));
}

/** Square millimetres to twelve decimals: exact for all sides in millionths of a millimetre, so also for every 1/64 in. */
export function squareMmText(area: bigint): string {
  const units = BigInt(AREA_UNITS);
  const decimals = (area * 10n ** 12n + units / 2n) / units;
  const text = decimals.toString().padStart(13, '0');
  const behind = text.slice(-12).replace(/0+$/, '');
  return `${text.slice(0, -12)}${behind === '' ? '' : `.${behind}`}`;
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
