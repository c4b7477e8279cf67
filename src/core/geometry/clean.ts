/** Makes one simple outline of a raw parallel curve that runs into itself, by keeping what has the inside on its left only. */
import type { Point } from './box';
import { directionOn, distance, line, partOf, pointOn, type Edge } from './edge';
import { meetingsWithin } from './meetings';
import { areaOf, lengthOf } from './outline';
import { eachPair } from './pairs';
import { pointsAsOne, stitch } from './stitch';
import type { Strand } from './strand';
import { windingOf } from './winding';

/** A part of a strand. */
interface Piece {
  readonly strand: Strand;
  readonly start: number;
  readonly end: number;
  readonly edge: Edge;
}

/** The outline round what the raw curve goes round; undefined where that is no piece, or several, or one with a hole. */
export function cleaned(strands: readonly Strand[]): readonly Strand[] | undefined {
  const winding = windingOf(strands.map(({ edge }) => edge));
  const pieces = apartFromOthers(splitAtMeetings(strands.filter(({ within }) => !within))).filter(({ edge }) => {
    const { x, y } = pointOn(edge, 0.5);
    const way = directionOn(edge, 0.5);
    const beside = (side: number) => winding({ x: x - side * way.y * BESIDE, y: y + side * way.x * BESIDE });
    return beside(1) > 0 && beside(-1) <= 0;
  });
  const pieceOf = new Map(pieces.map((piece) => [piece.edge, piece]));
  const loops = stitch(pieces.map(({ edge }) => edge)).filter((loop) => lengthOf(loop) > SPECK);
  const [only, ...others] = loops;
  if (!only || others.length > 0 || areaOf(only) <= 0) return undefined;
  return inOrder(merged(only.flatMap((edge) => pieceOf.get(edge) ?? [])));
}

/** How far beside a curve its two sides are told apart, mm: more than points are moved to be one. */
const BESIDE = 1e-5;
/** Loops that are shorter are none, mm. */
const SPECK = 1e-3;

function splitAtMeetings(strands: readonly Strand[]): Piece[] {
  const parts = strands.map((): [number, Point][] => []);
  const edges = strands.map(({ edge }) => edge);
  eachPair(edges, (lower, higher) => {
    const [one, other] = [edges[lower], edges[higher]];
    if (!one || !other) return;
    for (const { a, b, point } of meetingsWithin(one, other)) {
      parts[lower]?.push([a, point]);
      parts[higher]?.push([b, point]);
    }
  });
  const asOne = pointsAsOne();
  const ends = edges.map(({ from, to }) => [asOne(from), asOne(to)] as const);
  return strands.flatMap((strand, index) => {
    const { edge } = strand;
    const [from, to] = ends[index] ?? [edge.from, edge.to];
    const inner = (parts[index] ?? [])
      .map(([part, point]): [number, Point] => [part, asOne(point)])
      .filter(([part, point]) => part > 0 && part < 1 && point !== from && point !== to)
      .sort(([a], [b]) => a - b);
    const stops: [number, Point][] = [[0, from], ...inner, [1, to]];
    return stops.slice(1).flatMap(([end, point], place): Piece[] => {
      const [start, before] = stops[place] ?? [0, from];
      return before === point ? [] : [{ strand, start, end, edge: piece(edge, start, before, end, point) }];
    });
  });
}

function piece(edge: Edge, start: number, from: Point, end: number, to: Point): Edge {
  return edge.kind === 'line' ? line(from, to) : { ...partOf(edge, start, end), from, to };
}

/** Of pieces that lie on one another, and run the same way, the first. */
function apartFromOthers(pieces: readonly Piece[]): Piece[] {
  const leaving = new Map<Point, Piece[]>();
  return pieces.filter((one) => {
    const others = leaving.get(one.edge.from) ?? [];
    const middle = pointOn(one.edge, 0.5);
    if (others.some(({ edge }) => edge.to === one.edge.to && distance(pointOn(edge, 0.5), middle) < BESIDE))
      return false;
    leaving.set(one.edge.from, [...others, one]);
    return true;
  });
}

/** Parts of one strand that follow one another become one edge again. */
function merged(pieces: readonly Piece[]): Strand[] {
  const whole: Piece[] = [];
  const add = (next: Piece) => {
    const last = whole.at(-1);
    if (last?.strand === next.strand && last.end === next.start)
      whole[whole.length - 1] = {
        ...last,
        end: next.end,
        edge: piece(last.strand.edge, last.start, last.edge.from, next.end, next.edge.to),
      };
    else whole.push(next);
  };
  // A loop may begin in the middle of an edge.
  const first = pieces.findIndex(({ strand }, index) => strand !== pieces.at(index - 1)?.strand);
  for (const each of [...pieces.slice(first), ...pieces.slice(0, Math.max(0, first))]) add(each);
  return whole.map(({ strand, edge }) => ({ ...strand, edge }));
}

/** From the first of the edges that it follows on. */
function inOrder(strands: readonly Strand[]): Strand[] {
  const first = Math.min(...strands.map(({ follows }) => follows ?? Infinity));
  const start = Math.max(
    0,
    strands.findIndex(({ follows }, index) => follows === first && strands.at(index - 1)?.follows !== first),
  );
  return [...strands.slice(start), ...strands.slice(0, start)];
}
