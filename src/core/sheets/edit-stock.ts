/** Changes a list of stock in the text of its file, cell by cell: columns, order, and rows that are not touched stay. */
import { exactText } from '../job/exact-text';
import { assert, bad, good, type Result } from '../problem';
import { cellText, type Cell } from '../tables/csv-text';
import { placeTable, replaceSpans, type PlacedRow, type PlacedTable, type Replacement } from '../tables/place-table';
import { readTable, type Table } from '../tables/read-table';
import { NO_LINES, type RemovedLines } from '../tables/removed-lines';
import { KEPT_STOCK } from './kept-stock';
import { stockCells } from './print-stock';
import { readStock, STOCK_COLUMNS, type StockColumn } from './read-stock';
import { stockName, type StockSheet } from './stock-sheet';

export interface EditedStock {
  readonly text: string;
  /** Lines that were taken out, with the cells of columns that only the user knows. */
  readonly removed: RemovedLines;
}

export interface EditHints {
  /** Lines that may stand again as they stood before. */
  readonly known?: RemovedLines;
  /** New names of rows, see `stockName`, to those that they had: what a row says beside is kept. */
  readonly were?: ReadonlyMap<string, string>;
  /** True: a new row's note is worth a column of its own. */
  readonly withNotes?: boolean;
}

/**
 * What has changed is written into its cell, rows that are gone are taken out, new ones put in under their columns; a column
 * that something has to be said in and that is not there is added at the end.
 *
 * @param text that reads without errors.
 * @param after the list as it is to be.
 * Errors: the list cannot be read again, such as one that has grown too long.
 */
export function editStock(text: string, after: readonly StockSheet[], hints: EditHints = {}): Result<EditedStock> {
  const edited = new StockFile(text, hints).edit(after);
  const read = readStock(edited.text);
  if (!read.ok) return bad(read.problems);
  const plain = ({ note, ...sheet }: StockSheet): StockSheet => (hints.withNotes && note !== undefined ? { ...sheet, note } : sheet); // prettier-ignore
  const isSame = (one: StockSheet, other: StockSheet | undefined) => other && KEPT_STOCK.isSame(plain(one), plain(other)); // prettier-ignore
  const isRight = read.value.length === after.length && after.every((one, index) => isSame(one, read.value[index]));
  assert(isRight, 'the file reads as the list that was wanted');
  return good(edited);
}

const LENGTHS = ['width', 'height', 'kerf', 'trim'] as const;
/** Columns of numbers that may have decimals. */
const DECIMALS = [...LENGTHS, 'price'] as const;

/** Whether decimals stand behind a comma in the file, as spreadsheets of many languages write them. */
function hasCommas({ rows }: Table<StockColumn>): boolean {
  const texts = rows.flatMap(({ cells }) => DECIMALS.map((key) => cells[key] ?? ''));
  const have = (mark: RegExp) => texts.filter((text) => mark.test(text)).length;
  return have(/\d,\d/) > have(/\d\.\d/);
}

function withComma(cell: Cell | undefined): Cell | undefined {
  if (typeof cell === 'object') return { quoted: cell.quoted.replace('.', ',') };
  return typeof cell === 'string' ? cell.replace('.', ',') : cell;
}

class StockFile {
  readonly #table: Table<StockColumn>;
  readonly #placed: PlacedTable;
  readonly #head: PlacedRow;
  readonly #before: readonly StockSheet[];
  /** Which cell of a row belongs to a column; grows where columns are added. */
  readonly #places = new Map<StockColumn, number>();
  #columns: number;
  readonly #hasCommas: boolean;
  readonly #replacements: Replacement[] = [];

