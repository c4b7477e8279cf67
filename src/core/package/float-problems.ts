/** Float frames: nothing before the canvas, and deep enough inside. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Show } from '../layout/show';
import type { Problem } from '../problem';
import { floatOf, type FloatFit } from './float';
import { gapOffSentence } from './float-words';
import { SLACK } from './range';

/** Paper, mats and sizes that do not go with a float frame the layout tells of. */
export function floatProblems(job: Job, layout: Layout, show: Show): Problem[] {
  const found = floatOf(job, layout, []);
  if (!found?.isCanvas) return [];
  return [...faceCovered(job), ...gapTooWide(found, show), ...tooShallow(found, show)];
}

function faceCovered({ package: { glazing, spacer } }: Job): Problem[] {
  const keys = [...(glazing ? ['glazing'] : []), ...(spacer ? ['spacer'] : [])];
  const [first] = keys;
  if (first === undefined) return [];
  return [
    {
      code: 'float-face-covered',
      severity: 'warning',
      at: `package.${first}`,
      message: `The job has ${keys.join(' and ')} before the canvas, but a float frame holds nothing in front, and nothing may be laid on its face.`,
      remedy: 'leave out what lies before the canvas',
      fix: { label: 'Leave it out', edits: keys.map((key) => ({ at: `package.${key}`, value: undefined })) },
    },
  ];
}

/** That it is another at all, the layout tells. */
function gapTooWide(found: FloatFit, show: Show): Problem[] {
  const words = gapOffSentence(found, show);
  if (words === undefined || !found.isTooWide) return [];
  const { gap, wantedGap, canvas } = found;
  return [
    {
      code: 'float-gap-too-wide',
      severity: 'warning',
      at: 'frame.size',
      message: `${words} A float frame of ${show.size(canvas)} has it; or say the gap that you want in the job.`,
      value: show.limit(Math.max(gap.across, gap.up)),
      limit: show.limit(2 * wantedGap),
      remedy: `a float frame of ${show.size(canvas)}`,
    },
  ];
}

function tooShallow({ lies, neededDepth }: FloatFit, show: Show): Problem[] {
  if (!lies || lies.short <= SLACK) return [];
  const proud = lies.words === 'proud' ? `, ${show.limit(-lies.face.nominal)} proud of the frame` : '';
  return [
    {
      code: 'canvas-stands-proud',
      severity: 'warning',
      at: 'frame.float.insideDepth',
      message: `The face of the canvas comes to lie ${show.limit(lies.short)} further forward than wanted${proud}: the frame is not deep enough inside. Take one ${show.limit(neededDepth)} deep from its ledge to its front.`,
      value: show.limit(lies.short),
      limit: show.limit(neededDepth),
      remedy: `a float frame ${show.limit(neededDepth)} deep inside`,
    },
  ];
}
