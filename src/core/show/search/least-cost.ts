/** The sizes, at most so many, that hold most pictures at the least cost: branch and bound, and what is proven of its answer. */
import { beyondAllCosts, isBetter, isLimited, pictureCount, type Choosing, type Chosen, type Worth } from './choosing';
import { Filler } from './fill';
import { Relaxation, type Bound, type Prices } from './relaxation';

export interface Found extends Chosen {
  /** No choice is better than this; equal to the choice itself where it is proven best. */
  readonly bound: Worth;
  readonly proven: boolean;
}

/** Sizes looked at, node after node, until the search gives up its proof: some seconds of work. */
const MOST_LOOKS = 800_000;
/** The same where frames may run out, which takes longer to fill. */
const MOST_COUNTED_LOOKS = 200_000;

/** Steps by which prices are changed at the first node, and at the others. */
const FIRST_STEPS = 300;
const NEXT_STEPS = 10;
/** Steps without a better bound after which they are halved. */
const PATIENCE = 10;

/**
 * The same answer for the same question, always: nothing is left to chance or to the clock.
 *
 * @param start a choice that is known already, and is kept unless there is a better one.
 */
export function leastCost(
  choosing: Choosing,
  most: number,
  start: Chosen = { sizes: [], held: 0, cost: 0 },
  mostNodes = Math.ceil((isLimited(choosing) ? MOST_COUNTED_LOOKS : MOST_LOOKS) / Math.max(1, choosing.sizes)),
): Found {
  return new Search(choosing, most, start, mostNodes).run();
}

/** Some sizes are taken, some left out, the rest free. */
interface Node {
  readonly taken: readonly number[];
  readonly free: readonly number[];
  readonly prices: Prices;
}

interface Priced {
  readonly prices: Prices;
  readonly bound: Bound;
}

class Search {
  readonly #choosing: Choosing;
  readonly #most: number;
  readonly #mostNodes: number;
  readonly #filler: Filler;
  readonly #relaxation: Relaxation;
  readonly #pictures: number;
  /** What a picture without a frame counts, so that holding one more outweighs any saving. */
  readonly #penalty: number;
  readonly #tried = new Set<string>();
  #best: Chosen;
  #nodes = 0;
  /** The least value that what was not looked at could have. */
  #unseen = Infinity;

  constructor(choosing: Choosing, most: number, start: Chosen, mostNodes: number) {
    this.#choosing = choosing;
    this.#most = most;
    this.#mostNodes = mostNodes;
    this.#filler = new Filler(choosing);
    this.#relaxation = new Relaxation(choosing, this.#filler.limited);
    this.#pictures = pictureCount(choosing);
    this.#penalty = beyondAllCosts(choosing);
    this.#best = start;
  }

