/** A list of stock as the text of its file, which reads back to the same list. */
import { lengthCell } from '../shelf/print-shelf';
import { csvText, type Cell } from '../tables/csv-text';
import type { Unit } from '../units';
import { STOCK_COLUMNS, type StockColumn } from './read-stock';
import { countOf, type StockSheet } from './stock-sheet';

/**
 * Comma-separated values with every length in `unit`, or, where none is given, in inches or millimetres, whichever has the
 * shorter exact number; said in each cell. Columns that nothing fills are left out.
 */
export function printStock(list: readonly StockSheet[], unit?: Unit): string {
  const rows = list.map((sheet) => stockCells(sheet, unit));
  const used = STOCK_COLUMNS.filter(({ key }) => rows.some((row) => row[key] !== undefined));
  const columns = used.length > 0 ? used : STOCK_COLUMNS;
  return csvText([
    columns.map(({ names: [name] }) => name),
    ...rows.map((row) => columns.map(({ key }): Cell => row[key] ?? '')),
  ]);
}

/** What its row holds; a cell without a text is left out. */
export function stockCells(sheet: StockSheet, unit?: Unit): Partial<Record<StockColumn, Cell>> {
  const { board, kind, width, height, price, grain, kerf, trim, note } = sheet;
  const cells: Partial<Record<StockColumn, Cell | undefined>> = {
    board,
    kind,
    width: lengthCell(width, unit),
    height: lengthCell(height, unit),
    count: countOf(sheet),
    price: price?.toFixed(),
    grain,
    kerf: lengthCell(kerf, unit),
    trim: lengthCell(trim, unit),
    note,
  };
  return Object.fromEntries(Object.entries(cells).filter(([, cell]) => cell !== undefined));
}
