/** Finds several jobs that were named, one after the other or in a list; one that is named more than once is made so often. */
import { dirname, join, resolve } from 'node:path';
import { readJobList } from '../core/show/job-list';
import type { Problem, Result } from '../core/problem';
import { findJob, type FoundJob, type NoJob } from './read-job';
import { readText } from './read-text';
import { machineProblem } from './refuse';
import type { World } from './world';

export interface CountedJob extends FoundJob {
  /** How often it is made, from 1. */
  readonly copies: number;
}

type FoundJobs =
  { readonly ok: true; readonly jobs: readonly CountedJob[]; readonly problems: readonly Problem[] } | NoJob;

interface NamedJob {
  readonly name: string;
  readonly copies: number;
}

/**
 * All of them, or what is wrong with any; of several, problems say the file.
 *
 * @param names of jobs, `-` for standard input, and of lists of jobs, which end in `.csv`.
 */
export async function findJobs(names: readonly string[], world: World): Promise<FoundJobs> {
  if (names.filter((name) => name === '-').length > 1) {
    return {
      ok: false,
      code: 2,
      problems: [machineProblem('not-readable', 'Standard input can be read once: give - for one job only.')],
    };
  }
  const named = await namedJobs(names, world);
  if (!named.ok) return { ok: false, code: 2, problems: named.problems };
  const jobs: CountedJob[] = [];
  const problems: Problem[] = [];
  let code: NoJob['code'] = 0;
  for (const { name, copies } of named.value) {
    const found = await findJob(name, world);
    const inFile = (one: Problem) => (named.value.length === 1 ? one : { ...one, at: `${name} ${one.at}`.trim() });
    problems.push(...found.problems.map(inFile));
    if (found.ok) jobs.push({ ...found, copies });
    else code = found.code > code ? found.code : code;
  }
  return code === 0 ? { ok: true, jobs, problems } : { ok: false, code, problems };
}

/** Each as often as it is made, for whoever tells every one by itself. */
export function oneByOne(jobs: readonly CountedJob[]): readonly FoundJob[] {
  return jobs.flatMap((job) => Array.from({ length: job.copies }, () => job));
}

/** Each file once. */
async function namedJobs(names: readonly string[], world: World): Promise<Result<readonly NamedJob[]>> {
  const jobs = new Map<string, NamedJob>();
  const problems: Problem[] = [];
  const add = (name: string, copies: number) => {
    const key = name === '-' ? name : resolve(world.folder, name);
    jobs.set(key, { name, copies: copies + (jobs.get(key)?.copies ?? 0) });
  };
  for (const name of names) {
    if (!/\.csv$/i.test(name)) {
      add(name, 1);
      continue;
    }
    const text = await readText(name, world, 'A list of jobs is a table of values parted by commas.');
    const list = text.ok ? readJobList(text.value) : text;
    if (list.ok) for (const { file, copies } of list.value) add(join(dirname(name), file), copies);
    else problems.push(...list.problems.map((one) => ({ ...one, at: `${name} ${one.at}`.trim() })));
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: [...jobs.values()], problems };
}
