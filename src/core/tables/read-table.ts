/** Reads a table of comma-separated values whose first row names its columns; problems say line and column. */
import Papa from 'papaparse';
import { nearestWord } from '../nearest-word';
import { bad, good, isError, type Problem, type Result } from '../problem';
import { readLength, unitWord, type Unit } from '../units';

export interface Column<Key extends string = string> {
  readonly key: Key;
  /** Names it goes by in a heading, without capitals; the first is what is written. */
  readonly names: readonly [string, ...string[]];
  readonly needed?: boolean;
}

export interface Row<Key extends string = string> {
  /** Line of the file on which it begins, from 1. */
  readonly line: number;
  /** What stands in its cells, trimmed; a cell without text is left out. */
  readonly cells: Readonly<Partial<Record<Key, string>>>;
}

export interface Table<Key extends string = string> {
  readonly rows: readonly Row<Key>[];
  /** Units that headings give to bare numbers below them, such as `width (mm)`. */
  readonly units: Readonly<Partial<Record<Key, Unit>>>;
  /** What a column is called in this file, for messages. */
  readonly headings: Readonly<Partial<Record<Key, string>>>;
}

/** What may part the columns. */
export const SEPARATORS = [',', ';', '\t'];

/** Rows of the largest table that is read. */
export const MOST_ROWS = 20_000;

/**
 * Reads commas, semicolons or tabs, whichever parts the columns; quotes as RFC 4180 has them. A column that is not known
 * is passed over with a warning. Refused are a table without the columns it needs, a heading said twice, and quotes that
 * do not close. A problem's `at` is `line N` or `line N, column NAME`.
 */
export function readTable<Key extends string>(text: string, columns: readonly Column<Key>[]): Result<Table<Key>> {
  const lines = splitRows(text.replace(/^\uFEFF/, ''));
  if (!lines.ok) return lines;
  const [head, ...body] = lines.value;
  if (!head) return bad([fault('table-empty', 'line 1', 'The table is empty; its first line names the columns.')]);
  const read = readHeading(head, columns);
  if (!read.ok) return read;
  const rows = body.map(({ line, cells }) => ({ line, cells: named(cells, read.value.keys) }));
  const problems = [
    ...read.problems,
    ...body.flatMap(({ line, cells }) => cellsTooMany(line, cells, head.cells.length)),
  ];
  return problems.some(isError)
    ? bad(problems)
    : good({ rows, units: read.value.units, headings: read.value.headings }, problems);
}

interface Line {
  readonly line: number;
  readonly cells: readonly string[];
}

/** Rows that hold anything, each with its line. */
function splitRows(text: string): Result<readonly Line[]> {
  const lines: Line[] = [];
  const problems: Problem[] = [];
  let [line, from, count] = [1, 0, 0];
  Papa.parse(text, {
    delimitersToGuess: SEPARATORS,
    step: ({ data, errors, meta }) => {
      const quotes = errors.find(({ code }) => code.includes('Quotes'));
      if (quotes) {
        problems.push(
          fault(
            'table-quotes',
            `line ${line}`,
            `Line ${line}: a quotation mark does not close; write a quotation mark inside a cell twice ("").`,
          ),
        );
      }
      if (data.some((cell) => cell.trim() !== '')) {
        count += 1;
        if (count <= MOST_ROWS + 1) lines.push({ line, cells: data });
      }
      line += text.slice(from, meta.cursor).split(/\r\n|\r|\n/).length - 1;
      from = meta.cursor;
    },
  });
  if (count > MOST_ROWS + 1) {
    problems.push(fault('table-too-long', '', `The table has ${count - 1} rows; at most ${MOST_ROWS} are read.`));
  }
  return problems.length > 0 ? bad(problems.slice(0, 1)) : good(lines);
}

interface Heading<Key extends string> {
  readonly keys: readonly (Key | undefined)[];
  readonly units: Table<Key>['units'];
  readonly headings: Table<Key>['headings'];
}

function readHeading<Key extends string>({ line, cells }: Line, columns: readonly Column<Key>[]): Result<Heading<Key>> {
  const problems: Problem[] = [];
  const units: Partial<Record<Key, Unit>> = {};
  const headings: Partial<Record<Key, string>> = {};
  const keys = cells.map((cell) => {
    const heading = cell.trim();
    if (heading === '') return undefined;
    const { name, unit } = splitHeading(heading);
    const column = columns.find(({ names }) => names.includes(plain(heading)) || names.includes(name));
    if (!column) {
      problems.push(unknownColumn(heading, line, columns));
      return undefined;
    }
    if (headings[column.key] !== undefined) {
      problems.push(
        fault(
          'column-twice',
          `line ${line}, column ${heading}`,
          `Line ${line}: two columns say “${column.names[0]}”; keep one of them.`,
        ),
      );
    }
    headings[column.key] = heading;
    if (unit) units[column.key] = unit;
    return column.key;
  });
  for (const { key, names, needed } of columns) {
    if (!needed || headings[key] !== undefined) continue;
    const known = columns.map(({ names: [first] }) => first).join(', ');
    problems.push(
      fault(
        'column-missing',
        `line ${line}`,
        `Line ${line}: no column is called “${names[0]}”; the first line names the columns: ${known}.`,
      ),
    );
  }
  return problems.some(isError) ? bad(problems) : good({ keys, units, headings }, problems);
}

/** `Width (in)` is the column `width` in inches. */
function splitHeading(heading: string): { readonly name: string; readonly unit?: Unit } {
  const found = /^(.*?)[\s,]*[([]?\s*(in|inches|mm|cm|")\s*[)\]]?$/i.exec(heading);
  const name = plain(found?.[1] ?? '');
  const word = found && unitWord(found[2] ?? '');
  const reading = word ? readLength(`1 ${word}`, 'in') : undefined;
  return name === '' || !reading?.ok ? { name: plain(heading) } : { name, unit: reading.unit };
}

function plain(heading: string): string {
  return heading
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ');
}

function unknownColumn(heading: string, line: number, columns: readonly Column[]): Problem {
  const near = nearestWord(
    plain(heading),
    columns.flatMap(({ names }) => names),
  );
  const meant = near === undefined ? '' : ` Is “${near}” meant?`;
  return {
    ...fault(
      'column-unknown',
      `line ${line}, column ${heading.slice(0, 40)}`,
      `Line ${line}: the column “${heading.slice(0, 40)}” is not known and is passed over.${meant}`,
    ),
    severity: 'warning',
  };
}

function cellsTooMany(line: number, cells: readonly string[], most: number): Problem[] {
  const extra = cells.slice(most).find((cell) => cell.trim() !== '');
  if (extra === undefined) return [];
  return [
    fault(
      'cells-too-many',
      `line ${line}`,
      `Line ${line} has ${cells.length} cells, but the first line names ${most} columns; “${extra.trim().slice(0, 40)}” stands in none. Quote a cell that holds the sign between columns.`,
    ),
  ];
}

function named<Key extends string>(cells: readonly string[], keys: readonly (Key | undefined)[]): Row<Key>['cells'] {
  const found: Partial<Record<Key, string>> = {};
  keys.forEach((key, index) => {
    const text = plainText((cells[index] ?? '').trim());
    if (key !== undefined && text !== '') found[key] = text;
  });
  return found;
}

/** Without the apostrophe that keeps spreadsheets from running a text, as tables are written here. */
function plainText(cell: string): string {
  return cell.replace(/^'(?=[=+\-@＝＋－＠])/, '');
}

function fault(code: string, at: string, message: string): Problem {
  return { code, severity: 'error', at, message };
}
