/** Path data, plain enough for a job file, that draws a closed chain of pieces. */
import type { Point } from '../geometry/box';
import { determinant } from './affine';
import { axesOf } from './elliptic-arc';
import { pointAt, type EllipsePiece, type Piece } from './piece';

/** Commands M, L, C, A and Z, absolute, with `digits` decimals; arcs of a quarter at most, which bear rounding of their ends. */
export function writePath(pieces: readonly Piece[], digits: number): string {
  const [first] = pieces;
  if (!first) return '';
  const write = (...numbers: readonly number[]) => numbers.map((number) => decimals(number, digits)).join(' ');
  const point = ({ x, y }: Point) => write(x, y);
  const begin = point(first.from);
  let pen = begin;
  const parts = pieces.map((piece, index) => {
    const isLast = index === pieces.length - 1;
    const end = isLast ? begin : point(piece.to);
    // Z draws the last line.
    const part = piece.kind === 'line' ? lineTo(isLast, pen === end, end) : curveTo(piece, end, digits, point);
    const goesNowhere = piece.kind === 'ellipse' && pen === end;
    pen = end;
    return goesNowhere ? '' : part;
  });
  return `M${begin}${parts.join('')}Z`;
}

function lineTo(isLast: boolean, goesNowhere: boolean, end: string): string {
  return isLast || goesNowhere ? '' : `L${end}`;
}

function curveTo(
  piece: Exclude<Piece, { kind: 'line' }>,
  end: string,
  digits: number,
  point: (at: Point) => string,
): string {
  if (piece.kind === 'cubic') return `C${point(piece.one)} ${point(piece.two)} ${end}`;
  const count = Math.max(1, Math.ceil(Math.abs(piece.sweep) / (Math.PI / 2) - 1e-9));
  const ends = Array.from({ length: count }, (_, index) =>
    index === count - 1 ? end : point(pointAt(piece, (index + 1) / count)),
  );
  const shape = arcShape(piece, digits);
  return ends.map((to) => `A${shape} ${to}`).join('');
}

/** Radii, turn and flags. Flag 1 is the way of growing angle. */
function arcShape(piece: EllipsePiece, digits: number): string {
  const { radii, turn } = axesOf(piece);
  const { across, along, sweep } = piece;
  const growing = sweep * determinant([across.x, across.y, along.x, along.y, 0, 0]) > 0 ? 1 : 0;
  const degrees = decimals((turn * 180) / Math.PI, digits + 2);
  return `${decimals(radii.x, digits)} ${decimals(radii.y, digits)} ${degrees} 0 ${growing}`;
}

function decimals(value: number, digits: number): string {
  const text = value.toFixed(digits).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
