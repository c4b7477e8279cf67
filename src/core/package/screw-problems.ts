/** A screw of the wrong length, or one that goes into wood of unknown depth, whatever kind of fixing it is for. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Show } from '../layout/show';
import { missedLimit } from '../limit-text';
import type { Problem } from '../problem';
import { showingOf } from '../units';
import { fixingScrews } from './fixing-screws';
import { wrongLength, type ScrewLimits } from './screws';
import { screwWords } from './screw-words';

/** Nothing where the job does not say how long its screws are. */
export function screwProblems(job: Job, layout: Layout, show: Show): Problem[] {
  const { screw } = job.package.fixing;
  if (screw === undefined) return [];
  const limits = fixingScrews(job, layout, []);
  const wrong = wrongLength(screw, limits);
  const at = 'package.fixing.screw';
  if (wrong === 'not known') {
    return [
      {
        code: 'screw-depth-unknown',
        severity: 'note',
        at,
        message: `Whether a screw of ${show.limit(screw)} is too long can’t be told. ${screwWords('It', limits, show)}`,
        value: show.limit(screw),
        remedy: `measure ${limits.passes ?? limits.into}`,
      },
    ];
  }
  return wrong ? [wrongOf(job, screw, wrong, limits)] : [];
}

/** A point that comes out in front hurts hands and pictures. */
function wrongOf(
  job: Job,
  screw: number,
  wrong: 'too long' | 'too short',
  { into, passes, longest = 0, shortest }: ScrewLimits,
): Problem {
  const showing = showingOf(job);
  const isLong = wrong === 'too long';
  const { value, limit } = isLong
    ? missedLimit(screw, longest, 'most', showing)
    : missedLimit(screw, shortest, 'least', showing);
  const whole = passes === undefined ? into : `${into}, through ${passes}`;
  const shared = { severity: 'warning', at: 'package.fixing.screw', value, limit } as const;
  if (!isLong) {
    return {
      ...shared,
      code: 'screw-too-short',
      message: `A screw of ${value} is too short to hold in ${whole}; take one of ${limit} or longer.`,
      remedy: `a screw of ${limit} or longer`,
    };
  }
  const none = longest < shortest;
  return {
    ...shared,
    code: 'screw-too-long',
    message: `A screw of ${value} is too long for ${whole}: its point comes out in front, or near it. ${none ? 'None that is short enough would hold there' : `Take one of ${limit} or shorter`}.`,
    remedy: none ? 'another way of fixing' : `a screw of ${limit} or shorter`,
  };
}
