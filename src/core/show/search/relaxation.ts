/**
 * A bound on what any choice of sizes can cost: every picture prices a price for a frame, each size gains what the prices
 * exceed its costs, and the prices less the greatest gains are never more than the least cost (Lagrangian relaxation of the
 * k-median problem: Cornuéjols, Fisher and Nemhauser, Location of bank accounts to optimize float, 1977, from memory).
 * Prices are whole numbers, so that the bound is exact whatever they are.
 */
import type { Choosing } from './choosing';

export interface Prices {
  /** By kind of picture; none more than what a picture without a frame counts. */
  readonly offers: Float64Array;
  /** Kinds by what they offer, the highest first; empty where no frame runs out, which does not ask for it. */
  readonly order: readonly number[];
}

export interface Bound {
  /** No choice has less: costs, and what pictures without a frame count. */
  readonly value: number;
  /** Free sizes that gain most, the greatest gain first; at most as many as may still be chosen. */
  readonly picks: readonly number[];
  /** By size; of those that are taken or free. */
  readonly gains: Float64Array;
}

/** Kinds that a frame, or any frame of a size, takes, with the cost of each. */
interface Reach {
  readonly kinds: Int32Array;
  readonly costs: Float64Array;
  /** 1 for each kind that is among them. */
  readonly takes: Uint8Array;
  readonly count: number;
}

export class Relaxation {
  readonly #limited: boolean;
  readonly #counts: Float64Array;
  /** By size: one reach where nothing runs out, else one for each frame. */
  readonly #reaches: readonly (readonly Reach[])[];

  /** @param limited whether frames may run out. */
  constructor(choosing: Choosing, limited: boolean) {
    this.#limited = limited;
    this.#counts = Float64Array.from(choosing.kinds, ({ count }) => count);
    this.#reaches = Array.from({ length: choosing.sizes }, (_, size) =>
      limited ? reachOfEach(choosing, size) : [reachOfAll(choosing, size)],
    );
  }

  /** @param taken sizes that are chosen already. @param more how many of the free ones may come to them. */
  bound({ offers, order }: Prices, taken: readonly number[], free: readonly number[], more: number): Bound {
    const gains = new Float64Array(this.#reaches.length);
    let value = 0;
    for (let kind = 0; kind < offers.length; kind += 1) value += (offers[kind] ?? 0) * (this.#counts[kind] ?? 0);
    for (const size of taken) value -= gains[size] = this.#gain(size, offers, order);
    for (const size of free) gains[size] = this.#gain(size, offers, order);
    const picks = free
      .filter((size) => (gains[size] ?? 0) > 0)
      .sort((a, b) => (gains[b] ?? 0) - (gains[a] ?? 0) || a - b)
      .slice(0, more);
    for (const size of picks) value -= gains[size] ?? 0;
    return { value, picks, gains };
  }

  /** Pictures of each kind without a frame, less frames they have too many, when sizes take all that they gain by. */
  lacking({ offers, order }: Prices, sizes: readonly number[]): Float64Array {
    const lacking = Float64Array.from(this.#counts);
    for (const size of sizes) this.#gain(size, offers, order, lacking);
    return lacking;
  }

  /** What a size gains; what it takes for that goes from `from`. */
  #gain(size: number, offers: Float64Array, order: readonly number[], from?: Float64Array): number {
    let gain = 0;
    for (const reach of this.#reaches[size] ?? []) {
      gain += this.#limited ? this.#gainCounted(reach, offers, order, from) : this.#gainAlone(reach, offers, from);
    }
    return gain;
  }

  #gainAlone({ kinds, costs }: Reach, offers: Float64Array, from?: Float64Array): number {
    let gain = 0;
    for (let at = 0; at < kinds.length; at += 1) {
      const kind = kinds[at] ?? 0;
      const over = (offers[kind] ?? 0) - (costs[at] ?? 0);
      if (over <= 0) continue;
      const count = this.#counts[kind] ?? 0;
      gain += over * count;
      if (from) from[kind] = (from[kind] ?? 0) - count;
    }
    return gain;
  }

  /** As many as there are, of the highest offers. */
  #gainCounted(
    { takes, costs, count }: Reach,
    offers: Float64Array,
    order: readonly number[],
    from?: Float64Array,
  ): number {
    const cost = costs[0] ?? 0;
    let [gain, left] = [0, count];
    for (let at = 0; at < order.length && left > 0; at += 1) {
      const kind = order[at] ?? 0;
      const over = (offers[kind] ?? 0) - cost;
      if (over <= 0) break;
      if (takes[kind] !== 1) continue;
      const taken = Math.min(left, this.#counts[kind] ?? 0);
      gain += over * taken;
      left -= taken;
      if (from) from[kind] = (from[kind] ?? 0) - taken;
    }
    return gain;
  }

  /** @param offers whole numbers. */
  pricesOf(offers: Float64Array): Prices {
    if (!this.#limited) return { offers, order: [] };
    const order = Array.from(offers, (_, kind) => kind);
    return { offers, order: order.sort((a, b) => (offers[b] ?? 0) - (offers[a] ?? 0) || a - b) };
  }
}

/** The cheapest frame of a size for each kind. */
function reachOfAll({ frames, kinds }: Choosing, size: number): Reach {
  const found = kinds.flatMap(({ fits }, kind) => {
    const frame = fits.find((one) => frames[one]?.size === size);
    return frame === undefined ? [] : [{ kind, cost: frames[frame]?.cost ?? 0 }];
  });
  return reach(found, kinds.length, Infinity);
}

function reachOfEach({ frames, kinds }: Choosing, size: number): Reach[] {
  return frames.flatMap((stock, frame) => {
    if (stock.size !== size || stock.count === 0) return [];
    const found = kinds.flatMap(({ fits }, kind) => (fits.includes(frame) ? [{ kind, cost: stock.cost }] : []));
    return [reach(found, kinds.length, stock.count)];
  });
}

function reach(found: readonly { readonly kind: number; readonly cost: number }[], all: number, count: number): Reach {
  const takes = new Uint8Array(all);
  for (const { kind } of found) takes[kind] = 1;
  return {
    kinds: Int32Array.from(found, ({ kind }) => kind),
    costs: Float64Array.from(found, ({ cost }) => cost),
    takes,
    count,
  };
}
