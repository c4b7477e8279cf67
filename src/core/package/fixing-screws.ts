/** The screws of a fixing: what they go into, whatever kind of fixing it is. */
import type { Job } from '../job/job';
import type { FixingKind } from '../job/package';
import type { Layout } from '../layout/layout';
import type { Shelf } from '../shelf/shelf';
import { floatOf } from './float';
import { limitsOf, type ScrewLimits } from './screws';

/** Fixings that are screwed on, with what one of their screws is called. */
export const SCREW_OF: Readonly<Partial<Record<FixingKind, string>>> = {
  'turn buttons': 'A turn button’s screw',
  'offset clips': 'A clip’s screw',
  screws: 'A screw',
};

/** Into the ledge and the bar of a float frame, else into the frame. */
export function fixingScrews(job: Job, layout: Layout, shelf: Shelf): ScrewLimits {
  return floatOf(job, layout, shelf)?.screws ?? intoFrame(job, shelf);
}

/** Beside the rabbet the wood is at least as deep as that; what lies in front of it depends on the profile. */
export function intoFrame({ frame: { rabbetDepth, mouldingDepth } }: Job, shelf: Shelf): ScrewLimits {
  const into = rabbetDepth === undefined ? 'the moulding' : 'the wood beside the rabbet';
  return limitsOf({ into, wood: rabbetDepth ?? mouldingDepth }, shelf);
}
