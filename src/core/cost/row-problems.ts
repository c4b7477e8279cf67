/** Problems of a price list by the rows they are of, for where the rows themselves are seen. */
import type { Problem } from '../problem';
import { withoutPlace } from './price-cells';
import type { PriceEntry } from './price-entry';
import { FIRST_LINE } from './read-prices';

export interface RowProblems {
  /** Of no row. */
  readonly general: readonly Problem[];
  readonly of: (entry: PriceEntry) => readonly Problem[];
}

/** @param problems as `understandPrices` tells them of these rows. */
export function rowsWithProblems(rows: readonly PriceEntry[], problems: readonly Problem[]): RowProblems {
  const rowFor = ({ at }: Problem) => rows[Number(/^line (\d+)/.exec(at)?.[1] ?? NaN) - FIRST_LINE];
  return {
    general: problems.filter((problem) => rowFor(problem) === undefined),
    of: (entry) =>
      problems
        .filter((problem) => rowFor(problem) === entry)
        .map((problem) => ({ ...problem, message: withoutPlace(problem) })),
  };
}
