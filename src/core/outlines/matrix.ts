/** Maps of the plane that keep straight lines straight: moved, scaled, turned, slanted. */
import type { Point } from '../geometry/box';

/** As SVG writes it: `x' = a x + c y + e`, `y' = b x + d y + f`. */
export interface Matrix {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

export function moved({ a, b, c, d, e, f }: Matrix, { x, y }: Point): Point {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}

/** A way from one point to another, which no move changes. */
export function turnedWay({ a, b, c, d }: Matrix, { x, y }: Point): Point {
  return { x: a * x + c * y, y: b * x + d * y };
}
