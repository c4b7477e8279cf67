/** Strips that hold the glazing off: hidden under the lip, the long ones whole and the short ones between them. */
import type { Size } from '../geometry/box';
import type { Package } from '../job/package';
import { lengthText, type Showing } from '../units';
import { orderLength } from './order-size';
import type { Piece } from './piece';

/**
 * Two lines of two strips each; none without a spacer, and none where the lip leaves nothing to hide one under.
 *
 * @param hidden how much of the blank's edge the lip covers, mm.
 */
export function spacerPieces(spacer: Package['spacer'], blank: Size, hidden: number, showing: Showing): Piece[] {
  if (!spacer || hidden <= 0) return [];
  const lying = blank.width >= blank.height;
  const [long, short] = lying ? [blank.width, blank.height] : [blank.height, blank.width];
  const between = short - 2 * hidden;
  const strip = (name: string, length: number, across: boolean, rule: string): Piece => {
    const size = (along: number): Size =>
      across ? { width: along, height: hidden } : { width: hidden, height: along };
    return {
      kind: 'spacer',
      name,
      material: 'spacer strip',
      count: 2,
      cut: size(length),
      order: size(orderLength(length, Infinity, showing)),
      thickness: spacer.thickness,
      area: { full: length * hidden, net: length * hidden },
      comesWithFrame: false,
      rule,
    };
  };
  const under = `as wide as the lip hides, ${lengthText(hidden, showing)}, or narrower`;
  const [first, second] = lying
    ? (['top and bottom', 'left and right'] as const)
    : (['left and right', 'top and bottom'] as const);
  return [
    strip(`Spacer, ${first}`, long, lying, `the whole side; ${under}`),
    ...(between > 0 ? [strip(`Spacer, ${second}`, between, !lying, `between the long strips; ${under}`)] : []),
  ];
}
