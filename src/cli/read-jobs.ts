/** Finds several jobs that were named, one after the other. */
import type { Problem } from '../core/problem';
import { findJob, type FoundJob, type NoJob } from './read-job';
import { machineProblem } from './refuse';
import type { World } from './world';

type FoundJobs =
  { readonly ok: true; readonly jobs: readonly FoundJob[]; readonly problems: readonly Problem[] } | NoJob;

/** All of them, or what is wrong with any; of several, problems say the file. */
export async function findJobs(names: readonly string[], world: World): Promise<FoundJobs> {
  if (names.filter((name) => name === '-').length > 1) {
    return {
      ok: false,
      code: 2,
      problems: [machineProblem('not-readable', 'Standard input can be read once: give - for one job only.')],
    };
  }
  const jobs: FoundJob[] = [];
  const problems: Problem[] = [];
  let code: NoJob['code'] = 0;
  for (const name of names) {
    const found = await findJob(name, world);
    const named = (one: Problem) => (names.length === 1 ? one : { ...one, at: `${name} ${one.at}`.trim() });
    problems.push(...found.problems.map(named));
    if (found.ok) jobs.push(found);
    else code = found.code > code ? found.code : code;
  }
  return code === 0 ? { ok: true, jobs, problems } : { ok: false, code, problems };
}

/** A file that is named several times is one job with so many copies, in the place of the first. */
export function withCopies(jobs: readonly FoundJob[]): readonly (FoundJob & { readonly copies: number })[] {
  const isSame = (one: FoundJob, other: FoundJob) =>
    one === other || (one.path !== undefined && one.path === other.path);
  const firsts = jobs.filter((job, index) => jobs.findIndex((one) => isSame(one, job)) === index);
  return firsts.map((job) => ({ ...job, copies: jobs.filter((one) => isSame(one, job)).length }));
}
