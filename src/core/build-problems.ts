/** All that is worth a look in a build beyond its mat: the same at the command line, on the screen and with every export. */
import { careProblems } from './care/care-problems';
import { beyondReach } from './cutting/beyond-reach';
import { hangingAsk } from './hanging/ask-of';
import { hangingProblems } from './hanging/hang';
import type { Job } from './job/job';
import type { WrittenJob } from './job/written';
import type { Layout } from './layout/layout';
import { packageProblems } from './package/problems';
import type { Problem } from './problem';
import type { Shelf } from './shelf/shelf';

/**
 * Warnings and notes, none of which keeps the mat from being cut.
 *
 * @param shelf what the user has, where it is known: loads, clips, screws.
 * @param written of hanging nothing is said where the job itself says nothing of it.
 */
export function buildProblems(
  job: Job,
  layout: Layout,
  written: Pick<WrittenJob, 'hanging' | 'wall'>,
  shelf?: Shelf,
): Problem[] {
  return [
    ...beyondReach(job, layout),
    ...packageProblems(job, layout, shelf),
    ...careProblems(job, layout),
    ...(written.hanging || written.wall ? hangingProblems(hangingAsk(job, layout, shelf)) : []),
  ];
}
