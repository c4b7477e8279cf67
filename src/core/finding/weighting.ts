/** Whether the bottom of a job can be weighted in a frame: which rules still keep every border in range, and how far they may go. */
import type { PerSide } from '../geometry/box';
import type { BorderRule, Borders, Job } from '../job/job';
import { BORDER_RULES } from '../job/written-borders';
import { extentOf } from '../layout/extent';
import { layOut } from '../layout/lay-out';
import { SLACK } from '../layout/limits/slack';
import { rangeMisses } from '../layout/range-misses';
import { solveFor } from '../layout/solve-borders';
import { hiddenIn, type Wish } from './wish';

export interface Weighting {
  /** Rules, with the job's settings for them, that keep every border in range and the bottom no narrower than the top. */
  readonly rules: readonly BorderRule[];
  /**
   * The most by which the bottom may be wider than the top with every border in range, mm. Undefined where it is out of
   * range even without, or where gaps take what is left so that top and bottom are given.
   */
  readonly most?: number;
}

/** @param job in the frame, with its borders as they are shared there. */
export function weightingIn(wish: Wish, job: Job): Weighting {
  if (!wish.root) return { rules: [] };
  const rules = BORDER_RULES.filter((rule) => {
    const borders = rule === 'by-hand' ? undefined : keptBorders({ ...job.borders, rule }, job);
    return borders && borders.bottom >= borders.top - SLACK;
  });
  const most = wish.stretches.up ? undefined : mostIn(wish, job);
  return { rules, ...(most === undefined ? {} : { most }) };
}

/** The borders that result; undefined where the job can't be cut with them, or one is out of range. */
function keptBorders(borders: Borders, job: Job): PerSide | undefined {
  const laid = layOut({ ...job, borders });
  if (!laid.ok) return undefined;
  const { cut, seen } = laid.value.borders;
  const found = borders.measured === 'as seen' ? seen : cut;
  return rangeMisses(found, borders.range).length === 0 ? found : undefined;
}

function mostIn(wish: Wish, job: Job): number | undefined {
  const { least, greatest = Infinity } = job.borders.range;
  const even = topFor(wish, job, 'even');
  // The less at the top, the more at the bottom, until one of them leaves the range.
  const most = Number.isFinite(greatest) ? Math.max(least, topFor(wish, job, greatest)) : least;
  if (most > even + SLACK) return undefined;
  const { top: _t, bottom: _b, ...borders } = job.borders;
  // By hand, so that what is asked of left and right stays as it is.
  const works = (top: number) => keptBorders({ ...borders, rule: 'by-hand', top }, job) !== undefined;
  const top = works(most) ? most : works(even) ? leastThat(works, most, even) : undefined;
  return top === undefined ? undefined : Math.max(0, roomIn(wish, job, top) - 2 * top);
}

/** A sheet that reaches past the frame, or the lip, may stop the weighting sooner than the range does. */
function leastThat(works: (top: number) => boolean, fails: number, holds: number): number {
  let [low, high] = [fails, holds];
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (works(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Halvings that leave less than any ruler shows. */
const HALVINGS = 50;

/** The border at the top that leaves so much at the bottom, or as much as itself. */
function topFor({ root }: Wish, job: Job, bottom: number | 'even'): number {
  return solveFor((border) => {
    const { length, growth } = root ? extentOf(root, 'up', border) : { length: 0, growth: 0 };
    return bottom === 'even'
      ? { length: length + 2 * border, growth: growth + 2 }
      : { length: length + border + bottom, growth: growth + 1 };
  }, heightIn(job));
}

/** What top and bottom have between them; gaps may be as wide as the top. */
function roomIn({ root }: Wish, job: Job, top: number): number {
  return heightIn(job) - (root ? extentOf(root, 'up', top).length : 0);
}

/** Of the blank, as borders are measured. */
function heightIn({ frame, borders }: Job): number {
  return (frame.blank?.height ?? 0) - 2 * hiddenIn(frame, borders);
}
