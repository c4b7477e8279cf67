/** Areas and turns worked out from corners alone, so that the plan is judged by nothing of its own. */
import type { Point } from '../../../src/core/geometry/box';

/** Twice the signed area of a closed outline (shoelace formula): positive when it runs counter-clockwise. */
export function twiceArea(points: readonly Point[]): number {
  return points.reduce((sum, a, index) => {
    const b = points[(index + 1) % points.length] as Point;
    return sum + a.x * b.y - b.x * a.y;
  }, 0);
}

/** Positive when `to` lies to the left of one who travels from `start` to `end`. */
export function leftOf(start: Point, end: Point, to: Point): number {
  return (end.x - start.x) * (to.y - start.y) - (end.y - start.y) * (to.x - start.x);
}
