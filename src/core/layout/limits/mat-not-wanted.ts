/** Mats where there is none as a rule, over a canvas or a panel, and where none can be held, in a float frame. */
import { sizeOf, type Size } from '../../geometry/box';
import { goesBare } from '../../job/bare-kinds';
import type { Job } from '../../job/job';
import type { Edit, Problem } from '../../problem';
import type { PlacedLayout } from '../layout';
import type { Show } from '../show';
import { frameOf } from './bare-remedy';
import { SLACK, titled } from './slack';

const SIDES_OF_SIZE = ['width', 'height'] as const;
const NO_MAT: Edit = { at: 'mat.layers', value: [] };

export function matNotWanted(job: Job, layout: PlacedLayout, show: Show): Problem[] {
  return job.frame.build === 'float' ? [matInFloatFrame(job)] : matOverCanvas(job, layout, show);
}

function matInFloatFrame({ pictures }: Job): Problem {
  const bare = pictures.length === 1 && pictures.every(({ kind }) => goesBare(kind));
  const remedy = bare ? 'take the mat away' : 'take a frame with a lip';
  return {
    code: 'mat-in-float-frame',
    severity: 'error',
    at: 'frame.build',
    message: `A float frame has no lip, so nothing holds a mat and its glazing at the front; it is for one canvas or panel without a mat. What would do: ${remedy}.`,
    remedy,
    fix: bare
      ? { label: 'Take the mat away', edits: [NO_MAT] }
      : { label: 'Take a frame with a lip', edits: [{ at: 'frame.build', value: undefined }] },
  };
}

/** A mat doesn't lie flat over a canvas, which hangs without glazing. Common practice, no source. */
function matOverCanvas(job: Job, layout: PlacedLayout, show: Show): Problem[] {
  const alone = layout.windows.length === 1;
  return layout.windows.flatMap(({ picture: placed }): Problem[] => {
    const picture = placed && job.pictures[placed.index];
    // Of a picture over several windows there is one to speak of.
    if (!picture || !goesBare(picture.kind) || (placed.part?.index ?? 0) > 0) return [];
    const what = `Picture ${titled(picture.title) || `${placed.index + 1} `}is a ${picture.kind}, which as a rule goes into its frame as it is, without mat and glazing`;
    return [
      {
        code: 'canvas-under-mat',
        severity: 'note',
        at: `pictures[${placed.index}].kind`,
        ...(alone
          ? withoutMat(what, job, sizeOf(placed.sheet), show)
          : { message: `${what}, one to a frame.`, remedy: 'a job of its own, without a mat' }),
      },
    ];
  });
}

/** A frame that is not made to fit has to be of the picture's size then. */
function withoutMat(what: string, { frame }: Job, size: Size, show: Show): Pick<Problem, 'message' | 'remedy' | 'fix'> {
  const fits = SIDES_OF_SIZE.every((side) => !frame.blank || Math.abs(size[side] - frame.blank[side]) <= SLACK);
  const of = fits ? '' : `, in a frame of ${show.size(size)}`;
  return {
    message: `${what}${of}.`,
    remedy: `no mat${of}`,
    fix: { label: `No mat${of}`, edits: [NO_MAT, ...(fits ? [] : frameOf(size, show))] },
  };
}
