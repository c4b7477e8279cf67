/** The borders on both axes of a blank, given or made to fit, before any window has its place. */
import type { Size } from '../geometry/box';
import type { Job } from '../job/job';
import { bad, good, type Problem, type Result } from '../problem';
import type { AxisAsk, AxisBorders } from './axis';
import { unequalBorders } from './border-problems';
import type { Axis, Cell } from './cells';
import { extentOf, stretchOf } from './extent';
import { framePath } from './frame-path';
import { hiddenBorder } from './frame-sizes';
import { showFor } from './show';
import { SAME, solveAcross, solveUp } from './solve-borders';

/** Borders as the rule measures them, mm, and how much of each the frame hides beside that. */
export interface SolvedAxis extends AxisBorders {
  readonly hidden: number;
}

export interface SolvedBlank {
  readonly blank: Size;
  /** Left and right. */
  readonly across: SolvedAxis;
  /** Top and bottom. */
  readonly up: SolvedAxis;
}

/** What the job's rule leaves round its arrangement, `root`; nothing is rounded. */
export function solveBlank(job: Job, root: Cell): Result<SolvedBlank> {
  const across = ask(job, root, 'across');
  const sides = solveAcross(across);
  if (!sides.ok) return bad([sides.problem, ...heightProblems(job, root)]);
  const up = ask(job, root, 'up');
  const heights = solveUp(up, (sides.value.start + sides.value.end) / 2);
  if (!heights.ok) return bad([heights.problem]);
  const blank = job.frame.blank ?? { width: fitted(across, sides.value), height: fitted(up, heights.value) };
  if (job.borders.rule === 'equal' && Math.abs(sides.value.start - heights.value.start) > SAME) {
    return bad([unequalBorders(blank, sides.value.start, heights.value.start, across, up)]);
  }
  const { hidden } = across;
  return good({ blank, across: { ...sides.value, hidden }, up: { ...heights.value, hidden } });
}

/** Rules under which top and bottom ask nothing of the sides. */
const OF_THE_HEIGHT_ALONE = ['centred', 'by-hand', 'bottom-amount', 'bottom-ratio', 'height-share'];

/** What is wrong with the height when the width is wrong already, so that both are told at once. */
function heightProblems(job: Job, root: Cell): Problem[] {
  if (!OF_THE_HEIGHT_ALONE.includes(job.borders.rule) || !job.frame.blank) return [];
  const heights = solveUp(ask(job, root, 'up'), NaN);
  return heights.ok ? [] : [heights.problem];
}

function ask(job: Job, root: Cell, axis: Axis): AxisAsk {
  const { blank } = job.frame;
  return {
    ...(blank ? { blank: axis === 'across' ? blank.width : blank.height } : {}),
    hidden: job.borders.measured === 'as seen' ? hiddenBorder(job) : 0,
    extent: (border) => extentOf(root, axis, border),
    stretchable: stretchOf(root, axis) > 0,
    borders: job.borders,
    frameAt: framePath(job),
    units: job.units,
    show: showFor(job),
  };
}

function fitted({ extent, hidden }: AxisAsk, { start, end }: AxisBorders): number {
  return extent(start).length + start + end + 2 * hidden;
}
