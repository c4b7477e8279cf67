/** Rows of a table as blocks that flow from page to page; what is told in them wraps and is never cut short. */
import type { Block } from './flow';
import { capHeight } from './label';
import { fromPoints } from './page';
import { PENS } from './pens';
import { BETWEEN, drawHeadings, PLAIN, ROW_HEIGHT, type Column, type TableRow } from './table';
import { SMALLEST, type TextStyle } from './type';
import type { Typesetter } from './typesetter';

/** From line to line within a cell, in type sizes. */
const LEADING = 1.2;

interface SetCell {
  readonly column: Column;
  readonly words: string;
  readonly lines: readonly string[];
  readonly style: TextStyle;
  /** From the left end of the row to that of its column, mm. */
  readonly across: number;
}

export function headingsBlock(columns: readonly Column[]): Block {
  return {
    height: ROW_HEIGHT,
    withNext: true,
    draw: (surface, { x, y }) => drawHeadings(surface, { x, y: y - ROW_HEIGHT }, columns),
  };
}

/** As high as its fullest cell; `\n` in a cell begins a line. A strong line stands over a row that is `marked`. */
export function rowBlock(
  typesetter: Typesetter,
  columns: readonly Column[],
  cells: TableRow,
  marked: 'marked' | 'plain' = 'plain',
): Block {
  const width = columns.reduce((sum, column) => sum + column.width, 0);
  const set = setCells(typesetter, columns, cells);
  const height = ROW_HEIGHT + Math.max(...set.map(({ lines, style }) => (lines.length - 1) * leading(style)));
  return {
    height,
    draw: (surface, { x, y }) => {
      for (const { column, words, lines, style, across } of set) {
        surface.hold(words, style);
        const at = x + across + (column.align === 'right' ? column.width - BETWEEN : 0);
        const first = y - (ROW_HEIGHT + capHeight(style.size)) / 2;
        lines.forEach((line, index) => surface.text(line, { x: at, y: first - index * leading(style) }, style));
      }
      if (marked === 'marked') surface.line({ x, y }, { x: x + width, y }, PENS.edge);
      surface.line({ x, y: y - height }, { x: x + width, y: y - height }, PENS.hair);
    },
  };
}

function leading({ size }: TextStyle): number {
  return fromPoints(size * LEADING);
}

function setCells(typesetter: Typesetter, columns: readonly Column[], cells: TableRow): readonly SetCell[] {
  let across = 0;
  return columns.map((column, index) => {
    const room = column.width - BETWEEN;
    const words = cells[index] ?? '';
    const style = inStyle(typesetter, words, room, column);
    const lines = words.split('\n').flatMap((part) => typesetter.lines(typesetter.set(part, style), room, style));
    const cell = { column, words, lines, style, across };
    across += column.width;
    return cell;
  });
}

/** The type of a column, smaller where a word of the cell is wider than its room: a number can't be broken. */
function inStyle(typesetter: Typesetter, cell: string, room: number, column: Column): TextStyle {
  const style = { ...(column.style ?? PLAIN), align: column.align ?? 'left' };
  const words = cell.split(/[ \n]/);
  const widest = Math.max(...words.map((word) => typesetter.width(typesetter.set(word, style), style)));
  // A hair less than would just fit, so that the last bits of a double don't cut it short.
  return widest <= room ? style : { ...style, size: Math.max(SMALLEST, (0.999 * style.size * room) / widest) };
}
