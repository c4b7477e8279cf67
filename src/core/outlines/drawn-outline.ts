/** A contour stretched to a size, as true edges; curves that are neither circles nor level ellipses as arcs of circles. */
import { heightOf, widthOf, type Size } from '../geometry/box';
import { directionOn, line, type Edge } from '../geometry/edge';
import { areaOf, type Outline } from '../geometry/outline';
import { bendsOfCubic, bendsOfEllipse } from './bends';
import { biarcsAlong, type Bend } from './biarcs';
import type { Contour } from './contour';
import { ellipseEdges } from './ellipse-edges';
import { backwards, mapped, type Segment } from './segment';

/** How far an arc may lie from the curve it stands for, mm, at the size it is cut in. */
export const CURVE_TOLERANCE = 0.001;

/** Curves that meet at less of an angle, radians, go on smoothly: written with few figures, most smooth curves gape so. */
const SMOOTH = 0.005;

/** Anticlockwise, y up, in a box of the size with its lower left corner at the origin. Curves are kept to within a thousandth of a millimetre. */
export function drawnOutline({ segments, bounds }: Contour, { width, height }: Size): Outline {
  const [across, up] = [width / widthOf(bounds), height / heightOf(bounds)];
  // In path data y grows downward.
  const matrix = { a: across, b: 0, c: 0, d: -up, e: -bounds.left * across, f: bounds.top * up };
  const pieces = smoothed(segments.map((segment) => mapped(segment, matrix)).flatMap(piecesOf));
  const drawn = outlineOf(pieces);
  if (areaOf(drawn) >= 0) return drawn;
  const turned = segments.toReversed().map((segment) => mapped(backwards(segment), matrix));
  return outlineOf(smoothed(turned.flatMap(piecesOf)));
}

/** An edge as it is, or a bend to be made arcs of. */
type Piece = { readonly edge: Edge } | { readonly bend: Bend };

function piecesOf(segment: Segment): Piece[] {
  if (segment.kind === 'line') return [{ edge: line(segment.from, segment.to) }];
  if (segment.kind === 'cubic') return bendsOfCubic(segment).map((bend) => ({ bend }));
  const edges = ellipseEdges(segment);
  return edges ? edges.map((edge) => ({ edge })) : bendsOfEllipse(segment).map((bend) => ({ bend }));
}

/** Where a bend all but goes on from its neighbour it takes that one's direction, or both take the middle of the two. */
function smoothed(pieces: readonly Piece[]): Piece[] {
  return pieces.map((piece, index) => {
    if ('edge' in piece) return piece;
    const { bend } = piece;
    const [before, after] = [pieces.at(index - 1) ?? piece, pieces[(index + 1) % pieces.length] ?? piece];
    return {
      bend: {
        ...bend,
        startAngle: agreed(bend.startAngle, endAngle(before), 'edge' in before),
        endAngle: agreed(bend.endAngle, startAngle(after), 'edge' in after),
      },
    };
  });
}

function agreed(own: number, other: number, isFixed: boolean): number {
  const off = other - own - 2 * Math.PI * Math.round((other - own) / (2 * Math.PI));
  return Math.abs(off) < SMOOTH ? own + (isFixed ? off : off / 2) : own;
}

function startAngle(piece: Piece): number {
  return 'bend' in piece ? piece.bend.startAngle : angleOn(piece.edge, 0);
}

function endAngle(piece: Piece): number {
  return 'bend' in piece ? piece.bend.endAngle : angleOn(piece.edge, 1);
}

function angleOn(edge: Edge, part: number): number {
  const { x, y } = directionOn(edge, part);
  return Math.atan2(y, x);
}

function outlineOf(pieces: readonly Piece[]): Outline {
  return pieces.flatMap((piece) => ('edge' in piece ? [piece.edge] : biarcsAlong(piece.bend, CURVE_TOLERANCE)));
}
