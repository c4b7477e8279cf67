/** Tables on paper: columns of text under a heading, a hairline between rows. */
import type { Point } from '../../core/geometry/box';
import { PENS } from './pens';
import type { Surface } from './surface';
import type { TextStyle } from './type';
import { capHeight } from './label';

export interface Column {
  readonly heading: string;
  /** mm. */
  readonly width: number;
  readonly align?: 'left' | 'right';
  readonly style?: TextStyle;
}

export type TableRow = readonly string[];

export const ROW_HEIGHT = 6;
const HEADING: TextStyle = { size: 7, weight: 'bold' };
export const PLAIN: TextStyle = { size: 9 };
/** Between the columns, mm. */
export const BETWEEN = 2;

/** Draws heading and rows downward from the upper left corner; returns the y below the last row. */
export function drawTable(
  surface: Surface,
  corner: Point,
  columns: readonly Column[],
  rows: readonly TableRow[],
): number {
  const width = columns.reduce((sum, column) => sum + column.width, 0);
  let y = corner.y - ROW_HEIGHT;
  drawHeadings(surface, { x: corner.x, y }, columns);
  for (const row of rows) {
    y -= ROW_HEIGHT;
    drawRow(surface, corner.x, y, columns, row);
    surface.line({ x: corner.x, y }, { x: corner.x + width, y }, PENS.hair);
  }
  return y;
}

/** The names of the columns over a line, upward from their lower left corner. */
export function drawHeadings(surface: Surface, { x, y }: Point, columns: readonly Column[]): void {
  const width = columns.reduce((sum, column) => sum + column.width, 0);
  const names = columns.map((column) => column.heading);
  drawRow(surface, x, y, columns, names, HEADING);
  surface.line({ x, y }, { x: x + width, y }, PENS.edge);
}

function drawRow(
  surface: Surface,
  left: number,
  bottom: number,
  columns: readonly Column[],
  cells: TableRow,
  heading?: TextStyle,
): void {
  let x = left;
  for (const [index, column] of columns.entries()) {
    const style = { ...(heading ?? column.style ?? PLAIN), align: column.align ?? 'left' };
    const words = surface.fit(cells[index] ?? '', column.width - BETWEEN, style);
    const at = {
      x: column.align === 'right' ? x + column.width - BETWEEN : x,
      y: bottom + (ROW_HEIGHT - capHeight(style.size)) / 2,
    };
    if (words !== '') surface.text(words, at, style);
    x += column.width;
  }
}

/** Columns widened or narrowed together to fill a width. */
export function filling(columns: readonly Column[], width: number): readonly Column[] {
  const sum = columns.reduce((total, column) => total + column.width, 0);
  return columns.map((column) => ({ ...column, width: (column.width * width) / sum }));
}

/** Rows in lots that fit a page each; at least one lot. */
export function inLots<T>(rows: readonly T[], first: number, others: number): readonly (readonly T[])[] {
  const lots: T[][] = [rows.slice(0, Math.max(0, first))];
  for (let at = Math.max(0, first); at < rows.length; at += others) lots.push(rows.slice(at, at + others));
  return lots;
}
