/** Which files of a job's pictures can't be read, before anything is made of them. */
import type { Job } from '../core/job/job';
import type { Problem } from '../core/problem';
import { loadPictures } from '../outputs/proof/load-pictures';
import { pictureAsResult } from './pictures';

/** A warning for each; a relative name is taken from the job's folder. */
export async function pictureFileProblems(job: Job, jobPath: string | undefined): Promise<readonly Problem[]> {
  const loaded = await loadPictures(job, { readPicture: (file) => pictureAsResult(file, jobPath) });
  return loaded.problems;
}
