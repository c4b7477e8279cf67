/** Changes to a list of kept cutters, made so that they can be made again on a list that another program has changed. */
import { readCutter } from './read-cutting';
import { Reader } from './reader';
import type { WrittenCutter } from './written-cutter';

export type Cutters = readonly WrittenCutter[];

/** Cutters put into the list, in the place of those of the same name; or one taken out. */
export type CutterChange =
  { readonly kind: 'keep'; readonly cutters: Cutters } | { readonly kind: 'remove'; readonly name: string };

export function changeCutters(list: Cutters, change: CutterChange): Cutters {
  if (change.kind === 'remove') return list.filter(({ name }) => name !== change.name);
  const given = new Map(change.cutters.map((cutter) => [cutter.name, cutter]));
  const kept = list.map((cutter) => given.get(cutter.name) ?? cutter);
  const names = new Set(list.map(({ name }) => name));
  return [...kept, ...change.cutters.filter(({ name }) => !names.has(name))];
}

/** Cutters that the change would write over or take out though they are no longer what they were when it was asked for. */
export function changedMeanwhile(before: Cutters, now: Cutters, change: CutterChange): Cutters {
  const touched = new Set(change.kind === 'remove' ? [change.name] : change.cutters.map(({ name }) => name));
  return now.filter((cutter) => {
    if (!touched.has(cutter.name)) return false;
    const old = before.find(({ name }) => name === cutter.name);
    const wanted = change.kind === 'keep' ? change.cutters.find(({ name }) => name === cutter.name) : undefined;
    const isWanted = wanted !== undefined && sameCutter(wanted, cutter);
    return !isWanted && !(old && sameCutter(old, cutter));
  });
}

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
