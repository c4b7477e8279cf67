/** The rectangles of blank and frame, mm of the front view. */
import { grow, type Box } from '../../core/geometry/box';
import type { Layout } from '../../core/layout/layout';

/** The blank, with its lower left corner at the origin. */
export function blankOf(layout: Layout): Box {
  const { width, height } = layout.frame.blank;
  return { left: 0, bottom: 0, right: width, top: height };
}

/** The rectangles of the frame round the blank: rabbet, sight edge and outside. */
export function frameBoxes(layout: Layout): { rabbet: Box; sight: Box; outside: Box } {
  const { allowance, lip, mouldingWidth } = layout.frame;
  const rabbet = grow(blankOf(layout), allowance / 2);
  const sight = grow(rabbet, -lip);
  return { rabbet, sight, outside: grow(sight, mouldingWidth) };
}
