/** All that is worth a look in a build beyond its mat: the same at the command line, on the screen and with every export. */
import { careProblems } from './care/care-problems';
import { beyondReach } from './cutting/beyond-reach';
import type { Job } from './job/job';
import type { Layout } from './layout/layout';
import { packageProblems } from './package/problems';
import type { Problem } from './problem';

/** Warnings and notes, none of which keeps the mat from being cut. */
export function buildProblems(job: Job, layout: Layout): Problem[] {
  return [...beyondReach(job, layout), ...packageProblems(job, layout), ...careProblems(job, layout)];
}
