/** Borders outside the range that the job itself asks for. */
import { allSides, type Side } from '../../geometry/box';
import type { Job } from '../../job/job';
import type { Fix, Problem } from '../../problem';
import type { PlacedLayout } from '../layout';
import { rangeMisses, type Miss } from '../range-misses';
import type { Show } from '../show';
import { alike, bordersAt } from './slack';

/** Only an end of the range that is written is held against the borders; sides with the same to say are told together. */
export function bordersOutOfRange(job: Job, layout: PlacedLayout, show: Show): Problem[] {
  const { measured, range } = job.borders;
  const borders = measured === 'as seen' ? layout.borders.seen : layout.borders.cut;
  const asked = range.isUsual ? { ...range, least: -Infinity } : range;
  const misses = rangeMisses(borders, asked);
  return alike(misses, ({ way, border, limit }) => `${way} ${show.missing(border, limit)}`).map((group) =>
    outOfRange(job, layout, group, misses, show),
  );
}

function outOfRange(
  job: Job,
  layout: PlacedLayout,
  group: readonly [Miss, ...Miss[]],
  all: readonly Miss[],
  show: Show,
): Problem {
  const [{ way, border, limit, by }] = group;
  const found = show.missing(border, limit);
  const wanted = `${show.limit(limit)} or ${way === 'narrow' ? 'more' : 'less'}`;
  const fix = job.frame.blank ? centre(job, layout, all) : give(job, all, show);
  const remedy = job.frame.blank
    ? `another frame, or borders shared otherwise, so that each is ${wanted}`
    : `a border of ${wanted}`;
  return {
    code: 'border-out-of-range',
    severity: 'warning',
    at: 'borders',
    message: `Measured ${job.borders.measured}, ${bordersAt(group.map(({ side }) => side))} ${group.length > 1 ? 'are' : 'is'} ${found}, ${show.length(by)} too ${way} for the range you asked for: ${wanted}.`,
    value: found,
    limit: show.limit(limit),
    remedy,
    ...(fix ? { fix } : {}),
  };
}

/** In a given frame weighting alone may be what takes a border out of the range. */
function centre({ borders }: Job, layout: PlacedLayout, misses: readonly Miss[]): Fix | undefined {
  const { rule, range, measured } = borders;
  const heights = misses.every(({ side }) => side === 'top' || side === 'bottom');
  const { top, bottom } = measured === 'as seen' ? layout.borders.seen : layout.borders.cut;
  const middle = allSides((top + bottom) / 2);
  if (rule === 'centred' || rule === 'by-hand' || !heights || rangeMisses(middle, range).length > 0) return undefined;
  return { label: 'Centre it instead', edits: [{ at: 'borders.rule', value: 'centred' }] };
}

/** In a frame made to fit each border can be given; rules that work it out from another are left to the user. */
function give({ borders }: Job, misses: readonly Miss[], show: Show): Fix | undefined {
  const given = new Map<string, string>();
  for (const { side, limit } of misses) {
    const key = keyOf(borders.rule, side);
    const value = show.exact(limit);
    // One key for several sides can't keep to both ends of the range.
    if (key === undefined || (given.get(key) ?? value) !== value) return undefined;
    given.set(key, value);
  }
  return { label: 'Keep to the range', edits: [...given].map(([key, value]) => ({ at: `borders.${key}`, value })) };
}

/** The key that says how wide a border is, under rules where it has one and another border does not hang on it. */
function keyOf(rule: Job['borders']['rule'], side: Side): string | undefined {
  if (rule === 'by-hand') return side;
  if (rule === 'equal') return 'all';
  if (rule !== 'centred') return undefined;
  return side === 'left' || side === 'right' ? 'sides' : 'top';
}
