/**
 * The order in which the cuts of one sheet are made: as few settings of the guide as can be found. With the guide at a
 * setting every part in hand that has such a piece gives it, before the guide is moved; what no piece comes from is never
 * cut off but stays as what is left.
 */
import type { Cut, Tree } from './cut-tree';

/** One cut off the part in hand, at the guide's setting. */
export interface OrderedCut {
  readonly cut: Cut;
  readonly off: Tree;
  /** Grid units. */
  readonly setting: number;
}

/** Of a cut: what is still to come off or stays. */
type Hands = ReadonlyMap<Cut, readonly Tree[]>;

interface State {
  readonly hands: Hands;
  readonly done: readonly OrderedCut[];
  /** Cuts of parts that nobody has in hand yet, and those in hand, together. */
  readonly open: number;
  /** Settings that can't be done without from here. */
  readonly needed: number;
  readonly settings: number;
}

/** States kept at each number of settings: more would seldom find a better order. */
const KEPT = 24;

/** @param saw width of the cut, grid units, which every part in the tree has added to it. */
export function orderCuts(tree: Tree, saw: number): readonly OrderedCut[] {
  if (tree.kind !== 'cut') return [];
  const ids = numbered(tree);
  const start = stateOf(new Map([[tree, tree.parts]]), [], 0, saw);
  const quick = followed(start, 1, ids, saw);
  // Most sheets need no more than the settings that none can do without.
  if (quick.settings === start.needed) return quick.done;
  const best = followed(start, KEPT, ids, saw);
  return best.settings < quick.settings ? best.done : quick.done;
}

/** To the last cut, with so many states kept on the way. */
function followed(start: State, kept: number, ids: ReadonlyMap<Cut, number>, saw: number): State {
  let states: readonly State[] = [start];
  for (;;) {
    const done = states.find(({ open }) => open === 0);
    if (done) return done;
    const next = states.flatMap((state) => settingsIn(state.hands, saw).map((setting) => after(state, setting, saw)));
    states = pruned(next, kept, ids);
  }
}

/** The most promising, no two of them with the same still to do. */
function pruned(states: readonly State[], kept: number, ids: ReadonlyMap<Cut, number>): readonly State[] {
  const seen = new Set<string>();
  return states
    .toSorted((a, b) => a.needed - b.needed || a.open - b.open)
    .filter(({ hands }) => {
      const key = [...hands].map(([cut, parts]) => `${ids.get(cut)}:${parts.map((part) => along(part, cut)).join()}`).sort().join(';'); // prettier-ignore
      return seen.size < kept && !seen.has(key) && seen.add(key);
    });
}

/** A number for each cut, the same for the same tree. */
function numbered(tree: Tree, ids = new Map<Cut, number>()): ReadonlyMap<Cut, number> {
  if (tree.kind !== 'cut') return ids;
  ids.set(tree, ids.size);
  for (const part of tree.parts) numbered(part, ids);
  return ids;
}

function stateOf(hands: Hands, done: readonly OrderedCut[], settings: number, saw: number): State {
  const needs = new Set<number>();
  let open = 0;
  const look = (cut: Cut, parts: readonly Tree[]) => {
    if (parts.length > 1) open += parts.length - 1;
    for (const setting of needsOf(cut, parts, saw)) needs.add(setting);
    for (const part of parts) if (part.kind === 'cut') look(part, part.parts);
  };
  for (const [cut, parts] of hands) look(cut, parts);
  return { hands, done, open, needed: settings + needs.size, settings };
}

/** All settings of the parts but one, which may stay; where a free part stays, all. */
function needsOf(cut: Cut, parts: readonly Tree[], saw: number): readonly number[] {
  if (parts.length < 2) return [];
  if (cut.inOrder) return parts.slice(0, -1).map((part) => along(part, cut) - saw);
  const sizes = parts.filter(({ kind }) => kind !== 'free').map((part) => along(part, cut) - saw);
  const single = (size: number) => sizes.filter((other) => other === size).length === 1;
  const mayStay = !parts.some(({ kind }) => kind === 'free') && sizes.some(single);
  const distinct = [...new Set(sizes)];
  // Any one of several may stay; only of two that are alike is it known that their setting is needed.
  return mayStay ? distinct.filter((size) => !single(size)) : distinct;
}

function settingsIn(hands: Hands, saw: number): readonly number[] {
  const found = new Set<number>();
  for (const [cut, parts] of hands) {
    if (parts.length > 1) for (const part of cutOff(cut, parts)) found.add(along(part, cut) - saw);
  }
  return [...found].sort((a, b) => b - a);
}

/** Everything done that this setting can do, also in parts that come off meanwhile. */
function after({ hands, done, settings }: State, setting: number, saw: number): State {
  const now = new Map(hands);
  const made = [...done];
  const work = (cut: Cut) => {
    let parts = now.get(cut) ?? [];
    while (parts.length > 1) {
      const off = cutOff(cut, parts).find((part) => along(part, cut) - saw === setting);
      if (!off) break;
      made.push({ cut, off, setting });
      parts = parts.filter((part) => part !== off);
      if (off.kind === 'cut') now.set(off, off.parts);
    }
    const [rest] = parts;
    if (parts.length > 1) {
      now.set(cut, parts);
      return;
    }
    now.delete(cut);
    if (rest?.kind === 'cut') now.set(rest, rest.parts);
  };
  let before = -1;
  while (before !== made.length) {
    before = made.length;
    // Parts that come off meanwhile are looked at in the same pass, being added at the end.
    for (const cut of now.keys()) work(cut);
  }
  return stateOf(now, made, settings + 1, saw);
}

/** What may come off next: any that is not free, or where parts keep their places the first. */
function cutOff({ inOrder }: Cut, parts: readonly Tree[]): readonly Tree[] {
  return inOrder ? parts.slice(0, 1) : parts.filter(({ kind }) => kind !== 'free');
}

function along(part: Tree, { way }: Cut): number {
  return way === 0 ? part.width : part.height;
}
