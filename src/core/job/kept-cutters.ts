/** How cutters of a kept list are told apart, and when two of them measure the same. */
import type { KeptThings } from '../kept-list';
import { readCutter } from './read-cutting';
import { Reader } from './reader';
import type { WrittenCutter } from './written-cutter';

export type Cutters = readonly WrittenCutter[];

export const KEPT_CUTTERS: KeptThings<WrittenCutter> = { nameOf: ({ name }) => name, isSame: sameCutter };

/** True where both measure the same, however it is written; lengths must say their units. */
export function sameCutter(one: WrittenCutter, other: WrittenCutter): boolean {
  const [a, b] = [measuresOf(one), measuresOf(other)];
  return a !== undefined && b !== undefined ? a === b : JSON.stringify(one) === JSON.stringify(other);
}

/** Finer than any of these can be set or measured, mm: keeps the last bits of 1/32 in and 0.79375 mm from differing. */
const SAME = 1e-6;

function measuresOf(written: WrittenCutter): string | undefined {
  const reader = new Reader('mm', { in: 64, mm: 0.1 });
  const read = readCutter(written, 'cutter', reader);
  if (reader.problems.length > 0) return undefined;
  return JSON.stringify(read, (_, value: unknown) =>
    typeof value === 'number' ? Math.round(value / SAME) * SAME : value,
  );
}
