/** One row of a price list as the texts of its cells, to be changed by hand and read again. */
import type { Problem } from '../problem';
import { capital } from '../phrases';
import { csvText } from '../tables/csv-text';
import type { PriceEntry } from './price-entry';
import { PRICE_COLUMNS, type PriceColumn } from './price-rows';
import { oddsProblems } from './prices-problems';
import { readPriceRows } from './read-price-rows';
import { FIRST_LINE } from './read-prices';

export type PriceCellTexts = Readonly<Partial<Record<PriceColumn, string>>>;

export interface ReadPriceCells {
  /** Undefined while something is wrong. */
  readonly entry?: PriceEntry;
  /** What is wrong, by the column it stands in. */
  readonly wrong: ReadonlyMap<PriceColumn, string>;
}

/** @param others of the list that the row stands in: what is at odds with one of them is told at the cell too. */
export function readPriceCells(cells: PriceCellTexts, others: readonly PriceEntry[] = []): ReadPriceCells {
  // Through the reader of files, so that a row typed here and one from a file are held to the same.
  const text = csvText([
    PRICE_COLUMNS.map(({ names: [name] }) => name),
    PRICE_COLUMNS.map(({ key }) => ({ quoted: cells[key] ?? '' })),
  ]);
  const read = readPriceRows(text);
  const [typed] = read.ok ? read.value : [];
  const odds = typed ? oddsOf(typed, others) : [];
  const entry = odds.length === 0 ? typed : undefined;
  return { ...(entry ? { entry } : {}), wrong: new Map([...read.problems, ...odds].flatMap(placed)) };
}

/** What is wrong with the row itself, not what it makes wrong with another. */
function oddsOf(typed: PriceEntry, others: readonly PriceEntry[]): Problem[] {
  const placedRows = [typed, ...others].map((entry, index) => ({ ...entry, line: index + FIRST_LINE }));
  return oddsProblems(placedRows).filter(({ at }) => at.startsWith(`line ${FIRST_LINE},`));
}

function placed(problem: Problem): [PriceColumn, string][] {
  const name = /column (.*)$/.exec(problem.at)?.[1];
  const column = PRICE_COLUMNS.find(({ names: [first] }) => first === name);
  return column ? [[column.key, withoutPlace(problem)]] : [];
}

/** What a problem of a row says, for where the row itself is seen. */
export function withoutPlace({ message }: Problem): string {
  return capital(message.replace(/^Line \d+(, column “[^”]*”)?: /, ''));
}
