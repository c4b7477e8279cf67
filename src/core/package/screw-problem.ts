/** A screw of the wrong length, as a problem. */
import type { Show } from '../layout/show';
import type { Problem } from '../problem';
import type { ScrewLimits } from './screws';

/** A point that comes out in front hurts hands and pictures. */
export function screwWrong(
  screw: number,
  wrong: 'too long' | 'too short',
  { into, longest = 0, shortest }: ScrewLimits,
  show: Show,
): Problem {
  const limit = show.limit(wrong === 'too long' ? show.stepDown(longest) : show.stepUp(shortest));
  return {
    code: wrong === 'too long' ? 'screw-too-long' : 'screw-too-short',
    severity: 'warning',
    at: 'package.fixing.screw',
    message:
      wrong === 'too long'
        ? `A screw of ${show.limit(screw)} is too long for ${into}: its point comes out in front, or near it. Take one of ${limit} or shorter.`
        : `A screw of ${show.limit(screw)} is too short to hold in ${into}; take one of ${limit} or longer.`,
    value: show.limit(screw),
    limit,
    remedy: `a screw of ${limit} or ${wrong === 'too long' ? 'shorter' : 'longer'}`,
  };
}
