/** The lowest a frame on a sliding wire can hang, by trying places and tilts alone: no forces, no angles of wires. */
import type { Rig } from '../../../src/core/hanging/statics/wire-poses';

const ROUNDS = 70;

/** Least of a function between two ends, by thirds. */
function least(from: number, to: number, of: (at: number) => number): number {
  let [low, high] = [from, to];
  for (let round = 0; round < ROUNDS; round++) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (of(a) < of(b)) high = b;
    else low = a;
  }
  return (low + high) / 2;
}

/** @param near tilt about which it is searched, radians. */
export function lowestPose(rig: Rig, near: number): { readonly tilt: number; readonly height: number } {
  const height = (tilt: number) => {
    const x = least(rig.rings[0].x - 400, rig.rings[0].x + 400, (at) => lowestAt(rig, tilt, at));
    return lowestAt(rig, tilt, x);
  };
  const tilt = least(near - 0.02, near + 0.02, height);
  return { tilt, height: height(tilt) };
}

/** How low the middle comes with the left ring at an x and the frame at a tilt: down until the wire is used up. */
function lowestAt({ hooks, rings, centre, length }: Rig, tilt: number, x: number): number {
  const [sin, cos] = [Math.sin(tilt), Math.cos(tilt)];
  const arm = (to: { x: number; y: number }) => {
    const [dx, dy] = [to.x - rings[0].x, to.y - rings[0].y];
    return { x: dx * cos - dy * sin, y: dx * sin + dy * cos };
  };
  const [other, middle] = [arm(rings[1]), arm(centre)];
  const used = (y: number) =>
    Math.hypot(hooks[0].x - x, hooks[0].y - y) +
    Math.hypot(hooks[1].x - hooks[0].x, hooks[1].y - hooks[0].y) +
    Math.hypot(hooks[1].x - x - other.x, hooks[1].y - y - other.y);
  // Above the hooks the wire would be used up the other way round.
  let [low, high] = [-5000, Math.min(hooks[0].y, hooks[1].y - other.y)];
  if (used(high) > length) return 5000 + used(high);
  for (let round = 0; round < ROUNDS; round++) {
    const y = (low + high) / 2;
    if (used(y) > length) low = y;
    else high = y;
  }
  return high + middle.y;
}