  run(): Found {
    const free = Array.from({ length: this.#choosing.sizes }, (_, size) => size);
    this.#grow(free);
    this.#visit({ taken: [], free, prices: this.#pricesOf(this.#best.sizes) }, FIRST_STEPS);
    const { held, cost } = this.#best;
    const sizes = this.#used(this.#best.sizes);
    const proven = this.#unseen >= this.#goal;
    return { sizes, held, cost, proven, bound: proven ? { held, cost } : this.#worthOf(this.#unseen) };
  }

  /** Without those that hold nothing, since others cost less. */
  #used(sizes: readonly number[]): number[] {
    const { shares } = this.#filler.fill(sizes);
    const used = new Set(shares.flat().map(({ frame }) => this.#choosing.frames[frame]?.size));
    return sizes.filter((size) => used.has(size));
  }

  /** The value to beat: what is known to be possible. */
  get #goal(): number {
    return (this.#pictures - this.#best.held) * this.#penalty + this.#best.cost;
  }

  #worthOf(value: number): Worth {
    const without = Math.max(0, Math.floor(value / this.#penalty));
    return { held: this.#pictures - without, cost: Math.max(0, value - without * this.#penalty) };
  }

  /** One size after the other, each the one that gains most beside what the others cost. */
  #grow(free: readonly number[]): void {
    let sizes: readonly number[] = [];
    while (sizes.length < this.#most) {
      const left = free.filter((size) => !sizes.includes(size));
      const [next] = this.#relaxation.bound(this.#pricesOf(sizes), sizes, left, 1).picks;
      if (next === undefined) return;
      sizes = [...sizes, next];
      this.#try(sizes);
    }
  }

  #try(sizes: readonly number[]): void {
    const { held, cost } = this.#filler.fill(sizes);
    const chosen = { sizes: sizes.toSorted((a, b) => a - b), held, cost };
    if (isBetter(chosen, this.#best)) this.#best = chosen;
  }

  #tryOnce(sizes: readonly number[]): void {
    const key = sizes.toSorted((a, b) => a - b).join(' ');
    if (this.#tried.has(key)) return;
    this.#tried.add(key);
    this.#try(sizes);
  }

  /** What a choice costs each kind of picture. */
  #pricesOf(sizes: readonly number[]): Prices {
    const { dearest } = this.#filler.fill(sizes);
    return this.#relaxation.pricesOf(dearest.map((cost) => Math.min(cost, this.#penalty)));
  }

  #visit(node: Node, steps: number): void {
    this.#nodes += 1;
    const { bound, prices } = this.#tighten(node, steps);
    if (bound.value >= this.#goal) return;
    if (this.#nodes > this.#mostNodes) {
      this.#unseen = Math.min(this.#unseen, bound.value);
      return;
    }
    const { taken, free } = this.#decide(node, bound);
    if (taken.length >= this.#most || free.length === 0) return this.#tryOnce(taken);
    const next = bound.picks.find((size) => free.includes(size)) ?? free[0] ?? 0;
    const rest = free.filter((size) => size !== next);
    this.#visit({ taken: [...taken, next], free: rest, prices }, NEXT_STEPS);
    this.#visit({ taken, free: rest, prices }, NEXT_STEPS);
  }

  #boundBy(prices: Prices, { taken, free }: Node): Priced {
    return { prices, bound: this.#relaxation.bound(prices, taken, free, this.#most - taken.length) };
  }

  /** The best bound that changing prices finds. What the sizes taken cost is tried first: with one more to choose it says all. */
  #tighten(node: Node, steps: number): Priced {
    const own = this.#boundBy(this.#pricesOf(node.taken), node);
    this.#tryOnce([...node.taken, ...own.bound.picks]);
    if (own.bound.value >= this.#goal) return own;
    let best = this.#boundBy(node.prices, node);
    let [now, pace, idle] = [best, 1, 0];
    for (let step = 0; step < steps; step += 1) {
      if (now === best) this.#tryOnce([...node.taken, ...now.bound.picks]);
      const prices = best.bound.value < this.#goal ? this.#nextPrices(now, node, pace) : undefined;
      if (!prices) break;
      now = this.#boundBy(prices, node);
      if (now.bound.value > best.bound.value) [best, idle] = [now, 0];
      else idle += 1;
      if (idle >= PATIENCE) [now, pace, idle] = [best, pace / 2, 0];
    }
    return best.bound.value > own.bound.value ? best : own;
  }

  /**
   * Dearer for pictures without a frame, cheaper for those with several, in the steps of Held, Wolfe and Crowder, Validation
   * of subgradient optimization, 1974 (from memory); whole numbers. Undefined where every picture has just one.
   */
  #nextPrices({ prices, bound }: Priced, { taken }: Node, pace: number): Prices | undefined {
    const lacking = this.#relaxation.lacking(prices, [...taken, ...bound.picks]);
    const square = lacking.reduce((sum, count) => sum + count * count, 0);
    if (square === 0) return undefined;
    const stride = (pace * Math.max(1, this.#goal - bound.value)) / square;
    const offers = prices.offers.map((price, kind) =>
      Math.round(Math.min(this.#penalty, Math.max(0, price + stride * (lacking[kind] ?? 0)))),
    );
    return this.#relaxation.pricesOf(offers);
  }

  /** Takes sizes that a better choice must have, and leaves out those that it can't, by what the bound would come to otherwise. */
  #decide({ taken, free }: Node, { value, picks, gains }: Bound): Pick<Node, 'taken' | 'free'> {
    const goal = this.#goal;
    const gain = (size: number | undefined) => (size === undefined ? 0 : (gains[size] ?? 0));
    const last = picks.length < this.#most - taken.length ? 0 : gain(picks.at(-1));
    const beyond = free.reduce((most, size) => (picks.includes(size) ? most : Math.max(most, gain(size))), 0);
    const must = picks.filter((size) => value + gain(size) - beyond >= goal);
    const left = free.filter(
      (size) => !must.includes(size) && (picks.includes(size) || value + last - gain(size) < goal),
    );
    return { taken: [...taken, ...must], free: left };
  }
}
