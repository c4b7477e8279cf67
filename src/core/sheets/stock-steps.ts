/** Counts of a list of stock that go up and down, as differences: they can be made on a list that others have changed. */
import { bad, good, type Problem, type Result } from '../problem';
import { sizeText, type Showing } from '../units';
import { countOf, isSameStock, plainName, stockName, type StockSheet } from './stock-sheet';

/** One row goes down, up, or both: as many as are taken have to be there before any is put. */
export interface StockStep {
  /** Which row; as it is made where it is not there. */
  readonly row: StockSheet;
  /** Whole numbers from 0. */
  readonly takes: number;
  readonly puts: number;
  /** What becomes of the row when none is left; unless said, a sheet's stays and a remnant's goes. */
  readonly atNone?: 'stays' | 'goes';
  /** Name of the row that it stood under, so that it goes back there; empty: it was the first. Unless said, the end. */
  readonly below?: string;
}

/** Whether sheets are used, or a use is taken back: for the words where it can't be. */
export type StockDeed = 'use' | 'take back';

interface Stepped {
  readonly list: readonly StockSheet[];
  /** Undoes what was done; all else that changes meanwhile stays. */
  readonly back: readonly StockStep[];
}

/** Makes all steps or none. Where fewer are there than a step takes, the row is told, how many are there and how many are wanted. */
export function stepStock(
  list: readonly StockSheet[],
  steps: readonly StockStep[],
  deed: StockDeed,
  showing: Showing,
): Result<Stepped> {
  const problems: Problem[] = [];
  let now: Stepped = { list, back: [] };
  for (const step of oneEach(list, steps)) {
    const index = rowIndex(now.list, step.row);
    const row = now.list[index];
    const there = row ? countOf(row) : 0;
    if (there === undefined) continue;
    if (there < step.takes) problems.push(tooFew(step, there, deed, showing));
    else if (row) now = withCount(now, index, there, step);
    else if (step.puts > 0) now = withRow(now, step);
  }
  return problems.length > 0 ? bad(problems) : good(now);
}

/** Steps of one row as one, so that a row that is used up and put back again never goes. */
function oneEach(list: readonly StockSheet[], steps: readonly StockStep[]): readonly StockStep[] {
  const merged: StockStep[] = [];
  const placeOf = ({ row }: StockStep) => rowIndex(list, row);
  for (const step of steps) {
    const place = placeOf(step);
    const at = merged.findIndex((one) => (place < 0 ? isSameStock(one.row, step.row) : placeOf(one) === place));
    const one = merged[at];
    if (one) merged[at] = { ...one, takes: one.takes + step.takes, puts: one.puts + step.puts };
    else merged.push(step);
  }
  return merged;
}

/** As it is listed, or the same thing listed the other way round. */
function rowIndex(list: readonly StockSheet[], row: StockSheet): number {
  const name = stockName(row);
  const exact = list.findIndex((one) => stockName(one) === name);
  return exact >= 0 ? exact : list.findIndex((one) => isSameStock(one, row));
}

function withRow({ list, back }: Stepped, { row, puts, below }: StockStep): Stepped {
  const made = { ...row, ...kerfNow(list, row), count: puts };
  const above = below === undefined ? -1 : list.findIndex((one) => stockName(one) === below);
  const at = below === '' ? 0 : above < 0 ? list.length : above + 1;
  return { list: list.toSpliced(at, 0, made), back: [{ row: made, takes: puts, puts: 0, atNone: 'goes' }, ...back] };
}

/** One board is cut with one blade, also where that was changed since the row was there. */
function kerfNow(list: readonly StockSheet[], row: StockSheet): Pick<StockSheet, 'kerf'> {
  const now = list.find((one) => one.kerf !== undefined && plainName(one) === plainName(row))?.kerf;
  return row.kerf === undefined || now === undefined ? {} : { kerf: now };
}

function withCount({ list, back }: Stepped, index: number, there: number, { takes, puts, atNone }: StockStep): Stepped {
  const row = list[index] as StockSheet;
  const count = there - takes + puts;
  const isGone = count === 0 && (atNone ?? (row.kind === 'remnant' ? 'goes' : 'stays')) === 'goes';
  const above = list[index - 1];
  const opposite: StockStep = {
    row,
    takes: puts,
    puts: takes,
    ...(there === 0 ? { atNone: 'stays' } : {}),
    ...(isGone ? { below: above ? stockName(above) : '' } : {}),
  };
  return {
    list: isGone ? list.toSpliced(index, 1) : list.with(index, { ...row, count }),
    back: [opposite, ...back],
  };
}

function tooFew({ row, takes }: StockStep, there: number, deed: StockDeed, showing: Showing): Problem {
  const size = sizeText(row, showing);
  const what = `the ${row.kind} of “${row.board.slice(0, 60)}”, ${size}`;
  const counts = `${takes} ${takes === 1 ? 'is' : 'are'} wanted, and the stock has ${there}`;
  const shared = { severity: 'error', at: 'stock', value: String(there), limit: String(takes) } as const;
  return deed === 'use'
    ? { ...shared, code: 'stock-used-up', message: `Of ${what}, ${counts}. Plan again with the stock as it is.`, remedy: 'a plan of the stock as it is' } // prettier-ignore
    : { ...shared, code: 'put-back-used', message: `Of ${what}, ${counts}: what was put back has been used since. Nothing was taken back; take that use back first, or change the list by hand.`, remedy: 'take back what used it first' }; // prettier-ignore
}
