/** The whole line, circle or oval an edge is part of: how far a point lies from it, and beside which part of the edge. */
import type { Point } from './box';
import { directionOn, distance, startAngle, unit, type Edge, type OvalEdge } from './edge';
import { SAME } from './tolerance';

export type Carrier =
  | { readonly kind: 'line'; readonly from: Point; readonly along: Point }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number }
  | ({ readonly kind: 'oval' } & Pick<OvalEdge, 'centre' | 'radii' | 'away'>);

/** Signed distance of a point, mm, and the unit vector in which it grows: to the left of a line, outward of a closed curve. */
interface Level {
  readonly value: number;
  readonly rise: Point;
}

/** An oval of two equal axes is a circle. */
export function carrierOf(edge: Edge): Carrier {
  if (edge.kind === 'line') return { kind: 'line', from: edge.from, along: directionOn(edge, 0) };
  if (edge.kind === 'arc') return { kind: 'circle', centre: edge.centre, radius: edge.radius };
  const { centre, radii, away } = edge;
  return Math.abs(radii.x - radii.y) < SAME * SAME
    ? { kind: 'circle', centre, radius: radii.x + away }
    : { kind: 'oval', centre, radii, away };
}

export function levelOf(carrier: Carrier, at: Point): Level {
  if (carrier.kind === 'line') {
    const rise = { x: -carrier.along.y, y: carrier.along.x };
    return { value: (at.x - carrier.from.x) * rise.x + (at.y - carrier.from.y) * rise.y, rise };
  }
  const way = { x: at.x - carrier.centre.x, y: at.y - carrier.centre.y };
  if (carrier.kind === 'circle') {
    const far = Math.hypot(way.x, way.y);
    return { value: far - carrier.radius, rise: far > 0 ? { x: way.x / far, y: way.y / far } : { x: 1, y: 0 } };
  }
  const { radii, away } = carrier;
  const t = footOn(radii, way);
  const [cos, sin] = [Math.cos(t), Math.sin(t)];
  const rise = unit({ x: radii.y * cos, y: radii.x * sin });
  return { value: (way.x - radii.x * cos) * rise.x + (way.y - radii.y * sin) * rise.y - away, rise };
}

/** True where two edges lie on one line, circle or oval. */
export function onOneCarrier(a: Edge, b: Edge): boolean {
  if (a.kind === 'line' && b.kind === 'line') {
    const [long, short] = distance(a.from, a.to) >= distance(b.from, b.to) ? [a, b] : [b, a];
    const carrier = carrierOf(long);
    return [short.from, short.to].every((end) => Math.abs(levelOf(carrier, end).value) <= SAME);
  }
  const [one, other] = [carrierOf(a), carrierOf(b)];
  if (one.kind === 'circle' && other.kind === 'circle')
    return distance(one.centre, other.centre) + Math.abs(one.radius - other.radius) <= SAME;
  if (one.kind === 'oval' && other.kind === 'oval') {
    const off = distance(one.centre, other.centre) + distance(one.radii, other.radii);
    return off + Math.abs(one.away - other.away) <= SAME;
  }
  return false;
}

/** The part of the edge beside a point, 0 at its start and 1 at its end; beyond its ends less or more. */
export function partBeside(edge: Edge, at: Point): number {
  if (edge.kind === 'line') {
    const [x, y] = [edge.to.x - edge.from.x, edge.to.y - edge.from.y];
    return ((at.x - edge.from.x) * x + (at.y - edge.from.y) * y) / (x * x + y * y);
  }
  const way = { x: at.x - edge.centre.x, y: at.y - edge.centre.y };
  const [turn, start] =
    edge.kind === 'arc' ? [Math.atan2(way.y, way.x), startAngle(edge)] : [footOn(edge.radii, way), edge.start];
  const whole = 2 * Math.PI;
  const swept = Math.abs(edge.sweep);
  const raw = (edge.sweep > 0 ? turn - start : start - turn) % whole;
  const gone = raw < 0 ? raw + whole : raw;
  // What lies on the far side belongs to the nearer end.
  return (gone > (swept + whole) / 2 ? gone - whole : gone) / swept;
}

/** Nearer the longer axis, of the shorter one, a point is as good as on it, and the steps would lose themselves in rounding. */
const ON_AXIS = 1e-12;

/** More steps than the slowest case needs, a point all but on the longer axis. */
const MOST = 60;

/**
 * Eccentric anomaly of the point of an ellipse nearest to another, from the middle: the root of a convex function that
 * Newton's steps approach from one side (Eberly, "Distance from a Point to an Ellipse", 2013).
 */
function footOn({ x: a, y: b }: Point, { x, y }: Point): number {
  if (a < b) return Math.PI / 2 - footOn({ x: b, y: a }, { x: y, y: x });
  const [u, v] = [Math.abs(x) / a, Math.abs(y) / b];
  const ratio = (a / b) ** 2;
  let cos: number;
  let sin: number;
  if (v > ON_AXIS) {
    let s = Math.max(v - 1, ratio * (u - 1));
    for (let step = 0; step < MOST; step += 1) {
      const [p, q] = [(ratio * u) / (s + ratio), v / (s + 1)];
      const value = p * p + q * q - 1;
      const next = s + value / (2 * ((p * p) / (s + ratio) + (q * q) / (s + 1)));
      if (!(next > s)) break;
      s = next;
    }
    [cos, sin] = [(ratio * u) / (s + ratio), v / (s + 1)];
  } else {
    // On the longer axis: the way to the curve is square to it, or leads to its end.
    cos = ratio > 1 ? Math.min(1, (ratio * u) / (ratio - 1)) : 1;
    sin = Math.sqrt(1 - cos * cos);
  }
  return Math.atan2(y < 0 ? -sin : sin, x < 0 ? -cos : cos);
}
