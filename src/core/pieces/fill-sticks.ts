/** A plan that is quickly found: stick after stick, the longest that is left with whatever fills it best. */
import { fullestPattern } from './fullest-pattern';
import type { Pattern, StockAsk } from './stock';

export function fillSticks({ stick, wanted }: StockAsk): Pattern[] {
  const left = wanted.map(({ count }) => count);
  const patterns: Pattern[] = [];
  for (;;) {
    const longest = left.findIndex((count) => count > 0);
    const first = wanted[longest];
    if (!first) return patterns;
    const others = wanted.map(({ size }, index) => ({ size, count: (left[index] ?? 0) - (index === longest ? 1 : 0) }));
    const { pattern } = fullestPattern(
      { stick: stick - first.size, wanted: others },
      others.map(({ size }) => size),
    );
    const filled = pattern.map((count, index) => count + (index === longest ? 1 : 0));
    filled.forEach((count, index) => (left[index] = (left[index] ?? 0) - count));
    patterns.push(filled);
  }
}
