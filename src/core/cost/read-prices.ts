/** Reads a price list: a table of which each row is one price or one rule of the shop; a problem says the line and the column. */
import { bad, good, isError, type Problem, type Result } from '../problem';
import type { PlacedEntry, PriceEntry } from './price-entry';
import type { PriceList } from './price-list';
import { priceListOf } from './price-list-of';
import { pricesProblems } from './prices-problems';
import { readEntries } from './read-price-rows';

/** Never fails in part: every wrong row is told, and then there is no list. */
export function readPrices(text: string): Result<PriceList> {
  const read = readEntries(text);
  return read.ok ? understood(read.value, read.problems) : read;
}

/** Rows that were read one by one, as a list; lines are counted as if they stood in a file under its heading. */
export function understandPrices(rows: readonly PriceEntry[]): Result<PriceList> {
  const placed = rows.map((entry, index) => ({ ...entry, line: index + FIRST_LINE }));
  return understood(placed, []);
}

/** Of a file, under its heading. */
export const FIRST_LINE = 2;

function understood(entries: readonly PlacedEntry[], beside: readonly Problem[]): Result<PriceList> {
  const problems = [...beside, ...pricesProblems(entries)];
  return problems.some(isError) ? bad(problems) : good(priceListOf(entries), problems);
}
