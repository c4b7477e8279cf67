/** How long a screw may be, in words. */
import type { Show } from '../layout/show';
import { SLACK } from './range';
import { MARGIN, type ScrewLimits } from './screws';

/** @param what a sentence's beginning: `A clip’s screw`. */
export function screwWords(what: string, limits: ScrewLimits, show: Show): string {
  const { into, passes, longest, shortest } = limits;
  if (longest === undefined) {
    return `${what} goes into ${into}, whose depth is not known: measure it, and take one at least ${show.limit(MARGIN)} shorter.`;
  }
  if (longest < shortest - SLACK) {
    return `${what} that goes into ${into} would have to be ${show.limit(show.stepDown(Math.max(0, longest)))} or shorter, too short to hold: put none there.`;
  }
  const [least, most] = [show.stepUp(shortest), show.stepDown(longest)].map(show.limit);
  const range = least === most ? most : `${least} to ${most}`;
  if (passes !== undefined) {
    return `${what} goes through ${passes}, whose thickness is not known, into ${into}: measure ${passes}, and take one that is ${range} longer than that, never more.`;
  }
  return `${what} that goes into ${into}: ${range} long, never longer${stockWords(limits, show)}.`;
}

/** What of the shelf will do, if it has screws at all. */
function stockWords({ chosen, atHand }: ScrewLimits, show: Show): string {
  if (chosen) return `; on the shelf ${chosen.name}, ${show.limit(chosen.length)}`;
  if (atHand.length === 0) return '';
  return `; none on the shelf is: it has ${atHand.map(show.limit).join(', ')}`;
}
