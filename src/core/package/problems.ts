/** What a package, its frame and the air in it give to say: warnings and notes, since the mat can be cut all the same. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { showFor } from '../layout/show';
import { bySeverity, type Problem } from '../problem';
import type { Shelf } from '../shelf/shelf';
import { airProblems, matProblems } from './air-problems';
import { canvasProblems } from './canvas-problems';
import { fitProblems } from './fit-problems';
import { floatProblems } from './float-problems';
import { fitOf } from './fit';
import { screwProblems } from './screw-problems';
import { stackOf } from './stack';

/** @param shelf what clips and panes are chosen from; without it clips are left to the user. */
export function packageProblems(job: Job, layout: Layout, shelf: Shelf = []): Problem[] {
  const show = showFor(job);
  const stack = stackOf(job, layout);
  const fit = fitOf(job, stack);
  return bySeverity([
    ...fitProblems(job, layout, fit, shelf, show),
    ...floatProblems(job, layout, show),
    ...canvasProblems(job, layout, stack, show),
    ...screwProblems(job, layout, show),
    ...airProblems(job, layout, show),
    ...matProblems(job, layout, show),
  ]);
}
