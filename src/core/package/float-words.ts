/** A canvas in a float frame, in words. */
import type { Job } from '../job/job';
import type { Show } from '../layout/show';
import type { FloatFit, FloatLie } from './float';
import { SLACK } from './range';
import { screwWords } from './screw-words';

export function floatWords(job: Job, found: FloatFit, show: Show): string[] {
  if (!found.isCanvas) {
    return ['Art on paper must not go into a float frame: it is open in front, and nothing may be laid on its face.'];
  }
  return [
    gapWords(found, show),
    found.lies ? lieWords(found, found.lies, show) : neededWords(job, found, show),
    `Screw from behind, never from the front. ${screwWords('One', found.screws, show)}`,
    'Nothing is laid on its face: no glazing, no mat.',
  ];
}

function gapWords(found: FloatFit, show: Show): string {
  const { canvas, inside } = found;
  const off = gapOffWords(found, show);
  return `The canvas is ${show.size(canvas)}, the frame ${show.size(inside)} inside: a gap of ${gapText(found, show)}${off === undefined ? '' : `; ${off}`}.`;
}

function gapText({ gap }: FloatFit, show: Show): string {
  return Math.abs(gap.across - gap.up) < SLACK
    ? `${show.limit(gap.across)} on every side`
    : `${show.limit(gap.across)} at the left and the right, ${show.limit(gap.up)} above and below`;
}

/** `1/4 in is wanted, which is 1/2 in less, and more than twice as much does not do`; undefined where it is as wanted. */
function gapOffWords({ gap, wantedGap, gapOff, isTooWide }: FloatFit, show: Show): string | undefined {
  if (gapOff <= SLACK) return undefined;
  const worst = Math.abs(gap.across - wantedGap) >= Math.abs(gap.up - wantedGap) ? gap.across : gap.up;
  const way = worst > wantedGap ? 'less' : 'more';
  const most = isTooWide ? `, and more than twice as much, ${show.limit(2 * wantedGap)}, does not do` : '';
  return `${show.limit(wantedGap)} is wanted, which is ${show.limit(gapOff)} ${way}${most}`;
}

/** That the gap is not the wanted one, as a sentence; undefined where it is. */
export function gapOffSentence(found: FloatFit, show: Show): string | undefined {
  const off = gapOffWords(found, show);
  return off === undefined ? undefined : `The gap round it is ${gapText(found, show)}; ${off}.`;
}

function neededWords(job: Job, { neededDepth }: FloatFit, show: Show): string {
  const { setBack } = job.frame.float;
  const how = setBack > SLACK ? 'so far behind its front' : setBack < -SLACK ? 'so far proud of it' : 'flush';
  return `How deep the frame is inside, is not known. From the ledge to the front it has to be ${show.limit(neededDepth)} or more for the face to lie ${how}.`;
}

function lieWords({ neededDepth }: FloatFit, { packing, face, words, short }: FloatLie, show: Show): string {
  const lies = {
    flush: 'The face lies flush with the front of the frame',
    recessed: `The face lies ${show.limit(face.nominal)} behind the front of the frame`,
    proud: `The face stands ${show.limit(-face.nominal)} proud of the frame`,
  }[words];
  const range =
    face.greatest - face.least > SLACK ? ` (${show.limit(face.least)} to ${show.limit(face.greatest)})` : '';
  if (packing > SLACK) return `${lies}${range}, on packing ${show.limit(packing)} thick on the ledge.`;
  if (short <= SLACK) return `${lies}${range}, straight on the ledge.`;
  return `${lies}${range}, ${show.limit(short)} further forward than wanted: a frame ${show.limit(neededDepth)} deep inside would do.`;
}
