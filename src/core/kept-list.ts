/** Changes to a list that a user keeps, made so that they can be made again on a list that another program has changed. */
import type { Result } from './problem';
import type { RemovedLines } from './tables/removed-lines';

/** How the things of a list are told apart, and when two of them say the same. */
export interface KeptThings<T> {
  readonly nameOf: (thing: T) => string;
  readonly isSame: (one: T, other: T) => boolean;
}

export interface ListChange<T> {
  /** Put in the place of those of the same name; new ones where the first was taken out, else at the end. */
  readonly keep?: readonly T[];
  /** Names of those taken out. */
  readonly remove?: readonly string[];
  /** Of things that are kept under another name: the new name to the one that is taken out. */
  readonly were?: ReadonlyMap<string, string>;
  /** Names of things of which it changes something, and which have to be there still. */
  readonly of?: readonly string[];
}

/** A change that is worked out anew on every list it is tried on, such as one more or one less of something counted. */
export type ListWork<T> = (list: readonly T[]) => Result<Worked<T>>;

export interface Worked<T> {
  readonly list: readonly T[];
  /** Takes this very change back, also from a list that others have changed since. */
  readonly back: ListWork<T>;
  /** The text that is kept beside the list, so that it can be taken back after a restart as well; unless there, none is. */
  readonly record?: (written: Written) => string;
}

/** How a worked list came to be written. */
export interface Written {
  /** Names the text that was there before; empty: there was none. */
  readonly before: string;
  /** Lines that went out of the file. */
  readonly removed: RemovedLines;
}

/** The list with the change made. */
export function changeList<T>(
  list: readonly T[],
  { keep = [], remove = [] }: ListChange<T>,
  { nameOf }: KeptThings<T>,
): readonly T[] {
  const given = new Map(keep.map((thing) => [nameOf(thing), thing]));
  const there = new Set(list.map(nameOf));
  const added = keep.filter((thing) => !there.has(nameOf(thing)));
  const isOut = (thing: T) => remove.includes(nameOf(thing)) && !given.has(nameOf(thing));
  const gap = list.findIndex(isOut);
  const kept = (part: readonly T[]) =>
    part.filter((thing) => !isOut(thing)).map((thing) => given.get(nameOf(thing)) ?? thing);
  return gap < 0 ? [...kept(list), ...added] : [...kept(list.slice(0, gap)), ...added, ...kept(list.slice(gap))];
}

/** Things that the change would write over or take out though they are no longer what they were when it was asked for. */
export function changedMeanwhile<T>(
  before: readonly T[],
  now: readonly T[],
  { keep = [], remove = [] }: ListChange<T>,
  { nameOf, isSame }: KeptThings<T>,
): readonly T[] {
  const find = (things: readonly T[], name: string) => things.find((thing) => nameOf(thing) === name);
  const touched = new Set([...remove, ...keep.map(nameOf)]);
  return now.filter((thing) => {
    const name = nameOf(thing);
    if (!touched.has(name)) return false;
    const old = find(before, name);
    const wanted = find(keep, name);
    const isWanted = wanted !== undefined && isSame(wanted, thing);
    return !isWanted && !(old !== undefined && isSame(old, thing));
  });
}

/** The change that undoes another, which was made to the list as it was before; what others changed meanwhile stays. */
export function reversed<T>(
  before: readonly T[],
  { keep = [], remove = [], were: renamed }: ListChange<T>,
  { nameOf }: KeptThings<T>,
): ListChange<T> {
  const touched = new Set([...remove, ...keep.map(nameOf)]);
  const were = before.filter((thing) => touched.has(nameOf(thing)));
  const there = new Set(were.map(nameOf));
  const back = renamed && new Map([...renamed].map(([now, then]) => [then, now]));
  return {
    keep: were,
    remove: [...touched].filter((name) => !there.has(name)),
    of: keep.map(nameOf).filter((name) => there.has(name) || renamed?.has(name)),
    ...(back ? { were: back } : {}),
  };
}

/** Things of which a change would change something, and which others have taken out meanwhile: as they were, or as they would be. */
export function goneMeanwhile<T>(
  before: readonly T[],
  now: readonly T[],
  { keep = [], of = [] }: ListChange<T>,
  { nameOf }: KeptThings<T>,
): readonly T[] {
  const there = new Set(now.map(nameOf));
  return of
    .filter((name) => !there.has(name))
    .flatMap((name) => before.find((thing) => nameOf(thing) === name) ?? keep[0] ?? []);
}

/** A change made to a list that others have changed meanwhile. */
export interface Settled<T> {
  readonly change: ListChange<T>;
  /** Their things that it would still write over or take out. */
  readonly conflicts: readonly T[];
}

/** Things of which both changed different parts get both changes; the rest is told. */
export function settle<T extends object>(
  before: readonly T[],
  now: readonly T[],
  change: ListChange<T>,
  things: KeptThings<T>,
): Settled<T> {
  const { nameOf } = things;
  const find = (list: readonly T[], thing: T) => list.find((one) => nameOf(one) === nameOf(thing));
  const theirs = changedMeanwhile(before, now, change, things);
  const merged = theirs.flatMap((their) => {
    const [was, mine] = [find(before, their), find(change.keep ?? [], their)];
    return (was && mine && mergedThing(was, mine, their)) ?? [];
  });
  return {
    change:
      merged.length === 0 ? change : { ...change, keep: change.keep?.map((mine) => find(merged, mine) ?? mine) ?? [] },
    conflicts: theirs.filter((their) => !find(merged, their)),
  };
}

/** Undefined where both changed one part. */
function mergedThing<T extends object>(before: T, mine: T, theirs: T): T | undefined {
  const keys = new Set([mine, theirs].flatMap((thing) => Object.keys(thing))) as Set<keyof T>;
  const merged: Partial<T> = {};
  for (const key of keys) {
    const [was, my, their] = [before[key], mine[key], theirs[key]];
    if (!isAlike(my, was) && !isAlike(their, was) && !isAlike(my, their)) return undefined;
    const value = isAlike(my, was) ? their : my;
    if (value !== undefined) merged[key] = value;
  }
  return merged as T;
}

/** Last bits of a length that was typed in one unit and kept in another don't count. */
function isAlike(one: unknown, other: unknown): boolean {
  const text = (value: unknown) =>
    JSON.stringify(value, (_, part: unknown) => (typeof part === 'number' ? Number(part.toFixed(6)) : part));
  return text(one) === text(other);
}
