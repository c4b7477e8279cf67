/** Makes one simple outline of a curve that runs into itself, by keeping what has the inside on its left only. */
import type { Point } from './box';
import { directionOn, pointOn } from './edge';
import { flatten, type Outline } from './outline';
import { crossingOf } from './region';
import { loopsOf, splitAtCrossings } from './union';

/** Turns that are less are none. */
const STRAIGHT = 1e-9;

/** True of an outline that bends to the left only: none of its parallel curves can run into itself. */
export function isConvex(outline: Outline): boolean {
  return outline.every((edge, index) => {
    const next = outline[(index + 1) % outline.length];
    if (!next || (edge.kind !== 'line' && edge.sweep < 0)) return false;
    const [a, b] = [directionOn(edge, 1), directionOn(next, 0)];
    return a.x * b.y - a.y * b.x > -STRAIGHT;
  });
}

/** The outline as it is where it does not cross itself; undefined where it encloses no piece, or several, or one with a hole. */
export function cleaned(outline: Outline): Outline | undefined {
  if (!crossingOf(outline)) return outline;
  const points = flatten(outline, FINE);
  const pieces = splitAtCrossings(outline).filter((edge) => {
    const { x, y } = pointOn(edge, 0.5);
    const way = directionOn(edge, 0.5);
    const beside = (side: number) => windingOf(points, { x: x - side * way.y * BESIDE, y: y + side * way.x * BESIDE });
    return beside(1) > 0 && beside(-1) <= 0;
  });
  const loops = loopsOf(pieces);
  return loops.length === 1 ? loops[0] : undefined;
}

/** How finely a curve is followed to count its turns round a point, and how far beside it they are counted, mm. */
const FINE = 0.0005;
const BESIDE = 0.003;

/** How often closed chords go round a point, anticlockwise. */
function windingOf(points: readonly Point[], { x, y }: Point): number {
  return points.reduce((turns, from, index) => {
    const to = points[(index + 1) % points.length] ?? from;
    if (from.y > y === to.y > y) return turns;
    const crossing = from.x + ((y - from.y) * (to.x - from.x)) / (to.y - from.y);
    return x < crossing ? turns + (to.y > from.y ? 1 : -1) : turns;
  }, 0);
}
