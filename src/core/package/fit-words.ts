/** The fit of a package in words. */
import type { Job } from '../job/job';
import type { Show } from '../layout/show';
import type { Fit } from './fit';
import type { GrooveFit } from './groove-fit';
import { SLACK, type Range } from './range';
import { verdictOf, type Free, type Room } from './room';
import { capital } from '../phrases';

export function fitWords(job: Job, fit: Fit, show: Show): string[] {
  const { needs, room, free, verdict } = fit;
  if (verdict === 'float frame') return ['In a float frame a canvas lies on a ledge; nothing is stacked in a rabbet.'];
  if (!room || !free) {
    if (job.package.fixing.kind === 'offset clips') {
      return ['How deep the rabbet is, is not known. What is deeper stands out behind, where clips hold it.'];
    }
    return [
      `How deep the rabbet is, is not known. It has to be ${show.limit(needs.nominal)} deep as all is named, and ${show.limit(needs.greatest)} with all at its thickest: look for one of ${show.limit(show.stepUp(needs.greatest))} or more.`,
    ];
  }
  const sum = freeWords(room, needs, free, show);
  if (room.kind === 'rabbet') return [`${verdictWords(verdict, room, free, show)} ${sum}`];
  return [`${verdictWords(verdictOf(free), room, free, show)} ${sum}`, `${capital(behindWords(fit.behind, show))}.`];
}

function verdictWords(verdict: Fit['verdict'], room: Room, { worst, nominal }: Free, show: Show): string {
  const inGroove = room.kind === 'groove';
  const goes = inGroove ? `What lies before the back goes in front of ${room.name}` : `It goes into ${room.name}`;
  if (verdict === 'fits') return `${goes} even with all at its thickest.`;
  if (verdict === 'may not fit') {
    return `${goes} as all is named, but at its thickest it is ${show.limit(-worst)} too deep and would squeeze the picture.`;
  }
  if (verdict === 'held behind') {
    return nominal >= 0
      ? `It may stand out up to ${show.limit(-worst)} behind the frame, where clips hold it.`
      : `It stands out ${show.limit(-nominal)} behind the frame, where clips hold it.`;
  }
  const fails = inGroove
    ? `What lies before the back does not go in front of ${room.name}`
    : `It does not go into ${room.name}`;
  return `${fails}: it is ${show.limit(-nominal)} too deep as all is named, ${show.limit(-worst)} at its thickest. Forced in, it would squeeze the picture by as much.`;
}

/** The sum: depth less stack. */
function freeWords({ depth, kind }: Room, needs: Range, { best, nominal, worst }: Free, show: Show): string {
  const range = best - worst > SLACK ? ` (best ${show.limit(best)}, worst ${show.limit(worst)})` : '';
  const from = kind === 'groove' ? 'From the lip to the groove' : 'Rabbet';
  return `${from} ${show.limit(depth)} − ${show.limit(needs.nominal)} leaves ${show.limit(nominal)}${range}.`;
}

/** Of one groove: what goes before the back, and what holds that from behind. */
export function grooveWords({ room, free, behind }: GrooveFit, show: Show): string {
  return `${show.limit(room.depth)} behind the lip: ${beforeWords(free, show)}; ${behindWords(behind, show)}.`;
}

function beforeWords(free: Free, show: Show): string {
  const verdict = verdictOf(free);
  if (verdict === 'fits') {
    return `all goes in front of the back even at its thickest (fill ${between(free, show)} with card)`;
  }
  if (verdict === 'may not fit') {
    return `as named all goes in with ${show.limit(free.nominal)} to spare, at its thickest it is ${show.limit(-free.worst)} too deep (try it with what you have)`;
  }
  const worst = free.nominal - free.worst > SLACK ? ` as named, ${show.limit(-free.worst)} at its thickest` : '';
  return `it is ${show.limit(-free.nominal)} too deep${worst}`;
}

/** What is left of the rabbet behind a frame's own back, in words that begin small and have no full stop. */
export function behindWords(behind: Free | undefined, show: Show): string {
  if (!behind) {
    return 'the back has to end before the frame does: measure the back’s thickness and the rabbet’s depth';
  }
  const { nominal, worst } = behind;
  if (worst > SLACK) return `behind the back ${show.limit(worst)} or more of the frame is left to hold it`;
  if (nominal > SLACK)
    return `behind the back ${show.limit(nominal)} of the frame is left as named, at its thickest none`;
  if (nominal > -SLACK) return 'the back would end level with the frame, with no wood behind it to hold it';
  return `the back would end ${show.limit(-nominal)} behind the frame, with no wood behind it to hold it`;
}

/** `1/4 in`, `0.368 in to 0.400 in`. */
export function between({ best, worst }: Free, show: Show): string {
  const least = show.limit(Math.max(0, worst));
  return best - worst > SLACK ? `${least} to ${show.limit(best)}` : least;
}
