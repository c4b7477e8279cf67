/** The edits by which a job's frame is made of a moulding of the shelf. */
import type { Job } from '../job/job';
import { showFor } from '../layout/show';
import type { Edit } from '../problem';
import { colourOf } from '../shelf/colour-of';
import type { Moulding } from '../shelf/shelf';

/** Its measures come into the job, as far as the shelf knows them; what only a ready-made frame has goes. */
export function editsToMake(job: Job, moulding: Moulding): Edit[] {
  const { exact } = showFor(job);
  const { name, face, lip, rabbetDepth, depth, colour } = moulding;
  const shown = colour === undefined ? undefined : colourOf(colour);
  const set = (at: string, value: unknown): Edit => ({ at, value });
  const length = (mm: number | undefined) => (mm === undefined ? undefined : exact(mm));
  return [
    set('frame.name', name),
    set('frame.mouldingWidth', exact(face)),
    ...(lip === undefined || job.frame.build === 'float' ? [] : [set('frame.lip', exact(lip))]),
    set('frame.rabbetDepth', length(rabbetDepth)),
    set('frame.mouldingDepth', length(depth)),
    ...(shown === undefined ? [] : [set('frame.colour', shown)]),
    set('frame.comesWith', undefined),
    set('frame.weight', undefined),
    set('frame.density', undefined),
  ];
}
