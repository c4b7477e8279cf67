/** What the checks of a layout share: the slack of doubles, the worst side, a title in quotes. */
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
