/** The edits by which a job takes a frame of the shelf as its own, with the borders that were found for it. */
import type { Job } from '../job/job';
import { showFor } from '../layout/show';
import type { Edit } from '../problem';
import { massWritten } from '../shelf/print-shelf';
import { colourOf } from '../shelf/colour-of';
import type { Candidate } from './candidate';
import { jobInFrame } from './job-in-frame';
import { wishOf } from './wish';

/** None where the frame has no room for the borders. Done, the job's layout is that of the candidate. */
export function editsToTake(job: Job, { frame: shelf, size }: Candidate): Edit[] {
  const taken = jobInFrame(wishOf(job), shelf, size);
  if (!taken) return [];
  const { frame, borders } = taken;
  const { exact } = showFor(job);
  const length = (mm: number | undefined) => (mm === undefined ? undefined : exact(mm));
  const set = (at: string, value: unknown): Edit => ({ at, value });
  const colour = shelf.colour === undefined ? undefined : colourOf(shelf.colour);
  const lengths = ['all', 'sides', 'left', 'right', 'top', 'bottom'] as const;
  return [
    set('frame.name', shelf.name),
    set('frame.readyMade', undefined),
    set('frame.hung', undefined),
    set('frame.size', { width: length(size.width), height: length(size.height) }),
    ...(job.frame.build === 'float' && shelf.build !== 'float' ? ['frame.lip', 'frame.allowance'].map((at) => set(at, undefined)) : []), // prettier-ignore
    ...(shelf.lip === undefined && shelf.face === undefined ? [] : [set('frame.lip', length(frame.lip))]),
    ...(shelf.face === undefined ? [] : [set('frame.mouldingWidth', length(frame.mouldingWidth))]),
    set('frame.rabbetDepth', length(shelf.rabbetDepth)),
    set('frame.mouldingDepth', length(shelf.depth)),
    ...(colour === undefined ? [] : [set('frame.colour', colour)]),
    set('frame.build', shelf.build),
    set('frame.corners', shelf.corners),
    set('frame.comesWith', shelf.comesWith.length > 0 ? shelf.comesWith : undefined),
    set('frame.grooves', shelf.grooves.length > 0 ? shelf.grooves.map(length) : undefined),
    set('frame.weight', shelf.weight === undefined ? undefined : massWritten(shelf.weight, undefined)),
    set('frame.density', undefined),
    set('frame.float.insideDepth', undefined),
    ...fixingEdits(job, taken),
    ...lengths.map((key) => set(`borders.${key}`, length(borders[key]))),
    set('borders.rule', borders.rule),
  ];
}

/** What is usual in the frame that is taken needs no word, and none of another frame may stand in its way. */
function fixingEdits(before: Job, taken: Job): Edit[] {
  const [was, now] = [before.package.fixing, taken.package.fixing];
  return [
    ...(was.kind === now.kind ? [] : [{ at: 'package.fixing.kind', value: undefined }]),
    ...(was.room === now.room ? [] : [{ at: 'package.fixing.room', value: undefined }]),
  ];
}
