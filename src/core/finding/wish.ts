/** How a job wants its windows to lie, told apart from the frame that it is written for. */
import type { Size } from '../geometry/box';
import type { Borders, Frame, Job } from '../job/job';
import { cellOf } from '../layout/cell-of';
import { allLeaves, type Axis, type Cell, type Leaf } from '../layout/cells';
import { extentOf, stretchOf } from '../layout/extent';
import { layOut } from '../layout/lay-out';
import { SAME, solveFor } from '../layout/solve-borders';

export interface Wish {
  readonly job: Job;
  /** Undefined where all windows are placed freely. */
  readonly root?: Cell;
  /** Those of the arrangement and those placed freely. */
  readonly leaves: readonly Leaf[];
  /** Of borders by hand: left less right, and top less bottom, mm; 0 under any other rule. */
  readonly lean: Readonly<Record<Axis, number>>;
  /** Where a gap takes what is left between the borders, which then keep their lengths in every frame. */
  readonly stretches: Readonly<Record<Axis, boolean>>;
}

export function wishOf(job: Job): Wish {
  const root = job.windows && cellOf(job.windows, job);
  const free = job.free.map(({ window }) => cellOf(window, job)).flatMap(allLeaves);
  return {
    job,
    ...(root ? { root } : {}),
    leaves: [...(root ? allLeaves(root) : []), ...free],
    lean: leanOf(job),
    stretches: {
      across: root !== undefined && stretchOf(root, 'across') > 0,
      up: root !== undefined && stretchOf(root, 'up') > 0,
    },
  };
}

/** Borders by hand say what they come to in one frame only; what they want of another is the difference across. */
function leanOf(job: Job): Wish['lean'] {
  const { rule, sides, left = sides, right = sides, top, bottom } = job.borders;
  if (rule !== 'by-hand' || !job.windows) return { across: 0, up: 0 };
  const laid = layOut(job);
  const reached = (laid.ok ? laid.value : laid.sketch)?.borders.cut;
  if (reached) return { across: reached.left - reached.right, up: reached.top - reached.bottom };
  const differ = (one?: number, other?: number) => (one === undefined || other === undefined ? 0 : one - other);
  return { across: differ(left, right), up: differ(top, bottom) };
}

/** How much of a border is hidden where borders are measured as seen, mm; otherwise 0. */
export function hiddenIn(frame: Pick<Frame, 'lip' | 'allowance'>, { measured }: Borders): number {
  return measured === 'as seen' ? frame.lip - frame.allowance / 2 : 0;
}

/** Windows and gaps together at a border of nothing, mm; undefined where all are placed freely. */
export function naturalSize({ root }: Wish): Size | undefined {
  return root && { width: extentOf(root, 'across', 0).length, height: extentOf(root, 'up', 0).length };
}

/**
 * The borders as they are shared in a frame of given size: by the job's rule, whatever lengths it gives for another frame.
 * Four equal borders are asked of no frame; there they are centred, and come out equal where they can.
 * Borders by hand keep their difference from side to side; undefined where the frame has no room for it.
 */
export function bordersIn(wish: Wish, blank: Size, hidden: number): Borders | undefined {
  const { rule, all: _a, sides: _s, left: _l, right: _r, top: _t, bottom: _b, ...plain } = wish.job.borders;
  const across = wish.stretches.across ? keptAcross(wish.job.borders) : leant(wish, 'across', blank.width - 2 * hidden);
  const up = wish.stretches.up ? keptUp(wish.job.borders) : leant(wish, 'up', blank.height - 2 * hidden);
  return across && up && { ...plain, rule: rule === 'equal' ? 'centred' : rule, ...across, ...up };
}

type Lengths = Partial<Pick<Borders, 'sides' | 'left' | 'right' | 'top' | 'bottom'>>;

function keptAcross({ rule, all, sides = rule === 'equal' ? all : undefined, left, right }: Borders): Lengths {
  return said({ sides, left, right });
}

function keptUp({ rule, all, top = rule === 'equal' ? all : undefined, bottom }: Borders): Lengths {
  return said({ top, bottom });
}

/** The border at the start of an axis, from which the one across takes what is left; none where nothing leans. */
function leant({ root, lean }: Wish, axis: Axis, room: number): Lengths | undefined {
  const by = lean[axis];
  if (!root || Math.abs(by) <= SAME) return {};
  const start = solveFor((border) => {
    const { length, growth } = extentOf(root, axis, border);
    return { length: length + 2 * border - by, growth: growth + 2 };
  }, room);
  if (start <= SAME || start - by <= SAME) return undefined;
  return axis === 'across' ? { left: start } : { top: start };
}

function said(lengths: Readonly<Record<string, number | undefined>>): Lengths {
  return Object.fromEntries(Object.entries(lengths).filter(([, length]) => length !== undefined));
}
