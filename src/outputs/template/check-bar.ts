/** Check bars: a length in millimetres and one in inches, to be measured on the print before anything is cut. */
import type { Point } from '../../core/geometry/box';
import { MM_PER_INCH } from '../../core/units';
import { PENS } from '../paper/pens';
import type { Surface } from '../paper/surface';

/** Lengths of a bar's two scales. */
export interface BarLength {
  readonly mm: number;
  readonly inches: number;
}

/** From the one that measures best to the one that finds room on the smallest page. */
export const BAR_LENGTHS: readonly [BarLength, ...BarLength[]] = [
  { mm: 100, inches: 4 },
  { mm: 50, inches: 2 },
  { mm: 20, inches: 1 },
];

/** Height of a lying bar with its numbers, mm. */
export const BAR_HEIGHT = 9;

/** Length of a bar on paper with the last number that stands out. */
export function barRoom(length: BarLength): number {
  return Math.max(length.mm, length.inches * MM_PER_INCH) + 0.5;
}

const MM_LINE = 5;
const INCH_LINE = 4.1;
const NUMBER = { size: 6 };

/** Draws a bar from the lower left corner of its room. */
export function drawCheckBar(surface: Surface, corner: Point, way: 'across' | 'up', length: BarLength): void {
  const at = (along: number, high: number): Point =>
    way === 'across'
      ? { x: corner.x + along, y: corner.y + high }
      : { x: corner.x + BAR_HEIGHT - high, y: corner.y + along };
  const inches = length.inches * MM_PER_INCH;
  const turn = way === 'up' ? 90 : 0;
  surface.lines(
    [
      [at(0, MM_LINE), at(length.mm, MM_LINE)],
      [at(0, INCH_LINE), at(inches, INCH_LINE)],
    ],
    PENS.edge,
  );
  surface.lines(
    [...mmTicks(length.mm), ...inchTicks(length.inches)].map(([along, a, b]) => [at(along, a), at(along, b)] as const),
    PENS.mark,
  );
  surface.text('0', at(0, 7.4), { ...NUMBER, turn });
  surface.text(`${length.mm} mm`, at(length.mm, 7.4), { ...NUMBER, turn, align: 'right' });
  surface.text('0', at(0, 0.1), { ...NUMBER, turn });
  surface.text(`${length.inches} in`, at(inches, 0.1), { ...NUMBER, turn, align: 'right' });
}

type Tick = readonly [along: number, from: number, to: number];

function mmTicks(length: number): readonly Tick[] {
  const every = 5;
  return Array.from({ length: length / every + 1 }, (_, index) => {
    const along = index * every;
    return [
      along,
      MM_LINE,
      MM_LINE + (along % 50 === 0 || along === length ? 2 : along % 10 === 0 ? 1.5 : 0.9),
    ] as const;
  });
}

function inchTicks(length: number): readonly Tick[] {
  const parts = 4;
  return Array.from({ length: length * parts + 1 }, (_, index) => {
    const along = (index / parts) * MM_PER_INCH;
    return [along, INCH_LINE, INCH_LINE - (index % parts === 0 ? 1.8 : index % 2 === 0 ? 1.4 : 0.9)] as const;
  });
}
