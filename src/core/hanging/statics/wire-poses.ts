/** Poses of a frame on a wire over one hook or two, at any heights: a wire that slides on its hooks, and one that grips. */
import type { Point } from '../../geometry/box';
import { minus, momentOf, plus, turned, type Pose } from './settle';
import { pullOfTwo } from './two-wires';

/** What hangs, and on what. */
export interface Rig {
  /** Left and right; one hook is both. */
  readonly hooks: readonly [Point, Point];
  /** On the frame hanging level, from any origin on it: the rings, left and right, and the centre of mass. */
  readonly rings: readonly [Point, Point];
  readonly centre: Point;
  /** From ring to ring. */
  readonly length: number;
}

/**
 * Without friction the pull is the same all along, so that both slopes make one angle with the level and the ends slide
 * until they do. With the line between the rings at a tilt as `span`, the hooks `apart` and `slope` of wire to either
 * side of them together: `apart.x + slope cos(angle) = span.x`, `apart.y + (left - right) sin(angle) = span.y`.
 */
export function slidingPose({ hooks, rings, centre, length }: Rig, tilt: number): Pose | undefined {
  const [left, right] = hooks;
  const span = turned(minus(rings[1], rings[0]), tilt);
  const apart = minus(right, left);
  const slope = length - Math.hypot(apart.x, apart.y);
  const cos = (span.x - apart.x) / slope;
  if (!(slope > 0) || Math.abs(cos) >= 1) return undefined;
  const sin = Math.sqrt(1 - cos * cos);
  const more = (span.y - apart.y) / sin;
  const leftSlope = (slope + more) / 2;
  if (leftSlope <= 0 || leftSlope >= slope) return undefined;
  const from = { x: left.x - leftSlope * cos, y: left.y - leftSlope * sin };
  const tension = 1 / (2 * sin);
  return poseFrom(from, span, rings, centre, tilt, [
    { x: tension * cos, y: tension * sin },
    { x: -tension * cos, y: tension * sin },
  ]);
}

/**
 * A wire that does not move on its hooks: what lies to the left and to the right of them keeps its length, and each end
 * swings round its hook.
 *
 * @param leftSlope of the wire, from the left ring to its hook.
 */
export function grippingPose(rig: Rig, leftSlope: number, tilt: number): Pose | undefined {
  const { hooks, rings, centre, length } = rig;
  const [left, right] = hooks;
  const span = turned(minus(rings[1], rings[0]), tilt);
  const rightSlope = length - Math.hypot(right.x - left.x, right.y - left.y) - leftSlope;
  const from = lowerMeeting(left, leftSlope, minus(right, span), rightSlope);
  if (!from) return undefined;
  const to = plus(from, span);
  const angles = [slopeOf(from, left, 1), slopeOf(to, right, -1)] as const;
  const pulls = pullOfTwo(angles[0], angles[1]);
  // A wire can't push.
  if (!(pulls.left >= 0 && pulls.right >= 0)) return undefined;
  return poseFrom(from, span, rings, centre, tilt, [
    { x: pulls.left * Math.cos(angles[0]), y: pulls.left * Math.sin(angles[0]) },
    { x: -pulls.right * Math.cos(angles[1]), y: pulls.right * Math.sin(angles[1]) },
  ]);
}

/** Angle of a wire above the level, seen from its ring inward: `way` is 1 to the right, -1 to the left. */
function slopeOf(ring: Point, hook: Point, way: 1 | -1): number {
  return Math.atan2(hook.y - ring.y, way * (hook.x - ring.x));
}

/** Where circles round two points meet, the lower of the two places. */
function lowerMeeting(a: Point, radiusA: number, b: Point, radiusB: number): Point | undefined {
  const line = minus(b, a);
  const far = Math.hypot(line.x, line.y);
  if (far < 1e-12 || radiusA <= 0 || radiusB <= 0) return undefined;
  const along = (far + ((radiusA - radiusB) * (radiusA + radiusB)) / far) / 2;
  const aside = (radiusA - along) * (radiusA + along);
  if (aside < 0) return undefined;
  const unit = { x: line.x / far, y: line.y / far };
  const foot = { x: a.x + along * unit.x, y: a.y + along * unit.y };
  const off = Math.sqrt(aside);
  const places = [1, -1].map((way) => ({ x: foot.x - way * off * unit.y, y: foot.y + way * off * unit.x }));
  return places.toSorted((one, other) => one.y - other.y)[0];
}

function poseFrom(
  from: Point,
  span: Point,
  rings: Rig['rings'],
  centre: Point,
  tilt: number,
  forces: readonly [Point, Point],
): Pose {
  const at = [from, plus(from, span)] as const;
  const middle = plus(from, turned(minus(centre, rings[0]), tilt));
  return {
    tilt,
    rings: at,
    centre: middle,
    tensions: [Math.hypot(forces[0].x, forces[0].y), Math.hypot(forces[1].x, forces[1].y)],
    moment: momentOf(forces[0], at[0], middle) + momentOf(forces[1], at[1], middle),
  };
}
