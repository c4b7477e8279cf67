/** Changes to a list that a user keeps, made so that they can be made again on a list that another program has changed. */

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
