/** Cuts that lie further in than the cutter's guide reaches, and are made by marks. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { showFor, type Show } from '../layout/show';
import type { Problem } from '../problem';
import { mirrorSide, planCuts } from './plan-cuts';
import type { LayerPlan } from './plan';

/** Windows told by name; more are counted. */
const MOST_TOLD = 6;

/** One warning for each layer, as it is cut from the back. */
export function beyondReach(job: Job, layout: Layout): Problem[] {
  const { cutter } = job.cutting;
  if (cutter?.reach === undefined) return [];
  const { reach, name } = cutter;
  const show = showFor(job);
  return planCuts(job, layout).layers.flatMap((layer): Problem[] => {
    const found = windowsOf(layer);
    const greatest = Math.max(...found.flatMap(({ cuts }) => cuts.map(({ needed }) => needed)));
    const count = found.reduce((sum, { cuts }) => sum + cuts.length, 0);
    if (count === 0) return [];
    const reached = show.limit(reach);
    const more = found.length > MOST_TOLD ? ` and ${found.length - MOST_TOLD} more` : '';
    const which = `${found
      .slice(0, MOST_TOLD)
      .map((window) => windowWords(window, show))
      .join('; ')}${more}`;
    return [
      {
        code: 'beyond-reach',
        severity: 'warning',
        at: 'cutting.cutter.reach',
        message: `Layer ${layer.number}: the guide of ${name} reaches ${reached}, which is too short for ${count === 1 ? 'one cut' : `${count} cuts`}: ${which} (as it hangs). ${count === 1 ? 'It is' : 'They are'} made by marks; or use a guide of ${show.limit(greatest)}.`,
        value: show.missing(greatest, reach),
        limit: reached,
        remedy: `cut them by marks, or with a guide that reaches ${show.limit(greatest)}`,
      },
    ];
  });
}

interface Found {
  readonly name: string;
  readonly cuts: readonly { readonly side: string; readonly needed: number }[];
}

function windowsOf({ windows }: LayerPlan): Found[] {
  return windows.flatMap(({ name, cuts }) => {
    const far = cuts.back.flatMap(({ side, beyondReach: needed }) =>
      side === undefined || needed === undefined ? [] : [{ side: mirrorSide(side), needed }],
    );
    return far.length === 0 ? [] : [{ name, cuts: far }];
  });
}

function windowWords({ name, cuts }: Found, show: Show): string {
  return `${name} ${cuts.map(({ side, needed }) => `${side} ${show.limit(needed)}`).join(', ')}`;
}
