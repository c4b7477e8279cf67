/** Reads the rows of a price list, each by itself; a problem says the line and the column. */
import { bad, good, isError, type Problem, type Result } from '../problem';
import { Cells } from '../tables/cells';
import { readTable } from '../tables/read-table';
import type { PlacedEntry, PriceEntry } from './price-entry';
import { PRICE_COLUMNS, PRICE_WHATS, rowOf, type PriceColumn, type PriceWhat } from './price-rows';
import { doubleProblems } from './prices-problems';
import {
  readCurrency,
  readMitreWaste,
  readNumber,
  readRounding,
  readText,
  readYes,
  type PriceCells,
} from './read-value';

/** The rows of a list that may yet lack some, as it does while it is put together; of wrong rows each is told, and then there are none. */
export function readPriceRows(text: string): Result<readonly PriceEntry[]> {
  const read = readEntries(text);
  if (!read.ok) return read;
  const problems = [...read.problems, ...doubleProblems(read.value)];
  if (problems.some(isError)) return bad(problems);
  return good(
    read.value.map(({ line: _, ...entry }) => entry),
    problems,
  );
}

/** Fails only where it is no table; what is wrong with rows stands beside those that are right. */
export function readEntries(text: string): Result<readonly PlacedEntry[]> {
  const table = readTable<PriceColumn>(text, PRICE_COLUMNS);
  if (!table.ok) return table;
  const problems: Problem[] = [...table.problems];
  const entries = table.value.rows.flatMap((row) => {
    const cells: PriceCells = new Cells(row, table.value);
    const entry = readEntry(cells);
    problems.push(...cells.problems);
    return entry ?? [];
  });
  return good(entries, problems);
}

function readEntry(cells: PriceCells): PlacedEntry | undefined {
  if (cells.text('what') === undefined) cells.need('what', 'Each row of a price list');
  const what = cells.word('what', PRICE_WHATS);
  if (what === undefined) return undefined;
  if (rowOf(what).value !== 'text' && hasTornDecimals(cells)) return undefined;
  if (cells.text('value') === undefined) cells.need('value', `A row “${what}”`);
  const value = cells.text('value') === undefined ? {} : valueOf(what, cells);
  return {
    line: cells.line,
    what,
    ...value,
    ...perOf(what, cells),
    ...nameOf(what, cells),
    ...given('note', cells.text('note')),
  };
}

/** No cell after the value begins with figures but the rest of a decimal whose comma parted it: `4,00` without quotes. */
function hasTornDecimals(cells: PriceCells): boolean {
  const [value = '', rest = ''] = [cells.text('value'), cells.text('per')];
  if (!/\d$/.test(value) || !/^\d+(?: *(?:%|min))?$/.test(rest)) return false;
  const [point, comma] = [`${value}.${rest}`, `${value},${rest}`].map((text) => text.slice(0, 40));
  cells.wrong('amount-unreadable', 'value', `“${comma}” stands in two cells; write ${point}, or quote the cell: "${comma}"`); // prettier-ignore
  return true;
}

/** Greatest percent and number of minutes that are no slip of the pen. */
const MOST = { percent: 10_000, minutes: 10_000, tax: 100, margin: 100 } as const;

function valueOf(what: PriceWhat, cells: PriceCells): Partial<PriceEntry> {
  const { value } = rowOf(what);
  switch (value) {
    case 'currency':
      return given('currency', readCurrency(cells));
    case 'amount':
      return given('amount', cells.money('value'));
    case 'percent':
      return given('amount', readNumber(cells, percentLimits(what)));
    case 'minutes':
      return given('amount', readNumber(cells, { unit: 'min', most: MOST.minutes }));
    case 'waste':
      return given('waste', readMitreWaste(cells));
    case 'rounding':
      return given('rounding', readRounding(cells));
    case 'text':
      return given('word', readText(cells));
    case 'yes or no':
      return given('yes', readYes(cells));
    default:
      return given('word', cells.word('value', value));
  }
}

/** Of a price nothing would be left for its cost if all of it were margin. */
function percentLimits(what: PriceWhat) {
  if (what === 'margin') return { unit: '%', most: MOST.margin, below: true } as const;
  return { unit: '%', most: what === 'tax' ? MOST.tax : MOST.percent } as const;
}

function perOf(what: PriceWhat, cells: PriceCells): Pick<PriceEntry, 'per'> {
  const { per } = rowOf(what);
  if (!per) return unused(what, 'per', cells);
  const [first] = per;
  if (per.length > 1 && cells.text('per') === undefined) {
    cells.need('per', `A row “${what}” (${per.join(', ')})`);
    return {};
  }
  return given('per', cells.text('per') === undefined ? first : cells.word('per', per));
}

function nameOf(what: PriceWhat, cells: PriceCells): Pick<PriceEntry, 'name'> {
  const { name } = rowOf(what);
  if (name === undefined) return unused(what, 'name', cells);
  const written = cells.name('name');
  if (written === undefined) {
    if (name !== 'may') cells.need('name', `A row “${what}”`);
    return {};
  }
  return given('name', typeof name === 'string' ? written : cells.word('name', name));
}

/** What stands in a cell that the row does not have is never passed over in silence. */
function unused(what: PriceWhat, key: 'per' | 'name', cells: PriceCells): Record<string, never> {
  const written = cells.text(key);
  if (written !== undefined) {
    const remedy = rowOf(what).value === 'text' ? quotedText(cells) : `leave out “${written.slice(0, 40)}”, or write it as a note`; // prettier-ignore
    cells.wrong('price-cell-unused', key, `a row “${what}” has no such cell; ${remedy}`);
  }
  return {};
}

/** What follows a text is mostly the rest of it, behind a comma. */
function quotedText(cells: PriceCells): string {
  const parts = (['value', 'per', 'name'] as const).flatMap((key) => cells.text(key) ?? []);
  return `a text with a comma is quoted: "${parts.join(', ').slice(0, 80)}"`;
}

function given<K extends string, V>(key: K, value: V | undefined): Partial<Record<K, V>> {
  return value === undefined ? {} : ({ [key]: value } as Record<K, V>);
}
