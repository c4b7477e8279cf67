/** Pictures that may touch their glazing, as far as the job says how thick all is. */
import type { Size } from '../geometry/box';
import type { Problem } from '../problem';
import { MM_PER_INCH } from '../units';
import { isLarger, leastAir, TWO_BOARDS } from './air';
import { FOUR_PLY } from './board-demands';
import { capital, isPainting, leastBy, type Held, type Subject } from './subject';

/** Common practice, no source, mm: unasked, little air is only told of sheets larger than this. */
const LARGE: Size = { width: 16 * MM_PER_INCH, height: 20 * MM_PER_INCH };

export function airProblems(subject: Subject): Problem[] {
  const { job, held } = subject;
  if (!job.package.glazing) return [];
  const worst = leastBy(held, (one) => leastAir(job, one));
  if (worst && leastAir(job, worst) < nearest(worst)) return [touching(worst, subject)];
  const large = held.find(({ picture }) => !isPainting(picture) && isLarger(picture.sheet, LARGE));
  const little = large && !job.package.spacer && leastAir(job, large) < TWO_BOARDS - 1e-9;
  return little ? [littleAir(large, subject)] : [];
}

/** What a thin sheet that floats takes of one board's depth is not told unasked: half a millimetre with its hinges. */
function nearest({ floats }: Held): number {
  return FOUR_PLY - (floats ? 0.5 : 1e-9);
}

function touching(held: Held, { job, show }: Subject): Problem {
  const air = Math.max(0, leastAir(job, held));
  return {
    code: 'glazing-touches-picture',
    severity: 'warning',
    at: 'package.spacer',
    message: `${capital(held.name)} has ${show.fine(air)} of air in front of it and may touch the glazing, to which it sticks and where it grows mould; put in a spacer, or a thicker mat, so that ${show.limit(FOUR_PLY)} is left (FACTS, Standard Guide, cl. 10.01, as quoted).`,
    value: show.fine(air),
    limit: show.limit(FOUR_PLY),
    remedy: 'a spacer, or a thicker mat',
    fix: spacer(held, FOUR_PLY, { job, show }),
  };
}

function littleAir(held: Held, { job, show }: Subject): Problem {
  const air = leastAir(job, held);
  return {
    code: 'air-little',
    severity: 'note',
    at: 'package.spacer',
    message: `${capital(held.name)} is large and bows in damp air, and there are only ${show.fine(air)} between it and the glazing; two mats or ${show.limit(TWO_BOARDS)} are better (common practice, no source).`,
    value: show.fine(air),
    limit: show.limit(TWO_BOARDS),
    remedy: 'a second mat, or a spacer',
    fix: spacer(held, TWO_BOARDS, { job, show }),
  };
}

function spacer(held: Held, least: number, { job, show }: Pick<Subject, 'job' | 'show'>): Problem['fix'] {
  const present = job.package.spacer?.thickness.least ?? 0;
  const thickness = show.exact(show.stepUp(present + least - leastAir(job, held)));
  return { label: `Plan with a spacer of ${thickness}`, edits: [{ at: 'package.spacer', value: { thickness } }] };
}
