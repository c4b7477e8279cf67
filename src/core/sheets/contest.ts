/** Climbs toward one goal, side by side: with any mix of sheets, and each mix by itself. */
import { Climb, type Found } from './climb';
import type { Field } from './field';
import { mixesWithin, type Mix } from './mixes';
import type { Random } from './random';

/** Rounds between two looks at the clock. */
export const BETWEEN = 32;

/** Rounds in which any mix of sheets is tried, before each is tried by itself. */
const FREE = 6000;
/** Rounds of each climb before the worse half of them is given up. */
const HEAT = 400;
/** The last climb goes on for so many rounds before all begin anew. */
const LAST = 10_000;

/** Climbs toward one goal: first with any mix of sheets, then side by side, one for each mix, the better half after each heat. */
export class Contest {
  #climbs: Climb[];
  #rounds = 0;
  readonly #mixes: readonly Mix[] | undefined;

  constructor(
    private readonly field: Field,
    private readonly random: Random,
    private readonly orders: readonly Int32Array[],
    private readonly best: Found,
    private readonly goal: number,
  ) {
    this.#mixes = mixesWithin(field, goal);
    this.#climbs = [this.#climb(undefined)];
  }

  /** True where no mix of sheets within the goal has room for all. */
  get isHopeless(): boolean {
    return this.#mixes?.length === 0;
  }

  round(): Found | undefined {
    const climb = this.#climbs[Math.floor(this.#rounds++ / BETWEEN) % this.#climbs.length]!;
    const found = climb.round();
    if (!found && this.#rounds >= this.#heat) this.#endHeat();
    return found;
  }

  get #heat(): number {
    const [only, ...others] = this.#climbs;
    if (others.length > 0) return HEAT * this.#climbs.length;
    return only?.isFree ? FREE : LAST;
  }

  #endHeat(): void {
    this.#rounds = 0;
    // One kind of sheet has one mix.
    if (!this.#mixes || this.field.byPrice.length === 1) return;
    if (this.#climbs.length > 1) {
      this.#climbs.sort((a, b) => a.lacking - b.lacking);
      this.#climbs = this.#climbs.slice(0, Math.ceil(this.#climbs.length / 2));
      return;
    }
    this.#climbs = this.#climbs[0]?.isFree ? this.#mixes.map((mix) => this.#climb(mix)) : [this.#climb(undefined)];
  }

  #climb(mix: Mix | undefined): Climb {
    return new Climb(this.field, this.random, this.orders, this.best, this.goal, mix);
  }
}
