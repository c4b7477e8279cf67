/** Putting a piece on a sheet by hand: where edges pull it. Whether it can stay there is for `check-pins.ts` to say. */
import type { Box, Point, Size } from '../geometry/box';
import { trimOf, type SheetsAsk, type Stock } from './ask';

/** What may be cut of a sheet: all of it but the margin that is trimmed off, mm. */
export function usablePart(stock: Stock, ask: Pick<SheetsAsk, 'trim'>): Box {
  const { width, height } = stock;
  const off = trimOf(stock, ask);
  return { left: off, bottom: off, right: width - off, top: height - off };
}

export interface Pulls {
  readonly sheet: Box;
  /** What else lies there. */
  readonly others: readonly Box[];
  /** Left between two pieces, mm. */
  readonly kerf: number;
  /** How near an edge pulls, mm. */
  readonly reach: number;
  /** What is on no edge comes to a multiple of it from the sheet's corner, mm. */
  readonly step: number;
}

/** Where a piece comes to lie that is let go at a point: its lower left corner on the sheet, mm. */
export function pulledTo({ width, height }: Size, corner: Point, pulls: Pulls): Point {
  const { sheet, others } = pulls;
  const across = others.map(({ left, right }) => ({ low: left, high: right }));
  const up = others.map(({ bottom, top }) => ({ low: bottom, high: top }));
  return {
    x: pulled(corner.x, width, { low: sheet.left, high: sheet.right }, across, pulls),
    y: pulled(corner.y, height, { low: sheet.bottom, high: sheet.top }, up, pulls),
  };
}

interface Span {
  readonly low: number;
  readonly high: number;
}

/** Along one side: to an edge near by, beside a neighbour or in line with it; else to the step. */
function pulled(
  at: number,
  length: number,
  sheet: Span,
  others: readonly Span[],
  { kerf, reach, step }: Pulls,
): number {
  const [start, end] = [sheet.low, sheet.high - length];
  const beside = others.flatMap(({ low, high }) => [low, high - length, high + kerf, low - kerf - length]);
  const nearest = [start, end, ...beside].reduce((a, b) => (Math.abs(b - at) < Math.abs(a - at) ? b : a));
  if (Math.abs(nearest - at) <= reach) return nearest;
  return start + Math.round((at - start) / step) * step;
}
