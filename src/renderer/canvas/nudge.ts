/** Arrow keys as ways on a drawing, x to the right and y up. */
import type { Point } from '../../core/geometry/box';
import { stepLength, type Showing } from '../../core/units';

const ARROWS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};

/** One long; undefined: another key. */
export function arrowOf({ key }: Pick<KeyboardEvent, 'key'>): Point | undefined {
  return ARROWS[key];
}

/** How far an arrow key moves a thing, mm: by the shown step, or by eight of them with Shift; undefined: another key. */
export function nudgeOf(event: Pick<KeyboardEvent, 'key' | 'shiftKey'>, showing: Showing): Point | undefined {
  const arrow = arrowOf(event);
  const step = stepLength(showing) * (event.shiftKey ? 8 : 1);
  return arrow && { x: arrow.x * step, y: arrow.y * step };
}
