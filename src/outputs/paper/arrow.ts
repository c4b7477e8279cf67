/** A small arrow that points to the top of something: upward, or to the left where it lies turned. */
import type { Box, Point } from '../../core/geometry/box';
import { PENS } from './pens';
import type { Surface } from './surface';

/** @returns the box that it takes. @param long mm from tip to end. */
export function drawArrow(surface: Surface, tip: Point, long: number, way: 'up' | 'left'): Box {
  const half = long * 0.28;
  const back = (along: number, aside: number): Point =>
    way === 'up' ? { x: tip.x + aside, y: tip.y - along } : { x: tip.x + along, y: tip.y + aside };
  surface.line(back(long * 0.5, 0), back(long, 0), PENS.edge);
  surface.fillArea([tip, back(long * 0.55, half), back(long * 0.55, -half)], 'black');
  const [one, other] = [back(0, half), back(long, -half)];
  return {
    left: Math.min(one.x, other.x),
    right: Math.max(one.x, other.x),
    bottom: Math.min(one.y, other.y),
    top: Math.max(one.y, other.y),
  };
}
