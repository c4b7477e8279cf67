/** Reads a list of stock: sheets, and remnants of former jobs, each a row; a problem says the line and the column. */
import { LARGEST } from '../job/reader';
import { bad, good, isError, type Problem, type Result } from '../problem';
import { Cells } from '../tables/cells';
import { readTable, type Column } from '../tables/read-table';
import type { Unit } from '../units';
import { GRAINS, STOCK_KINDS, stockName, type StockSheet } from './stock-sheet';

export const STOCK_COLUMNS = [
  { key: 'board', names: ['board', 'material', 'name'], needed: true },
  { key: 'kind', names: ['kind', 'what'] },
  { key: 'width', names: ['width'], needed: true },
  { key: 'height', names: ['height'], needed: true },
  { key: 'count', names: ['count', 'quantity'] },
  { key: 'price', names: ['price'] },
  { key: 'grain', names: ['grain', 'pattern'] },
  { key: 'kerf', names: ['kerf'] },
  { key: 'trim', names: ['trim'] },
  { key: 'note', names: ['note', 'notes'] },
] as const satisfies readonly Column[];

export type StockColumn = (typeof STOCK_COLUMNS)[number]['key'];

/** Of one cut, and off one edge, at the most, mm. */
export const MOST_KERF = 20;
export const MOST_TRIM = 200;

/** Of one sheet: sums of a thousand are exact. */
const MOST_PRICE = 1_000_000;

/** Rows of the longest list. */
const MOST_SHEETS = 2000;

/** @param unit of bare numbers under headings that give none; undefined: such numbers are refused. */
export function readStock(text: string, unit?: Unit): Result<readonly StockSheet[]> {
  const table = readTable<StockColumn>(text, STOCK_COLUMNS);
  if (!table.ok) return table;
  const problems: Problem[] = [...table.problems];
  const rows = table.value.rows.map((row) => {
    const cells = new Cells<StockColumn>(row, table.value, unit);
    return { cells, sheet: readSheet(cells) };
  });
  if (rows.length > MOST_SHEETS) problems.push(tooLong(rows.length));
  findTwins(rows);
  findOddCuts(rows);
  problems.push(...rows.flatMap(({ cells }) => cells.problems));
  const sheets = rows.map(({ sheet }) => sheet);
  return problems.some(isError) ? bad(problems) : good(sheets, problems);
}

interface ReadRow {
  readonly cells: Cells<StockColumn>;
  readonly sheet: StockSheet;
}

function readSheet(cells: Cells<StockColumn>): StockSheet {
  const kind = cells.word('kind', STOCK_KINDS) ?? 'sheet';
  const side = (key: 'width' | 'height') => {
    const mm = cells.length(key, { most: LARGEST });
    if (mm === undefined && cells.text(key) === undefined) cells.wrong('value-missing', key, 'a sheet needs its size');
    return mm ?? NaN;
  };
  const board = cells.name('board');
  if (board === undefined) cells.wrong('value-missing', 'board', 'say what board it is');
  // Of a remnant there is one unless more are counted.
  const count = cells.whole('count', 0, 100_000) ?? (kind === 'remnant' ? 1 : undefined);
  const price = cells.money('price');
  if (price?.gt(MOST_PRICE)) cells.wrong('price-too-large', 'price', `a sheet costs at most ${MOST_PRICE}; write prices in a larger unit`); // prettier-ignore
  const kerf = cells.length('kerf', { zero: true, most: MOST_KERF });
  const trim = cells.length('trim', { zero: true, most: MOST_TRIM });
  const grain = cells.word('grain', GRAINS);
  const note = cells.text('note');
  return {
    board: board ?? '',
    kind,
    width: side('width'),
    height: side('height'),
    ...(count === undefined ? {} : { count }),
    ...(price ? { price } : {}),
    ...(kerf === undefined ? {} : { kerf }),
    ...(trim === undefined ? {} : { trim }),
    ...(grain === undefined ? {} : { grain }),
    ...(note === undefined ? {} : { note }),
  };
}

/** Two rows of one board, kind and size could not be told apart when sheets are taken. */
function findTwins(rows: readonly ReadRow[]): void {
  const lines = new Map<string, number>();
  for (const { cells, sheet } of rows) {
    if (!(sheet.width > 0 && sheet.height > 0)) continue;
    const name = stockName(sheet);
    const line = lines.get(name);
    if (line === undefined) lines.set(name, cells.line);
    else cells.wrong('sheet-listed-twice', 'board', `line ${line} lists the same; keep one row, and count both in it`);
  }
}

/** All of one board is cut with one blade. */
function findOddCuts(rows: readonly ReadRow[]): void {
  const kerfs = new Map<string, { readonly line: number; readonly kerf: number }>();
  for (const { cells, sheet } of rows) {
    if (sheet.kerf === undefined) continue;
    const board = sheet.board.toLowerCase();
    const other = kerfs.get(board);
    if (!other) kerfs.set(board, { line: cells.line, kerf: sheet.kerf });
    else if (Math.abs(other.kerf - sheet.kerf) > 1e-6)
      cells.wrong('kerfs-differ', 'kerf', `line ${other.line} gives this board another kerf; one board is cut with one blade`); // prettier-ignore
  }
}

function tooLong(rows: number): Problem {
  return {
    code: 'stock-too-long',
    severity: 'error',
    at: '',
    message: `The list has ${rows} rows; at most ${MOST_SHEETS} are read. Take out what is used up.`,
  };
}
