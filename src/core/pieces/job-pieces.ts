/** What the frame of one job is made of and what it weighs: the door for whoever has a job and its layout. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Moulding } from '../shelf/shelf';
import { cutsList } from './cuts-list';
import { DEFAULT_KERF } from './kerf';
import { mouldingOf, type FrameMoulding } from './moulding';
import type { Piece } from './piece';
import { sectionOf } from './section';
import { weigh, type Weighed } from './weight';

export interface JobPieces {
  readonly moulding: FrameMoulding;
  /** From the front to the back. */
  readonly pieces: readonly Piece[];
  readonly weight: Weighed;
}

export interface PiecesChoice {
  /** Of the shelf, in place of the job's own measures. */
  readonly moulding?: Moulding;
  /** What one saw cut takes off a stick, mm. */
  readonly kerf?: number;
}

export function jobPieces(job: Job, layout: Layout, { moulding, kerf }: PiecesChoice = {}): JobPieces {
  const stick = mouldingOf(layout, sectionOf(job, layout, moulding), kerf ?? DEFAULT_KERF[job.units]);
  const pieces = cutsList(job, layout, stick);
  return { moulding: stick, pieces, weight: weigh(job, layout, pieces, stick) };
}
