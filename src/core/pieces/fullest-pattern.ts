/** The pattern worth most when each length has a worth: a knapsack with a bound on each count. */
import type { Pattern, StockAsk } from './stock';

export interface Fullest {
  readonly pattern: Pattern;
  readonly worth: number;
  /** No pattern is worth more: `worth` itself, unless the search was given up. */
  readonly most: number;
}

/** Steps of one search; what a framer cuts needs a few dozen. */
const MOST_STEPS = 20_000;

/** Branch and bound, the lengths that are worth most for their size first. */
export function fullestPattern({ stick, wanted }: StockAsk, worths: readonly number[]): Fullest {
  const items = wanted
    .map(({ size, count }, index) => ({ index, size, count, worth: worths[index] ?? 0 }))
    .filter(({ worth, size }) => worth > 0 && size <= stick)
    .sort((a, b) => b.worth / b.size - a.worth / a.size || a.index - b.index);
  const counts = wanted.map(() => 0);
  let best: { pattern: Pattern; worth: number } = { pattern: [...counts], worth: 0 };
  let steps = 0;
  const fill = (place: number, room: number, worth: number): void => {
    steps += 1;
    if (worth > best.worth) best = { pattern: [...counts], worth };
    const item = items[place];
    if (!item || steps > MOST_STEPS || worth + (room * item.worth) / item.size <= best.worth) return;
    for (let count = Math.min(item.count, Math.floor(room / item.size)); count >= 0; count -= 1) {
      counts[item.index] = count;
      fill(place + 1, room - count * item.size, worth + count * item.worth);
    }
    counts[item.index] = 0;
  };
  fill(0, stick, 0);
  const [densest] = items;
  const most = steps > MOST_STEPS && densest ? (stick * densest.worth) / densest.size : best.worth;
  return { ...best, most };
}
