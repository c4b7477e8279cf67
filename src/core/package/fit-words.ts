/** The fit of a package in words. */
import type { Job } from '../job/job';
import type { Show } from '../layout/show';
import type { Fit, Free, GrooveFit, Room } from './fit';
import { SLACK, type Range } from './range';

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
  return [`${verdictWords(verdict, room, free, show)} ${freeWords(room, needs, free, show)}`];
}

function verdictWords(verdict: Fit['verdict'], room: Room, { worst, nominal }: Free, show: Show): string {
  if (verdict === 'fits') return `It goes into ${room.name} even with all at its thickest.`;
  if (verdict === 'may not fit') {
    return `It goes into ${room.name} as all is named, but at its thickest it is ${show.limit(-worst)} too deep and would squeeze the picture.`;
  }
  if (verdict === 'held behind') {
    return nominal >= 0
      ? `It may stand out up to ${show.limit(-worst)} behind the frame, where clips hold it.`
      : `It stands out ${show.limit(-nominal)} behind the frame, where clips hold it.`;
  }
  return `It does not go into ${room.name}: it is ${show.limit(-nominal)} too deep as all is named, ${show.limit(-worst)} at its thickest. Forced in, it would squeeze the picture by as much.`;
}

/** The sum: depth less stack. */
function freeWords({ depth, kind }: Room, needs: Range, { best, nominal, worst }: Free, show: Show): string {
  const range = best - worst > SLACK ? ` (best ${show.limit(best)}, worst ${show.limit(worst)})` : '';
  const from = kind === 'groove' ? 'From the lip to the groove' : 'Rabbet';
  return `${from} ${show.limit(depth)} − ${show.limit(needs.nominal)} leaves ${show.limit(nominal)}${range}.`;
}

/** Of one groove. */
export function grooveWords({ room, free, verdict }: GrooveFit, show: Show): string {
  const place = `${show.limit(room.depth)} behind the lip`;
  if (verdict === 'fits') {
    return `${place}: all goes in front of the back even at its thickest; fill ${show.limit(free.worst)} to ${show.limit(free.best)} with card.`;
  }
  if (verdict === 'may not fit') {
    return `${place}: as named all goes in with ${show.limit(free.nominal)} to spare, at its thickest it is ${show.limit(-free.worst)} too deep; try it with what you have.`;
  }
  return `${place}: it is ${show.limit(-free.nominal)} too deep as named, ${show.limit(-free.worst)} at its thickest.`;
}
