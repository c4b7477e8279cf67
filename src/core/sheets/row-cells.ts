/** One row of the stock as the texts of its cells, to be changed by hand and read again. */
import type { Problem } from '../problem';
import { csvText } from '../tables/csv-text';
import type { Unit } from '../units';
import { stockCells } from './print-stock';
import { readStock, STOCK_COLUMNS, type StockColumn } from './read-stock';
import type { StockSheet } from './stock-sheet';

export type RowCells = Readonly<Partial<Record<StockColumn, string>>>;

/** Lengths in `unit`, which each cell says. */
export function rowCells(sheet: StockSheet, unit: Unit): RowCells {
  const cells: Partial<Record<StockColumn, string>> = {};
  for (const [key, cell] of Object.entries(stockCells(sheet, unit)) as [
    StockColumn,
    string | number | { quoted: string },
  ][]) {
    cells[key] = typeof cell === 'object' ? cell.quoted : String(cell);
  }
  return cells;
}

export interface ReadRowCells {
  /** Undefined while something is wrong. */
  readonly sheet?: StockSheet;
  /** What is wrong, by the column it stands in. */
  readonly wrong: ReadonlyMap<StockColumn, string>;
}

/** @param unit of bare numbers. */
export function readRowCells(cells: RowCells, unit: Unit): ReadRowCells {
  // Through the reader of files, so that a row typed here and one from a file are held to the same.
  const text = csvText([
    STOCK_COLUMNS.map(({ names: [name] }) => name),
    STOCK_COLUMNS.map(({ key }) => ({ quoted: cells[key] ?? '' })),
  ]);
  const read = readStock(text, unit);
  const [sheet] = read.ok ? read.value : [];
  return { ...(sheet ? { sheet } : {}), wrong: new Map(read.problems.flatMap(placed)) };
}

function placed({ at, message }: Problem): [StockColumn, string][] {
  const name = /column (.*)$/.exec(at)?.[1];
  const column = STOCK_COLUMNS.find(({ names: [first] }) => first === name);
  const words = message.replace(/^Line \d+(, column “[^”]*”)?: /, '');
  return column ? [[column.key, `${words.charAt(0).toUpperCase()}${words.slice(1)}`]] : [];
}
