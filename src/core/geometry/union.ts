/** Several outlines as one: what lies in any of them, with its edges kept as lines, arcs and ovals. */
import type { Point } from './box';
import { onOneCarrier } from './carrier';
import { directionOn, distance, line, partOf, pointOn, type Edge } from './edge';
import { meetingsOf } from './meetings';
import { isInside, nearestOn } from './nearness';
import { areaOf, type Outline } from './outline';
import { pointsAsOne, stitch } from './stitch';
import { SAME } from './tolerance';

/** A connected piece of the plane. */
export interface Region {
  /** Anticlockwise. */
  readonly outer: Outline;
  /** Clockwise. */
  readonly holes: readonly Outline[];
}

/**
 * The union of simple, anticlockwise outlines. Those that share a stretch of edge become one and the stretch vanishes;
 * those that only touch in a point stay apart.
 */
export function unionOf(outlines: readonly Outline[]): readonly Region[] {
  const pieces = splitAtMeetings(outlines).filter((piece) => isBoundary(piece, outlines));
  const loops = stitch(pieces.map(({ edge }) => edge)).map(merged);
  const outers = loops.filter((loop) => areaOf(loop) > 0);
  const holes = loops.filter((loop) => areaOf(loop) < 0);
  return outers.map((outer) => ({ outer, holes: holes.filter((hole) => holds(outer, hole, outers)) }));
}

interface Piece {
  readonly edge: Edge;
  /** Index of the outline it comes from. */
  readonly of: number;
}

function splitAtMeetings(outlines: readonly Outline[]): Piece[] {
  const corner = pointsAsOne();
  return outlines.flatMap((outline, of) =>
    outline.flatMap((edge): Piece[] => {
      const parts = new Map<number, Point>();
      for (const [index, other] of outlines.entries()) {
        if (index === of) continue;
        for (const each of other) for (const { a, point } of meetingsOf(edge, each)) parts.set(a, point);
      }
      return splitAt(edge, parts, corner).map((piece) => ({ edge: piece, of }));
    }),
  );
}

function splitAt(edge: Edge, meetings: ReadonlyMap<number, Point>, corner: (point: Point) => Point): Edge[] {
  const inner = [...meetings]
    .filter(
      ([part, point]) => part > 0 && part < 1 && distance(point, edge.from) > SAME && distance(point, edge.to) > SAME,
    )
    .toSorted(([a], [b]) => a - b);
  const stops: [number, Point][] = [[0, edge.from], ...inner, [1, edge.to]];
  return stops.slice(1).flatMap(([end, to], index) => {
    const [start, from] = stops[index] ?? [0, edge.from];
    const ends = { from: corner(from), to: corner(to) };
    if (ends.from === ends.to && edge.kind === 'line') return [];
    return [edge.kind === 'line' ? line(ends.from, ends.to) : { ...partOf(edge, start, end), ...ends }];
  });
}

/** True of a piece with the union on its left only; of pieces that lie on one another the first counts. */
function isBoundary({ edge, of }: Piece, outlines: readonly Outline[]): boolean {
  const middle = pointOn(edge, 0.5);
  return outlines.every((outline, index) => {
    if (index === of) return true;
    const beside = outline.find((other) => distance(nearestOn(other, middle), middle) <= 2 * SAME);
    if (!beside) return !isInside(outline, middle);
    return index > of && sameWay(edge, beside, middle);
  });
}

function sameWay(edge: Edge, other: Edge, at: Point): boolean {
  const [a, b] = [directionOn(edge, 0.5), directionNear(other, at)];
  return a.x * b.x + a.y * b.y > 0;
}

/** Which way an edge runs where it comes nearest to a point, from samples: enough to tell along from against. */
function directionNear(edge: Edge, at: Point): Point {
  const count = edge.kind === 'line' ? 1 : 32;
  let best = 0;
  for (let index = 1; index <= count; index += 1)
    if (distance(pointOn(edge, index / count), at) < distance(pointOn(edge, best), at)) best = index / count;
  return directionOn(edge, best);
}

/** Neighbours that are parts of one line, circle or oval become one edge again. */
function merged(loop: readonly Edge[]): Outline {
  const whole: Edge[] = [];
  for (const edge of loop) {
    const joined = whole.length > 0 ? joinedTo(whole.at(-1), edge) : undefined;
    if (joined) whole[whole.length - 1] = joined;
    else whole.push(edge);
  }
  const closing = whole.length > 1 ? joinedTo(whole.at(-1), whole[0]) : undefined;
  return closing ? [closing, ...whole.slice(1, -1)] : whole;
}

function joinedTo(edge: Edge | undefined, next: Edge | undefined): Edge | undefined {
  if (!edge || !next || !onOneCarrier(edge, next)) return undefined;
  const [before, after] = [directionOn(edge, 1), directionOn(next, 0)];
  if (before.x * after.x + before.y * after.y < 0) return undefined;
  if (edge.kind === 'line' || next.kind === 'line') return line(edge.from, next.to);
  const sweep = edge.sweep + next.sweep;
  if (edge.sweep * next.sweep < 0 || Math.abs(sweep) > MOST_SWEEP[edge.kind]) return undefined;
  return { ...edge, to: next.to, sweep };
}

/** Arcs go round no further than half a turn; no edge goes all the way round. */
const MOST_SWEEP = { arc: Math.PI + 1e-9, oval: 1.5 * Math.PI + 1e-9 };

/** True of the smallest outline that a hole lies in. */
function holds(outer: Outline, hole: Outline, outers: readonly Outline[]): boolean {
  const [first] = hole;
  if (!first) return false;
  const inside = pointOn(first, 0.5);
  const around = outers.filter((each) => isInside(each, inside)).toSorted((a, b) => areaOf(a) - areaOf(b));
  return around[0] === outer;
}
