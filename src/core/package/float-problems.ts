/** Float frames: for canvases alone, with nothing before their face, and deep enough. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Show } from '../layout/show';
import type { Edit, Problem } from '../problem';
import { floatOf, type FloatFit } from './float';
import { calledOf } from './pictures';
import { SLACK } from './range';
import { screwWrong } from './screw-problem';
import { wrongLength } from './screws';

export function floatProblems(job: Job, layout: Layout, show: Show): Problem[] {
  const found = floatOf(job, layout, []);
  if (!found) return [];
  if (!found.isCanvas) return [onPaper(job, found)];
  const { screw } = job.package.fixing;
  const wrong = screw === undefined ? undefined : wrongLength(screw, found.screws);
  return [
    ...faceCovered(job),
    ...gapTooSmall(job, found, show),
    ...tooShallow(found, show),
    ...(screw !== undefined && wrong ? [screwWrong(screw, wrong, found.screws, show)] : []),
  ];
}

function onPaper({ pictures }: Job, { index }: FloatFit): Problem {
  const picture = pictures[index];
  const name = picture ? calledOf({ picture, index }) : 'the picture';
  return {
    code: 'paper-in-float-frame',
    severity: 'warning',
    at: 'frame.build',
    message: `A float frame is for a canvas or a panel; ${name} must not go into one: it is open in front, and nothing that would protect it may be laid on its face side. Take a frame with a rabbet, or say that it is a canvas.`,
    remedy: 'a frame with a rabbet',
    fix: { label: 'Take an open frame', edits: [{ at: 'frame.build', value: 'open back' }] },
  };
}

function faceCovered({ package: held, layers }: Job): Problem[] {
  const before = [
    ...(held.glazing ? ['glazing'] : []),
    ...(held.spacer ? ['a spacer'] : []),
    ...(layers.length > 0 ? ['a mat'] : []),
  ];
  if (before.length === 0) return [];
  const edits: Edit[] = [
    ...(held.glazing ? [{ at: 'package.glazing', value: undefined }] : []),
    ...(held.spacer ? [{ at: 'package.spacer', value: undefined }] : []),
    ...(layers.length > 0 ? [{ at: 'mat.layers', value: [] }] : []),
  ];
  return [
    {
      code: 'float-face-covered',
      severity: 'warning',
      at: 'package',
      message: `The job lays ${before.join(' and ')} before the canvas, but a float frame holds nothing in front: nothing may be laid on its face side.`,
      remedy: 'leave out what lies before the canvas',
      fix: { label: 'Leave it out', edits },
    },
  ];
}

function gapTooSmall(job: Job, { gap, canvas, inside }: FloatFit, show: Show): Problem[] {
  const least = Math.min(gap.across, gap.up);
  if (least > SLACK) return [];
  return [
    {
      code: 'canvas-without-gap',
      severity: 'warning',
      at: 'frame',
      message: `The canvas is ${show.size(canvas)} and the frame ${show.size(inside)} inside: it ${least < -SLACK ? 'does not go in' : 'touches the frame, and no gap is seen'}. Take a frame of the canvas’s own size, with the gap beside it.`,
      value: show.limit(least),
      limit: show.limit(job.frame.float.gap),
      remedy: `a float frame for ${show.size(canvas)}`,
    },
  ];
}

function tooShallow({ lies, neededDepth }: FloatFit, show: Show): Problem[] {
  if (!lies || lies.short <= SLACK) return [];
  return [
    {
      code: 'canvas-stands-proud',
      severity: 'warning',
      at: 'frame.float.insideDepth',
      message: `The face of the canvas comes to lie ${show.limit(lies.short)} further forward than wanted${lies.words === 'proud' ? `, ${show.limit(-lies.face.nominal)} proud of the frame` : ''}: the frame is not deep enough inside. Take one ${show.limit(neededDepth)} deep from its ledge to its front.`,
      value: show.limit(lies.short),
      limit: show.limit(neededDepth),
      remedy: `a float frame ${show.limit(neededDepth)} deep inside`,
    },
  ];
}
