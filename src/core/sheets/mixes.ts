/** How many sheets of each kind a plan within a goal might take: each mix is a way of its own to get there. */
import type { Field } from './field';

/** How many of each of the stock. */
export type Mix = readonly number[];

/** More than so many are not tried side by side. */
const MOST_MIXES = 5;
/** Kinds of stock beyond which they are not told apart. */
const MOST_KINDS = 4;

/**
 * Mixes that cost no more than the goal, that nothing can be added to, and whose area is enough; those with the most area
 * first. Undefined where there are too many kinds to tell them apart: any mix within the goal will do then.
 */
export function mixesWithin({ stock, pieces, byPrice }: Field, goal: number): readonly Mix[] | undefined {
  if (byPrice.length > MOST_KINDS || stock.some(({ cost, count }) => count > 0 && cost <= 0)) return undefined;
  const largest = Math.max(...stock.map(({ width, height }) => width * height));
  const areas = stock.map(({ width, height }) => (width * height) / largest);
  const needed = pieces.reduce((sum, { area }) => sum + area, 0) * (1 - 1e-9);
  const found: { readonly mix: Mix; readonly area: number }[] = [];
  const fill = (kind: number, left: number, mix: readonly number[]) => {
    const { cost, count } = stock[kind]!;
    const most = count === 0 ? 0 : Math.min(count, Math.floor(left / cost + 1e-9), pieces.length);
    if (kind === stock.length - 1) {
      const whole = [...mix, most];
      const area = whole.reduce((sum, each, index) => sum + each * areas[index]!, 0);
      if (area >= needed) found.push({ mix: whole, area });
      return;
    }
    for (let each = 0; each <= most; each++) fill(kind + 1, left - each * cost, [...mix, each]);
  };
  fill(0, goal, []);
  // Another that has as many of each and one more of some is as good a way and has more room.
  const isLess = (one: Mix, other: Mix) => one !== other && one.every((each, index) => each <= other[index]!);
  const best = found.sort((a, b) => b.area - a.area).slice(0, 200);
  return best
    .filter(({ mix }) => !best.some((other) => isLess(mix, other.mix)))
    .slice(0, MOST_MIXES)
    .map(({ mix }) => mix);
}
