/** What the frame of one job costs by the shelf, counted as its pieces are told: whole sheets as bought. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Shelf } from '../shelf/shelf';
import { showingOf } from '../units';
import { ownMoulding } from './choose-moulding';
import { costsOf, type Costs } from './cost';
import { jobPieces } from './job-pieces';

/** Of a frame made of the moulding that the job itself names. */
export function jobCosts(job: Job, layout: Layout, shelf: Shelf): Costs {
  const moulding = ownMoulding(job, shelf);
  const chosen = moulding ? { moulding } : {};
  const { pieces, moulding: frame } = jobPieces(job, layout, chosen);
  return costsOf(job, shelf, { pieces, frame, ...chosen }, showingOf(job));
}
