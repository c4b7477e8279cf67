/** Edges moved square to themselves; of those that bend too tightly for it only what keeps its distance. */
import type { Point } from './box';
import { directionOn, oval, type ArcEdge, type Edge, type OvalEdge } from './edge';
import { linesWithin, type Strand } from './strand';
import { SAME } from './tolerance';

export interface MovedEdge {
  /** Square from where the edge began and ended. */
  readonly start: Point;
  readonly end: Point;
  /** From start to end without a gap. */
  readonly strands: readonly Strand[];
}

/**
 * The edge moved to the right of its travel, mm (negative: to the left). Where a bend is tighter than the distance, its
 * normals are followed as far as they keep apart only: to the centre of an arc, along the evolute of an ellipse.
 */
export function moveEdge(edge: Edge, follows: number, away: number): MovedEdge {
  const [start, end] = [besideEnd(edge, 0, away), besideEnd(edge, 1, away)];
  const whole = (moved: Edge): MovedEdge => ({
    start,
    end,
    strands: [{ edge: { ...moved, from: start, to: end }, follows, within: false }],
  });
  if (edge.kind === 'line') return whole(edge);
  if (edge.kind === 'oval') return movedOval(edge, follows, outward(edge, away), start, end);
  const radius = edge.radius + outward(edge, away);
  if (radius > SAME) return whole({ ...edge, radius });
  return { start, end, strands: linesWithin([start, edge.from, edge.centre, edge.to, end]) };
}

/** Away from the middle of a bend. */
function outward({ sweep }: ArcEdge | OvalEdge, away: number): number {
  return sweep > 0 ? away : -away;
}

function besideEnd(edge: Edge, end: 0 | 1, away: number): Point {
  const at = end === 0 ? edge.from : edge.to;
  if (edge.kind === 'arc') {
    const scale = (edge.radius + outward(edge, away)) / edge.radius;
    const { centre } = edge;
    return { x: centre.x + (at.x - centre.x) * scale, y: centre.y + (at.y - centre.y) * scale };
  }
  const { x, y } = directionOn(edge, end);
  return { x: at.x + y * away, y: at.y - x * away };
}

function movedOval(edge: OvalEdge, follows: number, by: number, start: Point, end: Point): MovedEdge {
  const away = edge.away + by;
  const { centre, radii, sweep } = edge;
  const cuts = [0, ...cuspsOf(edge, away), 1];
  const strands: Strand[] = [];
  let last = start;
  for (const [index, to] of cuts.slice(1).entries()) {
    const from = cuts[index] ?? 0;
    if (keepsApart(edge, away, (from + to) / 2)) {
      const part = oval(centre, radii, away, edge.start + from * sweep, (to - from) * sweep);
      const ends = { from: last, to: to === 1 ? end : part.to };
      strands.push({ edge: { ...part, ...ends }, follows, within: false });
    } else {
      const along = Array.from({ length: EVOLUTE + 1 }, (_, step) =>
        evolute(edge, edge.start + (from + ((to - from) * step) / EVOLUTE) * sweep),
      );
      const before = from === 0 ? [last, edge.from] : [last];
      const after = to === 1 ? [edge.to, end] : [oval(centre, radii, away, edge.start + to * sweep, 0).from];
      strands.push(...linesWithin([...before, ...along, ...after]));
    }
    last = strands.at(-1)?.edge.to ?? last;
  }
  return { start, end, strands };
}

/** Chords of the evolute; it lies nearer to the outline than the parallel curve, however coarse they are. */
const EVOLUTE = 12;

/** Centre of curvature: `((a² - b²) cos³t / a, (b² - a²) sin³t / b)` from the middle of the ellipse. */
function evolute({ centre, radii: { x: a, y: b } }: OvalEdge, t: number): Point {
  return {
    x: centre.x + (((a - b) * (a + b)) / a) * Math.cos(t) ** 3,
    y: centre.y + (((b - a) * (b + a)) / b) * Math.sin(t) ** 3,
  };
}

/** `a² sin²t + b² cos²t` of the ellipse's point: its radius of curvature, times the half axes, to the power of 2/3. */
function bendAt({ radii, start, sweep }: OvalEdge, part: number): number {
  const t = start + part * sweep;
  return (radii.x * Math.sin(t)) ** 2 + (radii.y * Math.cos(t)) ** 2;
}

function tightest({ radii }: OvalEdge, away: number): number {
  return away < 0 ? Math.cbrt(-away * radii.x * radii.y) ** 2 : 0;
}

function keepsApart(edge: OvalEdge, away: number, part: number): boolean {
  return bendAt(edge, part) > tightest(edge, away);
}

/** Parts at which the parallel curve turns back on itself, since its distance inward is the radius of curvature. */
function cuspsOf(edge: OvalEdge, away: number): number[] {
  const { x: a, y: b } = edge.radii;
  const square = (tightest(edge, away) - b * b) / ((a - b) * (a + b));
  if (!(square > 0 && square < 1)) return [];
  const turn = Math.asin(Math.sqrt(square));
  const whole = Math.PI;
  const parts = [turn, -turn].flatMap((angle) => {
    const first = (angle - edge.start) / edge.sweep;
    const step = whole / Math.abs(edge.sweep);
    const offset = ((first % step) + step) % step;
    return Array.from({ length: 1 + Math.floor(Math.max(0, 1 - offset) / step) }, (_, index) => offset + index * step);
  });
  return parts.filter((part) => part > 0 && part < 1).sort((x, y) => x - y);
}