  constructor(
    private readonly text: string,
    private readonly hints: EditHints,
  ) {
    const [read, table] = [readStock(text), readTable<StockColumn>(text, STOCK_COLUMNS)];
    assert(read.ok && table.ok, 'only a list that reads is changed');
    [this.#before, this.#table, this.#placed] = [read.value, table.value, placeTable(text)];
    const [head] = this.#placed.rows;
    assert(head && this.#placed.rows.length === this.#before.length + 1, 'every row of the list stands in the file');
    this.#head = head;
    this.#columns = head.cells.length;
    this.#hasCommas = hasCommas(this.#table);
    const headings = this.#texts(head);
    for (const { key } of STOCK_COLUMNS) {
      const place = headings.indexOf(this.#table.headings[key] ?? '');
      if (this.#table.headings[key] !== undefined && place >= 0) this.#places.set(key, place);
    }
  }

  edit(after: readonly StockSheet[]): EditedStock {
    const indexes = this.#indexes(after);
    const nowAt = new Map(after.flatMap((sheet, place) => (indexes[place] === undefined ? [] : [[indexes[place], sheet]]))); // prettier-ignore
    const lines = this.#before.flatMap((sheet, index) => {
      const now = nowAt.get(index);
      const row = this.#rowAt(index);
      if (now) this.#setCells(row, sheet, now);
      return now ? [] : [this.#takeOut(row)];
    });
    this.#putIn(after, indexes);
    const heading = this.text.slice(this.#head.line.from, this.#head.end);
    return { text: replaceSpans(this.text, this.#replacements), removed: { heading, lines } };
  }

  #rowAt(index: number): PlacedRow {
    const row = this.#placed.rows[index + 1];
    assert(row, 'rows stand in the order in which they are read');
    return row;
  }

  /** Which row of the file each is; undefined: a new one. */
  #indexes(after: readonly StockSheet[]): (number | undefined)[] {
    const there = new Map(this.#before.map((sheet, index) => [stockName(sheet), index]));
    return after.map((sheet) => there.get(stockName(sheet)) ?? there.get(this.hints.were?.get(stockName(sheet)) ?? ''));
  }

  #setCells(row: PlacedRow, before: StockSheet, after: StockSheet): void {
    // In one unit, so that the last bits of lengths don't count.
    const [was, is, cells] = [stockCells(before, 'mm'), stockCells(after, 'mm'), this.#cellsOf(after)];
    const beyond: string[] = [];
    for (const { key } of STOCK_COLUMNS) {
      // An empty count of a sheet says other than that of a remnant.
      const isSame = isSameCell(was[key], is[key]) && !(key === 'count' && before.kind !== after.kind);
      const cell = cells[key] ?? '';
      if (isSame || (cell === '' && !this.#places.has(key))) continue;
      const place = this.#placeOf(key);
      const there = row.cells[place];
      const text = cellText(cell, this.#placed.separator);
      if (there) this.#replacements.push({ ...there, text: this.text[there.from] === '"' ? inQuotes(text) : text });
      else if (text !== '') beyond[place - row.cells.length] = text;
    }
    const { separator } = this.#placed;
    const more = Array.from(beyond, (text = '') => separator + text).join('');
    if (more !== '') this.#replacements.push({ from: row.end, to: row.end, text: more });
  }

  #takeOut({ line, end }: PlacedRow): string {
    this.#replacements.push({ ...line, text: '' });
    return this.text.slice(line.from, end);
  }

  /** Each new row under the one that it follows in the list. */
  #putIn(after: readonly StockSheet[], indexes: readonly (number | undefined)[]): void {
    const { lineEnd } = this.#placed;
    let above = this.#head;
    const put: Replacement[] = [];
    for (const [place, sheet] of after.entries()) {
      const index = indexes[place];
      if (index !== undefined) above = this.#rowAt(index);
      else {
        const { to } = above.line;
        const line = this.#lineOf(sheet);
        // The last line of a file need not end as others do.
        put.push({ from: to, to, text: above.end === to ? lineEnd + line : line + lineEnd });
      }
    }
    // Behind columns that they add to the heading, which may be the last line.
    this.#replacements.push(...put);
  }

  #lineOf(sheet: StockSheet): string {
    const heading = this.text.slice(this.#head.line.from, this.#head.end);
    const { heading: stoodUnder, lines } = this.hints.known ?? NO_LINES;
    // Also where columns were added since, which are the last.
    const isSame = heading === stoodUnder || heading.startsWith(stoodUnder + this.#placed.separator);
    const again = stoodUnder !== '' && isSame ? lines : [];
    const stood = again.find((line) => {
      const read = readStock(`${heading}${this.#placed.lineEnd}${line}`);
      return read.ok && read.value[0] !== undefined && KEPT_STOCK.isSame(read.value[0], sheet);
    });
    return stood ?? this.#newLine(sheet);
  }

  #newLine(sheet: StockSheet): string {
    const cells = this.#cellsOf(sheet);
    const row: string[] = [];
    for (const { key } of STOCK_COLUMNS) {
      const cell = cells[key];
      // A note that nobody wrote is not worth a column, nor is what an empty cell means anyway.
      const isPlain = (key === 'note' && !this.hints.withNotes) || (key === 'count' && sheet.kind === 'remnant' && cell === 1) || (key === 'kind' && cell === 'sheet'); // prettier-ignore
      if (cell !== undefined && (this.#places.has(key) || !isPlain))
        row[this.#placeOf(key)] = cellText(cell, this.#placed.separator);
    }
    return Array.from({ length: Math.max(row.length, this.#head.cells.length) }, (_, place) => row[place] ?? '').join(this.#placed.separator); // prettier-ignore
  }

  /** Lengths as the headings have them, where these give a unit, and decimals with the mark that the file has them with. */
  #cellsOf(sheet: StockSheet): Partial<Record<StockColumn, Cell | undefined>> {
    const cells = stockCells(sheet);
    for (const key of LENGTHS) {
      const [unit, mm] = [this.#table.units[key], sheet[key]];
      if (unit !== undefined && mm !== undefined) cells[key] = { quoted: exactText(mm, unit) };
    }
    if (this.#hasCommas) for (const key of DECIMALS) cells[key] = withComma(cells[key]);
    return cells;
  }

  /** The column's, which is added where there is none. */
  #placeOf(key: StockColumn): number {
    const there = this.#places.get(key);
    if (there !== undefined) return there;
    const added = this.#columns;
    this.#places.set(key, added);
    this.#columns += 1;
    this.#replacements.push({ from: this.#head.end, to: this.#head.end, text: this.#placed.separator + key });
    return added;
  }

  #texts(row: PlacedRow): string[] {
    return row.cells.map(({ from, to }) => {
      const cell = this.text.slice(from, to);
      return cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"').trim() : cell;
    });
  }
}

function isSameCell(one: Cell | undefined, other: Cell | undefined): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function inQuotes(text: string): string {
  return text === '' || text.startsWith('"') ? text : `"${text}"`;
}
