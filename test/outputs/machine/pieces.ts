/** What the readers give back of a file for machines, and measures of it that owe nothing to the program. */
import type { Point } from '../../../src/core/geometry/box';

/** A straight piece, or an arc about a centre; mm, radians anticlockwise. */
export interface Piece {
  readonly from: Point;
  readonly to: Point;
  readonly bend?: { readonly centre: Point; readonly sweep: number };
  /** Where the file says that a knife points at either end, degrees. */
  readonly headings?: readonly [number, number];
}

export type ReadStroke = readonly Piece[];

export function apart(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

export function scaled(piece: Piece, by: number): Piece {
  const move = ({ x, y }: Point): Point => ({ x: x * by, y: y * by });
  const ends = { from: move(piece.from), to: move(piece.to) };
  return piece.bend
    ? { ...piece, ...ends, bend: { centre: move(piece.bend.centre), sweep: piece.bend.sweep } }
    : { ...piece, ...ends };
}

export function lengthOfPiece({ from, to, bend }: Piece): number {
  return bend ? Math.abs(bend.sweep) * apart(from, bend.centre) : apart(from, to);
}

export function lengthOfStrokes(strokes: readonly ReadStroke[]): number {
  return strokes.flat().reduce((sum, piece) => sum + lengthOfPiece(piece), 0);
}

/** The lifted tool's way: from the origin over all strokes, and back when `home`. */
export function travelOf(strokes: readonly ReadStroke[]): number {
  let at: Point = { x: 0, y: 0 };
  let travel = 0;
  for (const stroke of strokes) {
    travel += apart(at, stroke[0]?.from ?? at);
    at = stroke.at(-1)?.to ?? at;
  }
  return travel + apart(at, { x: 0, y: 0 });
}

export function pointAt({ from, to, bend }: Piece, part: number): Point {
  if (!bend) return { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
  const [x, y] = [from.x - bend.centre.x, from.y - bend.centre.y];
  const [cos, sin] = [Math.cos(part * bend.sweep), Math.sin(part * bend.sweep)];
  return { x: bend.centre.x + x * cos - y * sin, y: bend.centre.y + x * sin + y * cos };
}

/** Unit vector of travel, found from two points close by. */
export function wayAt(piece: Piece, part: number): Point {
  const [a, b] = [pointAt(piece, part - 1e-6), pointAt(piece, part + 1e-6)];
  const length = apart(a, b);
  return { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
}

/** Points along a piece, no farther from one another than `step`, both ends among them. */
export function pointsAlong(piece: Piece, step: number): Point[] {
  const count = Math.max(1, Math.ceil(lengthOfPiece(piece) / step));
  return Array.from({ length: count + 1 }, (_, index) => pointAt(piece, index / count));
}

/** Inside the loops that the pieces make, square mm, anticlockwise positive: half the sum of x dy - y dx. */
export function areaInside(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, { from, to, bend }) => {
    const chord = (from.x * to.y - to.x * from.y) / 2;
    if (!bend) return sum + chord;
    return sum + chord + (apart(from, bend.centre) ** 2 * (bend.sweep - Math.sin(bend.sweep))) / 2;
  }, 0);
}

/** How far the farthest of some points lies from the nearest of some chains of points. */
export function farthest(points: readonly Point[], chains: readonly (readonly Point[])[]): number {
  const all = chains.map(boxed);
  return Math.max(
    ...points.map((point) => {
      let least = Infinity;
      for (const chain of all)
        if (outside(chain, point) < least) least = Math.min(least, nearestOn(chain.points, point));
      return least;
    }),
  );
}

interface Chain {
  readonly points: readonly Point[];
  readonly low: Point;
  readonly high: Point;
}

function boxed(points: readonly Point[]): Chain {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return {
    points,
    low: { x: Math.min(...xs), y: Math.min(...ys) },
    high: { x: Math.max(...xs), y: Math.max(...ys) },
  };
}

/** From the box round a chain, 0 within it: no point of the chain is nearer. */
function outside({ low, high }: Chain, { x, y }: Point): number {
  return Math.hypot(Math.max(0, low.x - x, x - high.x), Math.max(0, low.y - y, y - high.y));
}

function nearestOn(chain: readonly Point[], { x, y }: Point): number {
  let least = Infinity;
  for (let index = 1; index < chain.length; index += 1) {
    const a = chain[index - 1]!;
    const b = chain[index]!;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const reach = dx * dx + dy * dy;
    const part = reach === 0 ? 0 : Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / reach));
    const [ex, ey] = [x - a.x - part * dx, y - a.y - part * dy];
    least = Math.min(least, ex * ex + ey * ey);
  }
  return Math.sqrt(least);
}

/** Largest gap between where a piece ends and the nearest start of any piece, both ways round: 0 when all loops close. */
export function largestGap(pieces: readonly Piece[]): number {
  const gaps = pieces.flatMap(({ from, to }) => [
    Math.min(...pieces.map((other) => apart(to, other.from))),
    Math.min(...pieces.map((other) => apart(from, other.to))),
  ]);
  return Math.max(...gaps);
}
