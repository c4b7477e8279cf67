/** What a picture that goes into its frame without a mat must keep to. */
import { goesBare, isPaper } from '../../job/bare-kinds';
import type { Job } from '../../job/job';
import { bySeverity, type Problem } from '../../problem';
import type { BarePicture } from '../bare-picture';
import { framePath } from '../frame-path';
import type { FrameSizes, PlacedLayout } from '../layout';
import { showFor, type Show } from '../show';
import { bareFit } from './bare-fit';
import { picturesLeftOut } from './notes';
import { titled } from './slack';

export function bareProblems(job: Job, layout: PlacedLayout, bare: BarePicture): Problem[] {
  const show = showFor(job);
  return bySeverity([
    ...paperInFloatFrame(job, bare),
    ...bareFit(layout, bare, show),
    ...picturesLeftOut(job, layout),
    ...madeToOrder(job, layout, show),
  ]);
}

/** A lip that leaves nothing to look through. */
export function nothingSeen(job: Job, { blank, lip }: FrameSizes): Problem {
  const show = showFor(job);
  return {
    code: 'window-vanishes',
    severity: 'error',
    at: 'frame.lip',
    message: `Nothing is left to see of the picture: a lip of ${show.length(lip)} on every side covers a frame size of ${show.size(blank)}. Take a narrower lip or a larger frame.`,
    value: show.length(lip),
    remedy: 'a narrower lip, or a larger frame',
  };
}

/** In a float frame nothing lies over the face or holds it at the front. Common practice, no source. */
function paperInFloatFrame(job: Job, { picture, index }: BarePicture): Problem[] {
  const { kind, title } = picture;
  if (job.frame.build !== 'float' || goesBare(kind)) return [];
  const name = `Picture ${titled(title) || `${index + 1} `}`;
  if (!isPaper(kind)) {
    return [
      {
        code: 'float-needs-canvas',
        severity: 'warning',
        at: `pictures[${index}].kind`,
        message: `A float frame is for canvas or panel, which is fixed from behind with nothing over its face. ${name}is said to be "${kind}": say its kind if it is stretched or on a panel, or take another frame.`,
        value: kind,
        remedy: 'its kind, if it is on canvas or panel; else a frame with a lip',
      },
    ];
  }
  return [
    {
      code: 'float-needs-canvas',
      severity: 'error',
      at: 'frame.build',
      message: `${name}is on paper (${kind}), and a float frame is for canvas or panel: nothing would lie over its face or hold it at the front. Take a frame with a lip, and a mat.`,
      value: kind,
      remedy: 'a frame with a lip, and a mat',
      fix: { label: 'Take a frame with a lip', edits: [{ at: 'frame.build', value: undefined }] },
    },
  ];
}

/** A larger one is of no use, as it would be for a mat. */
function madeToOrder(job: Job, { frame: { blank }, sizeName }: PlacedLayout, show: Show): Problem[] {
  if (job.frame.blank || sizeName !== undefined) return [];
  return [
    {
      code: 'size-is-custom',
      severity: 'note',
      at: framePath(job),
      message: `${show.size(blank)} is not sold ready-made; without a mat the frame has to be of the picture's own size, so it is made to order.`,
    },
  ];
}
