/** Gives every picture the frame it takes among chosen sizes: as many pictures as can be held, at the least cost. */
import { isLimited, type Choosing, type Worth } from './choosing';
import { Flow } from './flow';

/** So many pictures of a kind in a frame. */
export interface Share {
  readonly frame: number;
  readonly count: number;
}

export interface Filled extends Worth {
  /** By kind. */
  readonly shares: readonly (readonly Share[])[];
  /** The dearest frame that each kind takes; `Infinity` where some of it have none. */
  readonly dearest: Float64Array;
}

export class Filler {
  /** True where some frame may run out. */
  readonly limited: boolean;
  readonly #choosing: Choosing;
  /** Kinds that each frame fits. */
  readonly #kindsOf: readonly (readonly number[])[];
  /** Frames in the order of their cost. */
  readonly #order: readonly number[];

  constructor(choosing: Choosing) {
    const { frames, kinds } = choosing;
    this.#choosing = choosing;
    this.limited = isLimited(choosing);
    const kindsOf: number[][] = frames.map(() => []);
    kinds.forEach(({ fits }, kind) => fits.forEach((frame) => kindsOf[frame]?.push(kind)));
    this.#kindsOf = kindsOf;
    const cost = (frame: number) => frames[frame]?.cost ?? 0;
    this.#order = frames.map((_, frame) => frame).sort((a, b) => cost(a) - cost(b) || a - b);
  }

  fill(sizes: readonly number[]): Filled {
    return this.limited ? this.#fillCounted(sizes) : this.#fillAlone(sizes);
  }

  /** 1 for each frame of these sizes. */
  #framesOf(sizes: readonly number[]): Uint8Array {
    const chosen = new Set(sizes);
    return Uint8Array.from(this.#choosing.frames, ({ size }) => (chosen.has(size) ? 1 : 0));
  }

  /** Where no frame runs out each picture takes the cheapest that it fits. */
  #fillAlone(sizes: readonly number[]): Filled {
    const { frames, kinds } = this.#choosing;
    const chosen = this.#framesOf(sizes);
    const dearest = new Float64Array(kinds.length);
    const taken = new Int32Array(kinds.length);
    let [held, cost] = [0, 0];
    kinds.forEach(({ count, fits }, kind) => {
      const frame = fits.find((one) => chosen[one] === 1) ?? -1;
      const each = frames[frame]?.cost;
      dearest[kind] = each ?? Infinity;
      taken[kind] = frame;
      if (each === undefined) return;
      held += count;
      cost += count * each;
    });
    return {
      held,
      cost,
      dearest,
      // Worked out when someone asks: a search fills thousands of times, and only its last answer is hung.
      get shares() {
        return kinds.map(({ count }, kind) => [{ frame: taken[kind] ?? -1, count }].filter(({ frame }) => frame >= 0));
      },
    };
  }

  /**
   * Frames in the order of their cost, each as often as one more picture finds a place, if need be by moving others on.
   * What a picture costs is its frame's alone, and frames that pictures can fill at once are the independent sets of a
   * transversal matroid, so that the cheapest first is the least cost, and as many are held as can be (Edmonds and
   * Fulkerson, Transversals and matroid partition, 1965; Edmonds, Matroids and the greedy algorithm, 1971; from memory).
   */
  #fillCounted(sizes: readonly number[]): Filled {
    const { frames, kinds } = this.#choosing;
    const chosen = this.#framesOf(sizes);
    const flow = new Flow(kinds, this.#kindsOf);
    for (const frame of this.#order) {
      if (chosen[frame] === 1) flow.pour(frame, frames[frame]?.count ?? 0);
    }
    const shares = kinds.map((_, kind) => flow.sharesOf(kind));
    let [held, cost] = [0, 0];
    const dearest = new Float64Array(kinds.length);
    shares.forEach((some, kind) => {
      for (const { frame, count } of some) {
        const each = frames[frame]?.cost ?? 0;
        held += count;
        cost += count * each;
        dearest[kind] = Math.max(dearest[kind] ?? 0, each);
      }
      if (flow.openOf(kind) > 0) dearest[kind] = Infinity;
    });
    return { held, cost, dearest, shares };
  }
}
