/** Reads a list of stock: sheets, and remnants of former jobs, each a row; a problem says the line and the column. */
import { LARGEST } from '../job/reader';
import type { Money } from '../money';
import { bad, good, isError, type Problem, type Result } from '../problem';
import { Cells } from '../tables/cells';
import { readTable, type Column } from '../tables/read-table';
import type { Unit } from '../units';

export const STOCK_COLUMNS = [
  { key: 'board', names: ['board', 'material', 'name'], needed: true },
  { key: 'kind', names: ['kind', 'what'] },
  { key: 'width', names: ['width'], needed: true },
  { key: 'height', names: ['height'], needed: true },
  { key: 'count', names: ['count', 'quantity'] },
  { key: 'price', names: ['price'] },
  { key: 'note', names: ['note', 'notes'] },
] as const satisfies readonly Column[];

type StockColumn = (typeof STOCK_COLUMNS)[number]['key'];

const KINDS = ['sheet', 'remnant'] as const;

/** One size of one board. */
export interface StockSheet {
  readonly board: string;
  readonly kind: (typeof KINDS)[number];
  /** mm. */
  readonly width: number;
  readonly height: number;
  /** Undefined: as many as are wanted. */
  readonly count?: number;
  /** Of one; undefined: unknown. */
  readonly price?: Money;
}

/** @param unit of bare numbers under headings that give none; undefined: such numbers are refused. */
export function readStock(text: string, unit?: Unit): Result<readonly StockSheet[]> {
  const table = readTable<StockColumn>(text, STOCK_COLUMNS);
  if (!table.ok) return table;
  const problems: Problem[] = [...table.problems];
  const sheets = table.value.rows.map((row) => {
    const cells = new Cells<StockColumn>(row, table.value, unit);
    const sheet = readSheet(cells);
    problems.push(...cells.problems);
    return sheet;
  });
  return problems.some(isError) ? bad(problems) : good(sheets, problems);
}

function readSheet(cells: Cells<StockColumn>): StockSheet {
  const kind = cells.word('kind', KINDS) ?? 'sheet';
  const side = (key: 'width' | 'height') => {
    const mm = cells.length(key, { most: LARGEST });
    if (mm === undefined && cells.text(key) === undefined) cells.wrong('value-missing', key, 'a sheet needs its size');
    return mm ?? NaN;
  };
  const board = cells.text('board');
  if (board === undefined) cells.wrong('value-missing', 'board', 'say what board it is');
  // Of a remnant there is one unless more are counted.
  const count = cells.whole('count', 0, 100_000) ?? (kind === 'remnant' ? 1 : undefined);
  const price = cells.money('price');
  return {
    board: board ?? '',
    kind,
    width: side('width'),
    height: side('height'),
    ...(count === undefined ? {} : { count }),
    ...(price ? { price } : {}),
  };
}
