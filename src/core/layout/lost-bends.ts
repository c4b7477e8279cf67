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
  if (vanished.length === 0) return 0;
  const gone = new Set(vanished);
  const runs = runsOf(outline);
  const left = new Set(runs.filter((_, index) => !gone.has(index)));
  return vanished.filter((index) => isTight(outline[index], away) || !left.has(runs[index] ?? 0)).length;
}

function isTight(edge: Edge | undefined, away: number): boolean {
  return edge?.kind === 'arc' && edge.sweep * away < 0 && edge.radius <= Math.abs(away);
}

/** For every edge the number of the run it is part of, counted from corner to corner. */
function runsOf(outline: Outline): number[] {
  let run = 0;
  const numbers = outline.map((edge, index) => (index > 0 && runsOn(outline[index - 1], edge) ? run : ++run));
  // The last run may go on in the first one.
  const goesRound = runsOn(outline.at(-1), outline[0]);
  return goesRound ? numbers.map((number) => (number === run ? 1 : number)) : numbers;
}

function runsOn(before: Edge | undefined, after: Edge | undefined): boolean {
  if (!before || !after) return false;
  const [a, b] = [directionOn(before, 1), directionOn(after, 0)];
  return Math.abs(a.x * b.y - a.y * b.x) < SMOOTH && a.x * b.x + a.y * b.y > 0;
}
