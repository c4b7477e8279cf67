/** What of a shape is gone in its parallel curve: whole sides and bends, not the ends of what is only shortened. */
import { directionOn, type Edge } from '../geometry/edge';
import type { Parallel } from '../geometry/offset';
import type { Outline } from '../geometry/outline';

/** Directions that differ by less go on smoothly, radians. */
const SMOOTH = 1e-6;

/**
 * How many edges of the outline cannot be followed so far. Of edges that run on without a corner, as the arcs of one drawn
 * curve do, some may end before the others; they count only where all are gone, or where a bend is tighter than the way.
 */
export function lostBends(outline: Outline, { vanished }: Pick<Parallel, 'vanished'>, away: number): number {
  const gone = new Set(vanished);
  return vanished.filter(
    (index) => isTight(outline[index], away) || runOf(outline, index).every((one) => gone.has(one)),
  ).length;
}

function isTight(edge: Edge | undefined, away: number): boolean {
  return edge?.kind === 'arc' && edge.sweep * away < 0 && edge.radius <= Math.abs(away);
}

/** The edges, by their index, that an edge runs on from and into without a corner. */
function runOf(outline: Outline, index: number): number[] {
  const run = [index];
  for (const step of [1, -1]) {
    for (let at = index; run.length < outline.length;) {
      const next = (at + step + outline.length) % outline.length;
      const [before, after] = step > 0 ? [outline[at], outline[next]] : [outline[next], outline[at]];
      if (next === index || !before || !after || !runsOn(before, after)) break;
      run.push(next);
      at = next;
    }
  }
  return run;
}

function runsOn(before: Edge, after: Edge): boolean {
  const [a, b] = [directionOn(before, 1), directionOn(after, 0)];
  return Math.abs(a.x * b.y - a.y * b.x) < SMOOTH && a.x * b.x + a.y * b.y > 0;
}
