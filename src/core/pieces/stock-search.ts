/**
 * Branch and bound over patterns: the longest length that is left goes into the next stick, with every set of others that
 * fills it so far that none more goes in (bin completion: Korf 2003, from memory).
 */
import type { Pattern, StockAsk } from './stock';

export interface StockSearch {
  /** The best found; undefined where none of fewer sticks than `under` was. */
  readonly patterns?: readonly Pattern[];
  /** True where every way was followed, or one found that is as good as can be. */
  readonly isComplete: boolean;
}

export interface SearchLimits {
  /** Only plans of fewer sticks are looked for. */
  readonly under: number;
  /** No plan has fewer: one of so many ends the search. */
  readonly atLeast: number;
  /** Of which a stick never holds more than 1 together, each for one of a length. */
  readonly worths: readonly number[];
  readonly steps: number;
}

/** What doubles lose in a sum of worths. */
const LOST = 1e-7;

export function searchStock({ stick, wanted }: StockAsk, { under, atLeast, worths, steps }: SearchLimits): StockSearch {
  const left = wanted.map(({ count }) => count);
  const sizes = wanted.map(({ size }) => size);
  const seen = new Map<string, number>();
  const way: Pattern[] = [];
  const budget = { steps };
  let best: readonly Pattern[] | undefined;
  let fewest = under;

  const sum = (of: readonly number[]) => of.reduce((all, one, index) => all + one * (left[index] ?? 0), 0);
  const isHopeless = () =>
    way.length + Math.max(Math.ceil(sum(sizes) / stick), Math.ceil(sum(worths) - LOST)) >= fewest;
  const take = (pattern: Pattern, times: 1 | -1) =>
    pattern.forEach((count, index) => (left[index] = (left[index] ?? 0) - times * count));

  const follow = (): void => {
    if (isHopeless()) return;
    const longest = left.findIndex((count) => count > 0);
    if (longest < 0) {
      [best, fewest] = [[...way], way.length];
      return;
    }
    const key = left.join();
    if ((seen.get(key) ?? Infinity) <= way.length) return;
    seen.set(key, way.length);
    const spare = (fewest - 1 - way.length) * stick - sum(sizes);
    for (const pattern of fillings({ stick, sizes, left, longest, spare }, budget)) {
      if (fewest <= atLeast || budget.steps <= 0) return;
      take(pattern, 1);
      way.push(pattern);
      follow();
      way.pop();
      take(pattern, -1);
    }
  };
  follow();
  return { ...(best ? { patterns: best } : {}), isComplete: budget.steps > 0 || fewest <= atLeast };
}

interface FillingAsk {
  readonly stick: number;
  readonly sizes: readonly number[];
  readonly left: readonly number[];
  /** The longest that is left: one of it goes in. */
  readonly longest: number;
  /** No more may remain of the stick. */
  readonly spare: number;
}

/** Every way to fill a stick so far that nothing more goes in, the fullest first; not all of them when the budget ends. */
function fillings({ stick, sizes, left, longest, spare }: FillingAsk, budget: { steps: number }): readonly Pattern[] {
  const found: { readonly pattern: Pattern; readonly room: number }[] = [];
  const counts = left.map(() => 0);
  // What the lengths from a place on could still fill.
  const after = sizes.map((size, place) => size * (left[place] ?? 0));
  for (let place = sizes.length - 2; place >= 0; place -= 1)
    after[place] = (after[place] ?? 0) + (after[place + 1] ?? 0);
  const fill = (place: number, room: number): void => {
    budget.steps -= 1;
    if (budget.steps <= 0 || room - (after[place] ?? 0) > spare) return;
    const size = sizes[place];
    if (size === undefined) {
      const isFull = sizes.every((one, index) => one > room || counts[index] === left[index]);
      if (isFull) found.push({ pattern: [...counts], room });
      return;
    }
    const least = place === longest ? 1 : 0;
    for (let count = Math.min(left[place] ?? 0, Math.floor(room / size)); count >= least; count -= 1) {
      counts[place] = count;
      fill(place + 1, room - count * size);
    }
    counts[place] = 0;
  };
  fill(longest, stick);
  return found.sort((a, b) => a.room - b.room).map(({ pattern }) => pattern);
}
