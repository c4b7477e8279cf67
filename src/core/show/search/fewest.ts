/** The fewest sizes that hold as many pictures as the whole shelf can, found by trying ever more; each number is settled before the next. */
import { isLimited, pictureCount, type Choosing } from './choosing';
import { Filler, type Filled } from './fill';

export interface Fewest {
  /** Pictures that the whole shelf holds. */
  readonly held: number;
  /** Fewer than so many can't hold them. */
  readonly least: number;
  /** Sizes that do; more than `least` only where the search was given up. */
  readonly sizes: readonly number[];
}

/** Nodes after which it is given up, some seconds of work: where frames don't run out, and where they may. */
const MOST_NODES = 20_000;
const MOST_COUNTED_NODES = 3000;

/** @param least fewer sizes than this are known not to do. */
export function fewestSizes(
  choosing: Choosing,
  least = 0,
  mostNodes = isLimited(choosing) ? MOST_COUNTED_NODES : MOST_NODES,
): Fewest {
  return new Cover(choosing, mostNodes).run(least);
}

type Shares = Filled['shares'];

class Cover {
  readonly #choosing: Choosing;
  readonly #filler: Filler;
  readonly #mostNodes: number;
  readonly #target: number;
  /** Sizes that hold a picture of each kind. */
  readonly #sizesOf: readonly (readonly number[])[];
  /** Pictures that each size holds alone. */
  readonly #heldBy: readonly number[];
  #nodes = 0;

  constructor(choosing: Choosing, mostNodes: number) {
    this.#choosing = choosing;
    this.#mostNodes = mostNodes;
    this.#filler = new Filler(choosing);
    this.#heldBy = allSizes(choosing).map((size) => this.#filler.fill([size]).held);
    this.#target = this.#filler.fill(allSizes(choosing)).held;
    this.#sizesOf = choosing.kinds.map(({ fits }) => {
      const sizes = fits.flatMap((frame) => {
        const stock = choosing.frames[frame];
        return stock && stock.count > 0 ? [stock.size] : [];
      });
      return [...new Set(sizes)].sort((a, b) => a - b);
    });
  }

  run(least: number): Fewest {
    for (let count = least; ; count += 1) {
      const sizes = this.#reach([], new Set(), count);
      if (sizes) return { held: this.#target, least: count, sizes: sizes.toSorted((a, b) => a - b) };
      if (this.#nodes > this.#mostNodes) return { held: this.#target, least: count, sizes: this.#grow() };
    }
  }

  /** One size after the other, each the one that holds most more. */
  #grow(): readonly number[] {
    let [taken, held]: [readonly number[], number] = [[], 0];
    while (held < this.#target) {
      const grown = allSizes(this.#choosing)
        .filter((size) => !taken.includes(size))
        .map((size) => ({ sizes: [...taken, size], held: this.#filler.fill([...taken, size]).held }));
      ({ sizes: taken, held } = grown.reduce((a, b) => (b.held > a.held ? b : a)));
    }
    return taken.toSorted((a, b) => a - b);
  }

  /** Holds the target with so many more sizes, none of them barred; undefined where that can't be, or is given up. */
  #reach(taken: readonly number[], barred: ReadonlySet<number>, more: number): readonly number[] | undefined {
    this.#nodes += 1;
    const { held, shares } = this.#filler.fill(taken);
    if (held >= this.#target) return taken;
    if (more === 0 || this.#nodes > this.#mostNodes) return undefined;
    const closed = new Set([...taken, ...barred]);
    if (held + this.#mostHeld(closed, more) < this.#target) return undefined;
    const left = new Set(barred);
    for (const size of this.#ways(shares, closed, more)) {
      const found = this.#reach([...taken, size], left, more - 1);
      if (found) return found;
      left.add(size);
    }
    return undefined;
  }

  /** Sizes of which one at least has to come, those that hold most pictures first; none where so many more can't do. */
  #ways(shares: Shares, closed: ReadonlySet<number>, more: number): readonly number[] {
    const { kinds } = this.#choosing;
    const open = kinds.flatMap(({ count }, kind) => (placedOf(shares[kind]) < count ? [kind] : []));
    const needs = open.map((kind) => this.#needs(kind, shares).filter((size) => !closed.has(size)));
    // Where some pictures stay without a frame in any case, nobody knows which.
    if (this.#target < pictureCount(this.#choosing)) return this.#widestFirst(needs.flat());
    return countApart(needs) > more ? [] : this.#widestFirst(needs.reduce((a, b) => (b.length < a.length ? b : a)));
  }

  /** Sizes that could hold a picture of a kind, or one that makes room for it. */
  #needs(kind: number, shares: Shares): number[] {
    if (!this.#filler.limited) return [...(this.#sizesOf[kind] ?? [])];
    const inside: number[][] = this.#choosing.frames.map(() => []);
    shares.forEach((some, other) => some.forEach(({ frame }) => inside[frame]?.push(other)));
    const reached = new Set([kind]);
    for (const one of reached) {
      for (const frame of this.#choosing.kinds[one]?.fits ?? []) inside[frame]?.forEach((other) => reached.add(other));
    }
    return [...new Set([...reached].flatMap((one) => this.#sizesOf[one] ?? []))];
  }

  /** What so many more sizes hold at most, each as if it were alone. */
  #mostHeld(closed: ReadonlySet<number>, more: number): number {
    const held = this.#heldBy.filter((_, size) => !closed.has(size)).sort((a, b) => b - a);
    return held.slice(0, more).reduce((sum, count) => sum + count, 0);
  }

  #widestFirst(sizes: readonly number[]): number[] {
    const held = (size: number) => this.#heldBy[size] ?? 0;
    return [...new Set(sizes)].sort((a, b) => held(b) - held(a) || a - b);
  }
}

/** Lists that have nothing in common, as many as are found by taking the shortest first: each needs a size of its own. */
function countApart(lists: readonly (readonly number[])[]): number {
  const used = new Set<number>();
  let count = 0;
  for (const list of lists.toSorted((a, b) => a.length - b.length)) {
    // Nothing holds it: no number of sizes will do.
    if (list.length === 0) return Infinity;
    if (list.some((size) => used.has(size))) continue;
    list.forEach((size) => used.add(size));
    count += 1;
  }
  return count;
}

function placedOf(some: Shares[number] = []): number {
  return some.reduce((sum, { count }) => sum + count, 0);
}

function allSizes({ sizes }: Choosing): number[] {
  return Array.from({ length: sizes }, (_, size) => size);
}
