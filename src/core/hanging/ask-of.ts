/** What is asked of a job that is laid out: its frame, what its parts weigh, and the shelf. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { stackOf } from '../package/stack';
import { standOutOf } from '../package/stand-out';
import { ownMoulding } from '../pieces/choose-moulding';
import { jobPieces } from '../pieces/job-pieces';
import type { Shelf } from '../shelf/shelf';
import type { HangingAsk } from './hanging-ask';

export function hangingAsk(job: Job, layout: Layout, shelf?: Shelf): HangingAsk {
  const moulding = ownMoulding(job, shelf);
  const { weight } = jobPieces(job, layout, moulding ? { moulding } : {});
  const behind = standOutOf(job, layout, stackOf(job, layout), { shelf: shelf ?? [], wallGap: job.hanging.bumpers });
  const by = behind?.standOut?.greatest ?? 0;
  return {
    job,
    frame: layout.frame,
    weighed: weight,
    ...(shelf ? { shelf } : {}),
    ...(by > 0 && behind?.side ? { standsOut: { by, inset: behind.side.inset } } : {}),
  };
}
