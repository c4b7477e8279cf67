/** Arcs of ellipses as path data gives them, by their ends, and as they are drawn, round a centre. */
import type { Point } from '../geometry/box';
import type { EllipsePiece, LinePiece } from './piece';

/** What command A of a path says, beside where the pen stands. */
export interface ArcCommand {
  readonly radii: Point;
  readonly turnDegrees: number;
  readonly large: boolean;
  /** The way of growing angle. */
  readonly growing: boolean;
  readonly to: Point;
}

/** SVG 1.1, appendix F.6: from ends to centre; a straight line where a radius is nothing, radii too small made larger. */
export function arcBetween(
  from: Point,
  { radii, turnDegrees, large, growing, to }: ArcCommand,
): EllipsePiece | LinePiece {
  const [rx, ry] = [Math.abs(radii.x), Math.abs(radii.y)];
  if (rx === 0 || ry === 0) return { kind: 'line', from, to };
  const angle = (turnDegrees * Math.PI) / 180;
  const [cos, sin] = axisOf(turnDegrees) ?? [Math.cos(angle), Math.sin(angle)];
  // Half the way between the ends, in the axes of an ellipse made a circle of radius 1.
  const [dx, dy] = [(from.x - to.x) / 2, (from.y - to.y) / 2];
  const [ux, uy] = [(cos * dx + sin * dy) / rx, (cos * dy - sin * dx) / ry];
  const half = Math.hypot(ux, uy);
  if (half === 0) return { kind: 'line', from, to };
  const grow = Math.max(1, half);
  const away = (large === growing ? -1 : 1) * Math.sqrt(Math.max(0, (grow - half) * (grow + half)));
  const [cx, cy] = [(away * uy) / half, (-away * ux) / half];
  const across = { x: grow * rx * cos, y: grow * rx * sin };
  const along = { x: -grow * ry * sin, y: grow * ry * cos };
  const start = Math.atan2(uy - cy, ux - cx);
  let sweep = Math.atan2(-uy - cy, -ux - cx) - start;
  if (growing && sweep < 0) sweep += 2 * Math.PI;
  if (!growing && sweep > 0) sweep -= 2 * Math.PI;
  const centre = {
    x: (from.x + to.x) / 2 + rx * cos * cx - ry * sin * cy,
    y: (from.y + to.y) / 2 + rx * sin * cx + ry * cos * cy,
  };
  return { kind: 'ellipse', from, to, centre, across, along, start, sweep };
}

/** Cosine and sine of whole quarter turns, free of rounding. */
export function axisOf(degrees: number): readonly [number, number] | undefined {
  if (degrees % 90 !== 0) return undefined;
  const quarter = (((degrees / 90) % 4) + 4) % 4;
  return ([[1, 0], [0, 1], [-1, 0], [0, -1]] as const)[quarter]; // prettier-ignore
}

/** Half axes of an ellipse and the turn of the first, radians; no turn where the axes lie across and up. */
export interface Axes {
  readonly radii: Point;
  readonly turn: number;
}

/** Axes that lie so nearly across and up, in parts of the larger radius, lie so. */
const UPRIGHT = 1e-9;

/** By the singular values of the matrix that makes the ellipse of a circle of radius 1. */
export function axesOf({ across, along }: EllipsePiece): Axes {
  const upright = { x: Math.hypot(across.x, along.x), y: Math.hypot(across.y, along.y) };
  const lean = across.x * across.y + along.x * along.y;
  if (Math.abs(lean) <= UPRIGHT * Math.max(upright.x, upright.y) ** 2) return { radii: upright, turn: 0 };
  const [sum, difference] = [(across.x + along.y) / 2, (across.x - along.y) / 2];
  const [rise, skew] = [(across.y + along.x) / 2, (across.y - along.x) / 2];
  const [large, small] = [Math.hypot(sum, skew), Math.hypot(difference, rise)];
  const turn = (Math.atan2(rise, difference) + Math.atan2(skew, sum)) / 2;
  return { radii: { x: large + small, y: Math.abs(large - small) }, turn };
}
