/** What stands out behind the frame, and how it is held, in words. */
import type { Job } from '../job/job';
import type { Show } from '../layout/show';
import { MM_PER_INCH } from '../units';
import type { ClipChoice, ClipCount } from './clips';
import { SLACK } from './range';
import { screwWords } from './screw-words';
import { seenFromBeside, type SideView } from './side-view';
import type { StandOut } from './stand-out';

/** Where the eye of somebody is who walks along the wall, mm from it. */
const EYE = { inch: 24 * MM_PER_INCH, metric: 600 };

export function standOutWords(job: Job, found: StandOut, show: Show): string[] {
  return [
    ...depthWords(found, show),
    ...(found.side ? [sideWords(job, found.side, show)] : []),
    ...(found.standOut ? [clipWords(found.standOut.nominal, found.clips, show)] : []),
    countWords(found.count, show),
    screwWords('A clip’s screw', found.intoFrame, show),
    ...(found.intoBar ? [screwWords('One', found.intoBar, show)] : []),
    ...(job.frame.mouldingDepth === undefined || job.frame.rabbetDepth === undefined
      ? []
      : [
          `The moulding is ${show.limit(job.frame.mouldingDepth)} deep in all, but what lies in front of the rabbet’s side depends on its profile: a longer screw only where you have measured the wood.`,
        ]),
  ];
}

export function depthWords({ contents, standOut }: StandOut, show: Show): string[] {
  if (!standOut) {
    return [
      `All that goes into the rabbet is ${show.limit(contents.nominal)} deep; a rabbet of so much hides it, and in one that is shallower it stands out by the difference.`,
    ];
  }
  const { least, nominal, greatest } = standOut;
  const range = greatest - least > SLACK ? ` (${show.fine(least)} to ${show.fine(greatest)})` : '';
  if (nominal > SLACK) {
    return [
      `It is ${show.limit(contents.nominal)} deep and stands out ${show.limit(nominal)}${range} behind the frame; a rabbet ${show.limit(contents.nominal)} deep would hide it.`,
    ];
  }
  if (nominal > -SLACK) return ['It ends level with the back of the frame.'];
  return [
    `It ends ${show.limit(-nominal)} within the rabbet: flat clips hold it with so much packing, or points without.`,
  ];
}

function sideWords({ units }: Job, side: SideView, show: Show): string {
  const { angleDegrees, inset, wallGap, lacking } = side;
  const angle = `${Math.round(angleDegrees)}°`;
  const wall =
    lacking > SLACK
      ? `It touches the wall before the frame does: bumpers ${show.limit(show.stepUp(lacking))} ${lacking < wallGap - SLACK ? 'thicker' : 'thick'} at the corners keep the frame off it.`
      : `With the frame ${show.limit(wallGap)} off the wall it does not touch that.`;
  const eye = EYE[units === 'in' ? 'inch' : 'metric'];
  const beside = seenFromBeside(side, eye);
  return `Its side lies ${show.limit(inset)} inside the moulding’s outer edge and shows to whoever looks along the wall at less than ${angle} to it: with the eye ${show.limit(eye)} from the wall, from ${show.length(beside)} beside the frame on. ${wall} Where that would be seen, build up the back of the frame.`;
}

/** @param standOut negative where the canvas ends within the rabbet, which is packed from the clips on. */
export function clipWords(standOut: number, choice: ClipChoice | undefined, show: Show): string {
  const wanted = show.limit(Math.max(0, standOut));
  if (!choice) return `There is no offset clip on the shelf; one of ${wanted} step is wanted.`;
  const { clip, over } = choice;
  if (over < -SLACK) {
    return `No offset clip on the shelf steps far enough: the greatest is ${show.limit(clip.step)}, and ${wanted} is wanted. Get larger ones, or build up the back of the frame by ${show.limit(show.stepUp(-over))}.`;
  }
  const gap = clip.step - standOut;
  const above = over > SLACK ? ', the next above' : '';
  const pack =
    gap > SLACK
      ? `; pack ${show.limit(gap)} between each and the stretcher or back that it holds, not under its foot on the frame, so that nothing moves`
      : '';
  return `Offset clips of ${show.limit(clip.step)} step (${clip.name})${above}${pack}.`;
}

export function countWords({ total, each, apart }: ClipCount, show: Show): string {
  const { top: across, left: up } = each;
  if (across === 1 && up === 1) return `${total} clips, one in the middle of each side.`;
  const place = (count: number, step: number) =>
    count === 1
      ? 'one in the middle'
      : `${count}, the first ${show.length(step / 2)} from the corner, then every ${show.length(step)}`;
  return `${total} clips: on the upper and the lower side ${place(across, apart.across)}; on the left and the right ${place(up, apart.up)}.`;
}
