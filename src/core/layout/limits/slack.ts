/** What the checks of a layout share: the slack of doubles, the worst side, words for sides, a title in quotes. */
import { SIDES, type Side } from '../../geometry/box';

/** What double arithmetic may add or lose, mm. */
export const SLACK = 1e-6;

/** The side with the least value. */
export function worstSide(sides: Readonly<Record<Side, number>>): Side {
  return SIDES.reduce((worst, side) => (sides[side] < sides[worst] ? side : worst));
}

/** `"Lady fern" `, or nothing. */
export function titled(title: string): string {
  return title === '' ? '' : `"${title.slice(0, 40)}" `;
}

/** `the left border`, `the left and right borders`, `all four borders`. */
export function bordersAt(sides: readonly Side[]): string {
  if (sides.length === SIDES.length) return 'all four borders';
  const last = sides.at(-1);
  return sides.length === 1 ? `the ${last} border` : `the ${sides.slice(0, -1).join(', ')} and ${last} borders`;
}

/** Groups of those with one key, in order. */
export function alike<T>(items: readonly T[], keyOf: (item: T) => string): (readonly [T, ...T[]])[] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return [...groups.values()];
}
