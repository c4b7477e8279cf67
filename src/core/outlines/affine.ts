/** Affine maps of the plane, written as SVG writes its matrices. */
import type { Point } from '../geometry/box';

/** `matrix(a b c d e f)` of SVG 1.1, 7.4: x' = a x + c y + e, y' = b x + d y + f. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const SAME_PLACE: Affine = [1, 0, 0, 1, 0, 0];

/** First the inner map, then the outer one. */
export function compose(outer: Affine, inner: Affine): Affine {
  const [a, b] = turnedBy(outer, { x: inner[0], y: inner[1] });
  const [c, d] = turnedBy(outer, { x: inner[2], y: inner[3] });
  const { x, y } = mapPoint(outer, { x: inner[4], y: inner[5] });
  return [a, b, c, d, x, y];
}

export function mapPoint(map: Affine, point: Point): Point {
  const [x, y] = turnedBy(map, point);
  return { x: x + map[4], y: y + map[5] };
}

/** What becomes of a difference of two points. */
export function mapVector(map: Affine, vector: Point): Point {
  const [x, y] = turnedBy(map, vector);
  return { x, y };
}

function turnedBy([a, b, c, d]: Affine, { x, y }: Point): readonly [number, number] {
  return [a * x + c * y, b * x + d * y];
}

/** By how much areas grow; negative where the map turns things over. */
export function determinant([a, b, c, d]: Affine): number {
  return a * d - b * c;
}
