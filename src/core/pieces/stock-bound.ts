/**
 * How many sticks are needed at least, by linear programming with patterns made as they are wanted: Gilmore and Gomory, A
 * linear programming approach to the cutting-stock problem, Operations Research 9 (1961) and 11 (1963), from memory.
 */
import { fullestPattern } from './fullest-pattern';
import type { Pattern, StockAsk } from './stock';

export interface StockBound {
  /** A whole number that no plan can be under. */
  readonly atLeast: number;
  /** What each length counts for: a stick never holds more than 1 of them together. */
  readonly worths: readonly number[];
  /** Patterns, and how often each would be cut if parts of a stick could be. */
  readonly shares: readonly { readonly pattern: Pattern; readonly times: number }[];
}

/** What doubles lose in the sums below, in sticks. */
const LOST = 1e-7;
const SMALL = 1e-9;

/** Work on the basis that is done at most, in numbers changed: of a hundred lengths and more it is cut short. */
const MOST_WORK = 2e7;

/** @param enough a plan of so many sticks is known: a bound that reaches it needs no more work. */
export function boundOf(ask: StockAsk, enough: number): StockBound {
  const { stick, wanted } = ask;
  const basis = startBasis(ask);
  let best = { bound: wanted.reduce((sum, { size, count }) => sum + size * count, 0) / stick, worths: wanted.map(({ size }) => size / stick) }; // prettier-ignore
  const turns = Math.min(40 * wanted.length + 200, MOST_WORK / wanted.length ** 2);
  for (let turn = 0; turn < turns && Math.ceil(best.bound - LOST) < enough; turn += 1) {
    const worths = wanted.map((_, column) => basis.inverse.reduce((sum, row) => sum + (row[column] ?? 0), 0));
    const { pattern, worth, most } = fullestPattern(ask, worths);
    // Farley 1990: whatever the worths, divided by the most that a stick can hold of them they bound every plan.
    const scaled = worths.map((one) => one / Math.max(1, most));
    const bound = scaled.reduce((sum, one, index) => sum + one * (wanted[index]?.count ?? 0), 0);
    if (bound > best.bound) best = { bound, worths: scaled };
    if (worth <= 1 + SMALL || !enter(basis, pattern)) break;
  }
  const shares = basis.patterns.map((pattern, row) => ({ pattern, times: basis.times[row] ?? 0 }));
  return { atLeast: Math.ceil(best.bound - LOST), worths: best.worths, shares };
}

interface Basis {
  readonly patterns: Pattern[];
  readonly inverse: number[][];
  readonly times: number[];
}

/** Each length by itself, as often as a stick holds it. */
function startBasis({ stick, wanted }: StockAsk): Basis {
  const most = wanted.map(({ size, count }) => Math.min(count, Math.floor(stick / size)));
  const only = (row: number, value: number) => wanted.map((_, column) => (column === row ? value : 0));
  return {
    patterns: most.map((count, row) => only(row, count)),
    inverse: most.map((count, row) => only(row, 1 / count)),
    times: wanted.map(({ count }, row) => count / (most[row] ?? 1)),
  };
}

/** Takes a pattern into the basis in place of the one that is used up first; false where none is. */
function enter({ patterns, inverse, times }: Basis, pattern: Pattern): boolean {
  const change = inverse.map((row) => row.reduce((sum, one, column) => sum + one * (pattern[column] ?? 0), 0));
  let leaving = -1;
  let step = Infinity;
  change.forEach((by, row) => {
    const ratio = by > SMALL ? (times[row] ?? 0) / by : Infinity;
    if (ratio < step - SMALL) [leaving, step] = [row, ratio];
  });
  const pivot = inverse[leaving];
  if (!pivot) return false;
  const by = change[leaving] ?? 1;
  const scaled = pivot.map((one) => one / by);
  inverse.forEach((row, place) => {
    const factor = change[place] ?? 0;
    if (place !== leaving) inverse[place] = row.map((one, column) => one - factor * (scaled[column] ?? 0));
    times[place] = place === leaving ? step : Math.max(0, (times[place] ?? 0) - factor * step);
  });
  inverse[leaving] = scaled;
  patterns[leaving] = pattern;
  return true;
}
