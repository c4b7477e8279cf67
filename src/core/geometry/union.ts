/** Several outlines as one: what lies in any of them, with its edges kept as lines, arcs and ovals. */
import type { Point } from './box';
import { onOneCarrier } from './carrier';
import { directionOn, distance, line, partOf, pointOn, type Edge } from './edge';
import { meetingsOf } from './meetings';
import { isInside, nearestOn } from './nearness';
import { areaOf, type Outline } from './outline';
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
  const loops = loopsOf(pieces.map(({ edge }) => edge));
  const outers = loops.filter((loop) => areaOf(loop) > 0);
  const holes = loops.filter((loop) => areaOf(loop) < 0);
  return outers.map((outer) => ({ outer, holes: holes.filter((hole) => holds(outer, hole, outers)) }));
}

/** The pieces of a curve between the places where it crosses or touches itself. */
export function splitAtCrossings(outline: Outline): Edge[] {
  const corner = cornersAt();
  return outline.flatMap((edge, index) => {
    const others = outline.filter((_, place) => place !== index);
    const parts = new Map(others.flatMap((each) => meetingsOf(edge, each).map(({ a, point }) => [a, point] as const)));
    return splitAt(edge, parts, corner);
  });
}

/** Closed loops of pieces that end in the very points where others begin. */
export function loopsOf(pieces: readonly Edge[]): Outline[] {
  return stitch(pieces).map(merged);
}

interface Piece {
  readonly edge: Edge;
  /** Index of the outline it comes from. */
  readonly of: number;
}

function splitAtMeetings(outlines: readonly Outline[]): Piece[] {
  const corner = cornersAt();
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

/** Points that are one by the tolerance become the very same point. */
function cornersAt(): (point: Point) => Point {
  const known: Point[] = [];
  return (point) => {
    const found = known.find((one) => distance(one, point) <= 2 * SAME);
    if (!found) known.push(point);
    return found ?? point;
  };
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

/** Loops of edges that follow one another. Where several go on, the sharpest turn to the left keeps to its own region. */
function stitch(edges: readonly Edge[]): Edge[][] {
  const leaving = new Map<Point, Edge[]>();
  for (const edge of edges) leaving.set(edge.from, [...(leaving.get(edge.from) ?? []), edge]);
  const take = (edge: Edge) => {
    const rest = (leaving.get(edge.from) ?? []).filter((each) => each !== edge);
    leaving.set(edge.from, rest);
  };
  const loops: Edge[][] = [];
  for (const first of edges) {
    if (!leaving.get(first.from)?.includes(first)) continue;
    const loop: Edge[] = [];
    let next: Edge | undefined = first;
    while (next) {
      take(next);
      loop.push(next);
      if (next.to === first.from) break;
      next = leftmost(next, leaving.get(next.to) ?? []);
    }
    if (loop.at(-1)?.to === first.from) loops.push(loop);
  }
  return loops;
}

function leftmost(edge: Edge, followers: readonly Edge[]): Edge | undefined {
  const along = directionOn(edge, 1);
  const turn = (next: Edge) => {
    const way = directionOn(next, 0);
    return Math.atan2(along.x * way.y - along.y * way.x, along.x * way.x + along.y * way.y);
  };
  return followers.toSorted((a, b) => turn(b) - turn(a))[0];
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
