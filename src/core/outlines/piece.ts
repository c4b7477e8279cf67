/** Pieces of a path as it was drawn: lines, cubic Bézier curves and arcs of ellipses that may lie turned. */
import type { Box, Point } from '../geometry/box';
import { around } from '../geometry/box';
import { mapPoint, mapVector, type Affine } from './affine';

export interface LinePiece {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

export interface CubicPiece {
  readonly kind: 'cubic';
  readonly from: Point;
  readonly one: Point;
  readonly two: Point;
  readonly to: Point;
}

/** The points `centre + across cos t + along sin t`: every affine image of an arc of a circle is one. */
export interface EllipsePiece {
  readonly kind: 'ellipse';
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly across: Point;
  readonly along: Point;
  /** Radians, as `sweep`. */
  readonly start: number;
  readonly sweep: number;
}

export type CurvedPiece = CubicPiece | EllipsePiece;
export type Piece = LinePiece | CurvedPiece;

/** Pieces that follow one another from where the pen went down. */
export interface Stroke {
  readonly pieces: readonly Piece[];
  /** True where the path says that it ends where it began. */
  readonly closed: boolean;
}

export function mapPiece(piece: Piece, map: Affine): Piece {
  const ends = { from: mapPoint(map, piece.from), to: mapPoint(map, piece.to) };
  if (piece.kind === 'line') return { ...piece, ...ends };
  if (piece.kind === 'cubic')
    return { ...piece, ...ends, one: mapPoint(map, piece.one), two: mapPoint(map, piece.two) };
  const centre = mapPoint(map, piece.centre);
  return { ...piece, ...ends, centre, across: mapVector(map, piece.across), along: mapVector(map, piece.along) };
}

/** The point at a part of the piece's own parameter, 0 to 1; at both ends the very end. */
export function pointAt(piece: Piece, part: number): Point {
  if (part === 0) return piece.from;
  if (part === 1) return piece.to;
  const rest = 1 - part;
  switch (piece.kind) {
    case 'line':
      return { x: rest * piece.from.x + part * piece.to.x, y: rest * piece.from.y + part * piece.to.y };
    case 'cubic': {
      const [a, b, c, d] = [rest ** 3, 3 * rest ** 2 * part, 3 * rest * part ** 2, part ** 3];
      const { from, one, two, to } = piece;
      return {
        x: a * from.x + b * one.x + c * two.x + d * to.x,
        y: a * from.y + b * one.y + c * two.y + d * to.y,
      };
    }
    case 'ellipse':
      return onEllipse(piece, piece.start + part * piece.sweep);
  }
}

export function onEllipse({ centre, across, along }: EllipsePiece, angle: number): Point {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { x: centre.x + across.x * cos + along.x * sin, y: centre.y + across.y * cos + along.y * sin };
}

/** A part of the piece at which it turns back along one axis. */
export interface Turning {
  readonly part: number;
  readonly axis: 'x' | 'y';
}

/** Where the piece, between its ends, lies furthest left, right, up or down; along the piece. */
export function turningsOf(piece: Piece): Turning[] {
  if (piece.kind === 'line') return [];
  const turns = piece.kind === 'cubic' ? cubicTurns : ellipseTurns;
  return (['x', 'y'] as const)
    .flatMap((axis) => turns(piece as never, axis).map((part) => ({ part, axis })))
    .filter(({ part }) => part > 0 && part < 1)
    .sort((a, b) => a.part - b.part);
}

/** Roots of the derivative, a quadratic whose coefficients come from the differences of the control points. */
function cubicTurns({ from, one, two, to }: CubicPiece, axis: 'x' | 'y'): number[] {
  const [first, second, third] = [one[axis] - from[axis], two[axis] - one[axis], to[axis] - two[axis]];
  return rootsOf(first - 2 * second + third, 2 * (second - first), first);
}

/** Real roots of `a t² + b t + c`, without loss of digits where one is small. */
function rootsOf(a: number, b: number, c: number): number[] {
  const under = b * b - 4 * a * c;
  if (under < 0) return [];
  const half = -(b + (b < 0 ? -1 : 1) * Math.sqrt(under)) / 2;
  return [half / a, c / half].filter(Number.isFinite);
}

function ellipseTurns({ across, along, start, sweep }: EllipsePiece, axis: 'x' | 'y'): number[] {
  const first = Math.atan2(along[axis], across[axis]);
  const [low, high] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
  const parts: number[] = [];
  for (let turn = Math.ceil((low - first) / Math.PI); first + turn * Math.PI <= high; turn += 1)
    parts.push((first + turn * Math.PI - start) / sweep);
  return parts;
}

/** The smallest upright box round the pieces in their own axes: `bottom` is the least y, whichever way y goes. */
export function boundsOfPieces(pieces: readonly Piece[]): Box {
  const points = pieces.flatMap((piece) => [
    piece.from,
    piece.to,
    ...turningsOf(piece).map(({ part }) => pointAt(piece, part)),
  ]);
  const box = around(points.map(({ x, y }) => ({ left: x, right: x, bottom: y, top: y })));
  return box ?? { left: 0, right: 0, bottom: 0, top: 0 };
}
