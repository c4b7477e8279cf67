/** Maps of the plane that keep straight lines straight: moved, scaled, turned, slanted, and one after another. */
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

export const UNMOVED: Matrix = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

/** The inner one first, then the outer one. */
export function within(outer: Matrix, inner: Matrix): Matrix {
  return {
    a: outer.a * inner.a + outer.c * inner.b,
    b: outer.b * inner.a + outer.d * inner.b,
    c: outer.a * inner.c + outer.c * inner.d,
    d: outer.b * inner.c + outer.d * inner.d,
    e: outer.a * inner.e + outer.c * inner.f + outer.e,
    f: outer.b * inner.e + outer.d * inner.f + outer.f,
  };
}

export function moved({ a, b, c, d, e, f }: Matrix, { x, y }: Point): Point {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}

/** A way from one point to another, which no move changes. */
export function turnedWay({ a, b, c, d }: Matrix, { x, y }: Point): Point {
  return { x: a * x + c * y, y: b * x + d * y };
}
