/** Dimensions of the small drawings: a thin line with a stroke across each end, and the length beside it. */
import type { Point } from '../../core/geometry/box';
import { PENS } from './pens';
import type { Surface } from './surface';
import { fractions } from './type';

const STROKE = 1.2;
const STYLE = { size: 7, align: 'centre' } as const;

/** Lying, from x to x; the words stand above its middle, and above its strokes where it is too short for them. */
export function lyingDimension(surface: Surface, from: number, to: number, y: number, words: string): void {
  surface.lines(
    [
      [{ x: from, y }, { x: to, y }],
      ...[from, to].map((x): [Point, Point] => [{ x, y: y - STROKE }, { x, y: y + STROKE }]),
    ],
    PENS.hair,
  ); // prettier-ignore
  const text = fractions(words);
  const fits = surface.width(text, STYLE) + 0.6 <= to - from;
  surface.text(text, { x: (from + to) / 2, y: y + (fits ? 1 : STROKE + 0.5) }, STYLE);
}

/** Standing, from y to y; the words read upward, left of its middle, or stand right of it where it is too short for them. */
export function standingDimension(surface: Surface, x: number, from: number, to: number, words: string): void {
  surface.lines(
    [
      [{ x, y: from }, { x, y: to }],
      ...[from, to].map((y): [Point, Point] => [{ x: x - STROKE, y }, { x: x + STROKE, y }]),
    ],
    PENS.hair,
  ); // prettier-ignore
  const text = fractions(words);
  const middle = (from + to) / 2;
  if (surface.width(text, STYLE) <= Math.abs(to - from))
    surface.text(text, { x: x - 1, y: middle }, { ...STYLE, turn: 90 });
  else surface.text(text, { x: x + 2, y: middle - 0.9 }, { size: STYLE.size });
}
