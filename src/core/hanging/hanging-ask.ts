/** What is asked of a frame that is to hang: the job, the sizes of its frame, the shelf, and what its parts weigh. */
import type { Job } from '../job/job';
import type { FrameSizes } from '../layout/layout';
import { showFor, type Show } from '../layout/show';
import type { Shelf } from '../shelf/shelf';
import type { Unit } from '../units';
import type { Weighed } from './weight';

export interface HangingAsk {
  readonly job: Pick<Job, 'title' | 'units' | 'steps' | 'frame' | 'package' | 'hanging' | 'wall'>;
  readonly frame: FrameSizes;
  /** What the user has; left out: nothing is known of it. */
  readonly shelf?: Shelf | undefined;
  /** The parts of the frame; left out: not weighed. */
  readonly weighed?: Weighed | undefined;
  /** Behind the frame's back, as a canvas may: how far, and how far its sides lie inside the frame's, mm. */
  readonly standsOut?: { readonly by: number; readonly inset: number } | undefined;
  /** Of what is told in words; left out: the job's. */
  readonly shownIn?: Unit | undefined;
}

export function unitOf({ job, shownIn }: HangingAsk): Unit {
  return shownIn ?? job.units;
}

export function showOf(ask: HangingAsk): Show {
  return showFor({ units: unitOf(ask), steps: ask.job.steps });
}
