/** The fewest sticks for some lengths: a plan, and whether it is proven that no other needs fewer. */
import { assert } from '../problem';
import { fillSticks } from './fill-sticks';
import { sizeOf, type Pattern, type StockAsk } from './stock';
import { boundOf, type StockBound } from './stock-bound';
import { searchStock } from './stock-search';

export interface StockPlan {
  /** One for each stick, the fullest first. */
  readonly patterns: readonly Pattern[];
  /** No plan needs fewer than this. */
  readonly atLeast: number;
}

/** Steps of one search: some tenths of a second. */
const STEPS = 400_000;

/** Deterministic: what is not settled within a number of steps is left with its bound. */
export function cutStock(ask: StockAsk): StockPlan {
  assert(
    ask.wanted.every(({ size, count }) => size > 0 && size <= ask.stick && count > 0),
    'every length goes into a stick',
  );
  if (ask.wanted.length === 0) return { patterns: [], atLeast: 0 };
  const filled = fillSticks(ask);
  const bound = boundOf(ask, filled.length);
  const quick = filled.length <= bound.atLeast ? filled : fewer(filled, roundedPlan(ask, bound));
  if (quick.length <= bound.atLeast) return planOf(ask, quick, bound.atLeast);
  const { patterns = quick, isComplete } = searchStock(ask, { ...bound, under: quick.length, steps: STEPS });
  return planOf(ask, patterns, isComplete ? patterns.length : bound.atLeast);
}

/** What the linear program cuts of whole sticks, and what is left of them by search. */
function roundedPlan(ask: StockAsk, { atLeast, worths, shares }: StockBound): Pattern[] {
  const whole = shares.flatMap(({ pattern, times }) => Array.from({ length: Math.floor(times + 1e-9) }, () => pattern));
  const wanted = ask.wanted.map(({ size, count }, index) => ({
    size,
    count: Math.max(0, count - whole.reduce((sum, pattern) => sum + (pattern[index] ?? 0), 0)),
  }));
  const rest = { ...ask, wanted };
  const quick = fillSticks(rest);
  const limits = { under: quick.length, atLeast: atLeast - whole.length, worths, steps: STEPS };
  const searched = quick.length <= limits.atLeast ? undefined : searchStock(rest, limits).patterns;
  return trimmed(ask, [...whole, ...(searched ?? quick)]);
}

function fewer(one: Pattern[], other: Pattern[]): Pattern[] {
  return other.length < one.length ? other : one;
}

/** Nothing is cut that is not wanted. */
function trimmed({ wanted }: StockAsk, patterns: readonly Pattern[]): Pattern[] {
  const left = wanted.map(({ count }) => count);
  return patterns
    .map((pattern) =>
      pattern.map((count, index) => {
        const taken = Math.min(count, left[index] ?? 0);
        left[index] = (left[index] ?? 0) - taken;
        return taken;
      }),
    )
    .filter((pattern) => pattern.some((count) => count > 0));
}

function planOf(ask: StockAsk, patterns: readonly Pattern[], atLeast: number): StockPlan {
  const fullestFirst = (a: Pattern, b: Pattern) => sizeOf(ask, b) - sizeOf(ask, a) || compare(b, a);
  return { patterns: patterns.toSorted(fullestFirst), atLeast };
}

function compare(a: Pattern, b: Pattern): number {
  const place = a.findIndex((count, index) => count !== b[index]);
  return place < 0 ? 0 : (a[place] ?? 0) - (b[place] ?? 0);
}
