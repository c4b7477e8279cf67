/** Reads a list of jobs: a table of which each row names a job's file, such as the list that a show's plan is written with. */
import { bad, good, isError, type Result } from '../problem';
import { Cells } from '../tables/cells';
import { readTable, type Column } from '../tables/read-table';

const COLUMNS = [
  { key: 'job', names: ['job', 'file'], needed: true },
  { key: 'copies', names: ['copies', 'count', 'quantity'] },
] as const satisfies readonly Column[];

/** No more of one job are made. */
export const MOST_COPIES = 300;

export interface ListedJob {
  /** As the list has it: from the folder that the list is in. */
  readonly file: string;
  /** Of all its rows together, from 1. */
  readonly copies: number;
  /** The first row that names it. */
  readonly line: number;
}

/**
 * In the order in which they are first named; a row without a job is passed over, and so are all other columns. Errors: no
 * table, no column `job`, no row with one, a count that is none; each with its line and column.
 */
export function readJobList(text: string): Result<readonly ListedJob[]> {
  const table = readTable(text, COLUMNS);
  if (!table.ok) return bad(table.problems.filter(isError));
  const problems = table.problems.filter(isError);
  const jobs = new Map<string, ListedJob>();
  for (const row of table.value.rows) {
    const cells = new Cells(row, table.value);
    // Where a spreadsheet could take the name for a formula, the list has an apostrophe before it.
    const file = cells.text('job')?.replace(/^'(?=[=+\-@])/, '');
    if (file === undefined) continue;
    const copies = cells.whole('copies', 1, MOST_COPIES) ?? 1;
    const before = jobs.get(file);
    jobs.set(file, { file, copies: copies + (before?.copies ?? 0), line: before?.line ?? cells.line });
    problems.push(...cells.problems);
  }
  if (jobs.size === 0 && problems.length === 0)
    return bad([{ code: 'list-without-jobs', severity: 'error', at: 'line 1', message: 'No row of the list names a job; its column “job” holds the names of their files.' }]); // prettier-ignore
  return problems.some(isError) ? bad(problems) : good([...jobs.values()], problems);
}
