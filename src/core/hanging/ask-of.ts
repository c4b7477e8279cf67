/** What is asked of a job that is laid out: its frame, what its parts weigh, and the shelf. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { ownMoulding } from '../pieces/choose-moulding';
import { jobPieces } from '../pieces/job-pieces';
import type { Shelf } from '../shelf/shelf';
import type { HangingAsk } from './hanging-ask';

export function hangingAsk(job: Job, layout: Layout, shelf?: Shelf): HangingAsk {
  const moulding = ownMoulding(job, shelf);
  const { weight } = jobPieces(job, layout, moulding ? { moulding } : {});
  return { job, frame: layout.frame, weighed: weight, ...(shelf ? { shelf } : {}) };
}
