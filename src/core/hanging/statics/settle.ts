/** Where a hanging frame comes to rest: followed downhill from level until nothing turns it any more. */
import type { Point } from '../../geometry/box';

/** A frame hanging tilted, every force in balance but for what turns it. */
export interface Pose {
  /** Radians anticlockwise from level. */
  readonly tilt: number;
  /** The rings, left and right, and the centre of mass, as they lie on the wall. */
  readonly rings: readonly [Point, Point];
  readonly centre: Point;
  /** In the wire at the left and at the right ring, as parts of the weight. */
  readonly tensions: readonly [number, number];
  /** What turns it anticlockwise, weight times mm; 0 at rest. The work of gravity: it falls that way. */
  readonly moment: number;
}

/** Radians between the poses looked at on the way. */
const STEP = Math.PI / 1440;
const MOST_STEPS = 720;
/** Weight times mm: what is left of a moment that is none. */
const NOTHING = 1e-9;
/** How far to either side of level it is tried whether the frame comes back, radians. */
const NUDGE = 1e-5;

/**
 * The first pose downhill from level in which nothing turns the frame and to which it comes back when it is nudged.
 * Undefined where it slides on until a ring meets its hook, or where it can't hang level to begin with.
 *
 * @param poseAt undefined where the wire does not reach.
 */
export function settle(poseAt: (tilt: number) => Pose | undefined): Pose | undefined {
  const level = poseAt(0);
  if (!level) return undefined;
  if (Math.abs(level.moment) < NOTHING) {
    const nudged = poseAt(NUDGE);
    if (!nudged || nudged.moment <= 0) return level;
    return walk(poseAt, 1);
  }
  return walk(poseAt, Math.sign(level.moment) as 1 | -1);
}

/** True where a frame that hangs level comes back to it by itself. */
export function staysLevel(poseAt: (tilt: number) => Pose | undefined): boolean {
  const [left, right] = [poseAt(NUDGE), poseAt(-NUDGE)];
  return left !== undefined && right !== undefined && left.moment < 0 && right.moment > 0;
}

function walk(poseAt: (tilt: number) => Pose | undefined, way: 1 | -1): Pose | undefined {
  for (let step = 1; step <= MOST_STEPS; step++) {
    const pose = poseAt(way * step * STEP);
    if (!pose) return undefined;
    if (pose.moment * way <= 0) return between(poseAt, way * (step - 1) * STEP, way * step * STEP, way);
  }
  return undefined;
}

/** Halves the way between a pose that turns on and one that turns back until doubles can't tell them apart. */
function between(poseAt: (tilt: number) => Pose | undefined, from: number, to: number, way: 1 | -1): Pose | undefined {
  let [near, far] = [from, to];
  for (let round = 0; round < 60; round++) {
    const middle = (near + far) / 2;
    const pose = poseAt(middle);
    if (!pose) return undefined;
    if (pose.moment * way > 0) near = middle;
    else far = middle;
  }
  return poseAt(far);
}

/** A point of the frame turned about its origin. */
export function turned({ x, y }: Point, angle: number): Point {
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  return { x: x * cos - y * sin, y: x * sin + y * cos };
}

export function minus(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

export function plus(a: Point, b: Point): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

/** What a force turns about a point, anticlockwise. */
export function momentOf(force: Point, at: Point, about: Point): number {
  const arm = minus(at, about);
  return arm.x * force.y - arm.y * force.x;
}
