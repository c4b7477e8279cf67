/** Canvases and panels: what stands out behind, and what was not said. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Show } from '../layout/show';
import type { Problem } from '../problem';
import { carriesItself, lyingPictures } from './pictures';
import { SLACK } from './range';
import type { Stack } from './stack';
import { standOutOf } from './stand-out';

export function canvasProblems(job: Job, layout: Layout, stack: Stack, show: Show): Problem[] {
  const unsaid = lyingPictures(job, layout).find(({ picture }) => carriesItself(picture) && !picture.thicknessSaid);
  return [...(unsaid ? [depthTaken(job, unsaid.index, show)] : []), ...standsOut(job, layout, stack, show)];
}

/** All of the rest turns on it. */
function depthTaken({ pictures }: Job, index: number, show: Show): Problem {
  const { kind = 'other', thickness = 0 } = pictures[index] ?? {};
  const panel = kind === 'painting on panel';
  const taken = show.limit(thickness);
  return {
    code: 'canvas-depth-taken',
    severity: 'note',
    at: `pictures[${index}].thickness`,
    message: panel
      ? `How thick the panel is, is not said; ${taken} is taken. Measure it.`
      : `How deep the canvas is, is not said; ${taken} is taken. The common depths are ${show.limit(19.05)} and ${show.limit(38.1)}, and bars often measure less than their name. Measure it.`,
    value: taken,
    remedy: 'say its thickness',
  };
}

function standsOut(job: Job, layout: Layout, stack: Stack, show: Show): Problem[] {
  const found = standOutOf(job, layout, stack, { shelf: [], wallGap: job.hanging.bumpers });
  if (!found) return [];
  const { standOut, contents } = found;
  return [
    ...(standOut && standOut.nominal > SLACK
      ? [
          {
            code: 'stands-out-behind',
            severity: 'note' as const,
            at: 'frame.rabbetDepth',
            message: `What lies in the rabbet is ${show.limit(contents.nominal)} deep and stands out ${show.limit(standOut.nominal)} behind the frame: it is held by offset clips of that step, and its sides can be seen from beside.`,
            value: show.limit(standOut.nominal),
            limit: show.limit(job.frame.rabbetDepth ?? 0),
            remedy: `offset clips of ${show.limit(standOut.nominal)} step, or a rabbet ${show.limit(contents.nominal)} deep`,
          },
          ...(job.package.dustCover ? [paperOver(standOut.nominal, show)] : []),
        ]
      : []),
  ];
}

/** Only where the job itself asks for it. */
function paperOver(standOut: number, show: Show): Problem {
  const value = show.limit(standOut);
  return {
    code: 'dust-cover-over-stand-out',
    severity: 'warning',
    at: 'package.dustCover',
    message: `The job closes the back with paper, but what lies in the rabbet stands out ${value} behind the frame, and no paper lies flat over it. Leave the dust cover out, or build up the back of the frame by ${value}.`,
    value,
    remedy: 'no dust cover',
    fix: { label: 'Leave it out', edits: [{ at: 'package.dustCover', value: undefined }] },
  };
}
