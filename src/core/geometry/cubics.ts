/** Curved edges as cubic Bézier curves, for pages and screens that know no others. */
import type { Point } from './box';
import { directionOn, pointOn, startAngle, type ArcEdge, type Edge, type OvalEdge } from './edge';

/** Start, two control points, end. */
export type Cubic = readonly [Point, Point, Point, Point];

/** A curve's point and derivative at a value of its parameter. */
interface Followed {
  readonly at: Point;
  readonly speed: Point;
}

/** Of a line one straight cubic; of a curve as many as keep within `tolerance` of it, mm. */
export function cubicsOf(edge: Edge, tolerance = 1e-4): readonly Cubic[] {
  if (edge.kind === 'line') return [[edge.from, pointOn(edge, 1 / 3), pointOn(edge, 2 / 3), edge.to]];
  const count = countOf(edge, tolerance);
  const follow = edge.kind === 'arc' ? (part: number) => onArc(edge, part) : (part: number) => onOval(edge, part);
  return Array.from({ length: count }, (_, index) => {
    const [from, to] = [follow(index / count), follow((index + 1) / count)];
    // Hermite's cubic: both ends and both derivatives are the curve's own.
    const third = edge.kind === 'arc' ? arcHandle(edge, count) : 1 / (3 * count);
    return [
      index === 0 ? edge.from : from.at,
      { x: from.at.x + from.speed.x * third, y: from.at.y + from.speed.y * third },
      { x: to.at.x - to.speed.x * third, y: to.at.y - to.speed.y * third },
      index === count - 1 ? edge.to : to.at,
    ];
  });
}

/** With its middle on the circle too: 4/3 tan(angle / 4) of the radius, in terms of the part's speed. */
function arcHandle({ sweep }: ArcEdge, count: number): number {
  const angle = Math.abs(sweep) / count;
  return ((4 / 3) * Math.tan(angle / 4)) / (angle * count);
}

function onArc(edge: ArcEdge, part: number): Followed {
  const angle = startAngle(edge) + part * edge.sweep;
  const at = pointOn(edge, part);
  const speed = { x: -edge.radius * Math.sin(angle) * edge.sweep, y: edge.radius * Math.cos(angle) * edge.sweep };
  return { at, speed };
}

/** A parallel curve goes as the ellipse does, faster by its distance over the radius of curvature. */
function onOval(edge: OvalEdge, part: number): Followed {
  const t = edge.start + part * edge.sweep;
  const { x, y } = edge.radii;
  const speed = Math.hypot(x * Math.sin(t), y * Math.cos(t));
  const along = directionOn(edge, part);
  const length = (speed + (edge.away * x * y) / speed ** 2) * Math.abs(edge.sweep);
  return { at: pointOn(edge, part), speed: { x: along.x * length, y: along.y * length } };
}

/** An arc's error falls with the sixth power of its angle (2.7e-4 r at a quarter), an oval's with the fourth. */
function countOf(edge: ArcEdge | OvalEdge, tolerance: number): number {
  if (edge.kind === 'arc') {
    const quarters = Math.abs(edge.sweep) / (Math.PI / 2);
    return Math.max(1, Math.ceil(quarters * Math.max(1, ((2.8e-4 * edge.radius) / tolerance) ** (1 / 6))));
  }
  const { x, y } = edge.radii;
  // The fourth derivative is largest where the ellipse bends most; found by trial over all proportions up to 1 : 20.
  const bend = Math.max(x, y) + Math.abs(edge.away) * (Math.max(x, y) / Math.min(x, y)) ** 3;
  return Math.max(2, Math.ceil(Math.abs(edge.sweep) * (bend / (60 * tolerance)) ** (1 / 4)));
}
