/** Edges of an outline from a piece of a path: true lines, circles and upright ellipses, arcs for all that is neither. */
import type { Point } from '../geometry/box';
import { arc, line, oval, type Edge } from '../geometry/edge';
import { determinant } from './affine';
import { arcChain } from './arc-chain';
import { axesOf } from './elliptic-arc';
import { pointAt, type EllipsePiece, type Piece } from './piece';

/** Half axes that differ by less, in parts of the larger, are those of a circle that was written rounded. */
const ROUND = 1e-6;

/** Edges from the piece's start to its end, y up, mm. */
export function edgesOf(piece: Piece): Edge[] {
  if (piece.kind === 'line') return [line(piece.from, piece.to)];
  if (piece.kind === 'cubic') return arcChain(piece);
  if (isRound(piece)) return circleEdges(piece);
  const { radii, turn } = axesOf(piece);
  return turn === 0 ? ovalEdges(piece, radii) : arcChain(piece);
}

function isRound({ across, along }: EllipsePiece): boolean {
  const [a, b] = [Math.hypot(across.x, across.y), Math.hypot(along.x, along.y)];
  const lean = Math.abs(across.x * along.x + across.y * along.y);
  return Math.abs(a - b) <= ROUND * Math.max(a, b) && lean <= ROUND * Math.max(a, b) ** 2;
}

/** Anticlockwise positive, whichever way the half axes follow one another. */
function sweepOf({ across, along, sweep }: EllipsePiece): number {
  return sweep * Math.sign(determinant([across.x, across.y, along.x, along.y, 0, 0]));
}

/** The ends of equal steps along the piece. */
function steps(piece: EllipsePiece, longest: number): { count: number; ends: (readonly [Point, Point])[] } {
  const count = Math.max(1, Math.ceil(Math.abs(piece.sweep) / longest - 1e-6));
  const at = (index: number) => pointAt(piece, index / count);
  return { count, ends: Array.from({ length: count }, (_, index) => [at(index), at(index + 1)] as const) };
}

/** Arcs of half a turn at most, each round the very centre that its ends and its sweep tell. */
function circleEdges(piece: EllipsePiece): Edge[] {
  const { count, ends } = steps(piece, Math.PI);
  const sweep = sweepOf(piece) / count;
  // Of half a turn the centre is the middle of the chord.
  const aside = Math.abs(Math.abs(sweep) - Math.PI) < 1e-12 ? 0 : 1 / (2 * Math.tan(sweep / 2));
  return ends.map(([from, to]) => {
    const [x, y] = [to.x - from.x, to.y - from.y];
    const centre = { x: (from.x + to.x) / 2 - aside * y, y: (from.y + to.y) / 2 + aside * x };
    return arc(from, to, centre, sweep);
  });
}

/** Arcs of a quarter at most, as those of an oval are. */
function ovalEdges(piece: EllipsePiece, radii: Point): Edge[] {
  const { count, ends } = steps(piece, Math.PI / 2);
  const { centre, from } = piece;
  const start = Math.atan2((from.y - centre.y) / radii.y, (from.x - centre.x) / radii.x);
  const sweep = sweepOf(piece) / count;
  return ends.map(([from, to], index) => ({ ...oval(centre, radii, 0, start + index * sweep, sweep), from, to }));
}
