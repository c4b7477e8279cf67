/** Distance of a point from an outline, worked out apart from the program's own. */
import type { Point } from '../../../src/core/geometry/box';
import { distance, pointOn, type ArcEdge, type Edge, type OvalEdge } from '../../../src/core/geometry/edge';

/** mm, to some billionths; of an oval by search. */
export function trueDistance(outline: readonly Edge[], at: Point): number {
  return Math.min(...outline.map((edge) => edgeDistance(edge, at)));
}

function edgeDistance(edge: Edge, at: Point): number {
  if (edge.kind === 'arc') return arcDistance(edge, at);
  if (edge.kind === 'oval') return ovalDistance(edge, at);
  const [dx, dy] = [edge.to.x - edge.from.x, edge.to.y - edge.from.y];
  const part = ((at.x - edge.from.x) * dx + (at.y - edge.from.y) * dy) / (dx * dx + dy * dy);
  return distance(at, pointOn(edge, Math.min(1, Math.max(0, part))));
}

/** Beside the arc where the way from its middle parts from the centre by less than half its sweep. */
function arcDistance(edge: ArcEdge, at: Point): number {
  const { centre, radius } = edge;
  const middle = pointOn(edge, 0.5);
  const [a, b] = [
    { x: middle.x - centre.x, y: middle.y - centre.y },
    { x: at.x - centre.x, y: at.y - centre.y },
  ];
  const angle = Math.abs(Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y));
  if (angle <= Math.abs(edge.sweep) / 2) return Math.abs(Math.hypot(b.x, b.y) - radius);
  return Math.min(distance(at, edge.from), distance(at, edge.to));
}

const SAMPLES = 16;

function ovalDistance(edge: OvalEdge, at: Point): number {
  const far = (part: number) => distance(at, pointOn(edge, part));
  const samples = Array.from({ length: SAMPLES + 1 }, (_, index) => far(index / SAMPLES));
  const near = samples.indexOf(Math.min(...samples));
  let [low, high] = [Math.max(0, near - 1) / SAMPLES, Math.min(SAMPLES, near + 1) / SAMPLES];
  for (let turn = 0; turn < 32; turn += 1) {
    const [a, b] = [low + (high - low) * 0.4, low + (high - low) * 0.6];
    if (far(a) < far(b)) high = b;
    else low = a;
  }
  return far((low + high) / 2);
}
