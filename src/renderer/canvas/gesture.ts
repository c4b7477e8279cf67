/** Gestures on the mat as plain values: from what was grabbed and how far it was moved to the edits that follow. */
import type { Point, Side } from '../../core/geometry/box';
import type { Job } from '../../core/job/job';
import { readJob } from '../../core/job/read';
import { setAll } from '../../core/job/edit';
import type { WrittenJob } from '../../core/job/written';
import { layOut } from '../../core/layout/lay-out';
import type { Layout } from '../../core/layout/layout';
import type { Edit } from '../../core/problem';
import { stepLength, type Showing } from '../../core/units';
import { changeBorder, measuredBorders } from '../edits/borders';
import { moveFreeEdits } from '../edits/free-windows';
import { exactText } from '../../core/job/exact-text';
import { spellOut } from '../edits/spell-out';
import { lengthToStore } from '../fields/written-length';
import type { Handle } from './handles';
import type { Hit } from './hit';
import { snapWindow, toStep, type Guide } from './snap';

/** The work as it stood when a gesture began. */
export interface Ground {
  readonly written: WrittenJob;
  readonly job: Job;
  readonly layout: Layout;
  readonly showing: Showing;
  /** How near a line pulls, mm. */
  readonly reach: number;
}

export interface Moved {
  readonly edits: readonly Edit[];
  readonly guides: readonly Guide[];
}

export interface Gesture {
  readonly label: string;
  /** Path of what it changes, to be lit. */
  readonly lights: string;
  /** `by`: how far the pointer is from where it began, mm. */
  readonly move: (by: Point) => Moved;
}

/** The gesture that grabbing something begins; undefined for what cannot be dragged. */
export function beginGesture(ground: Ground, hit: Hit): Gesture | undefined {
  switch (hit.kind) {
    case 'handle':
      return dragHandle(ground, hit.handle);
    case 'border':
      return dragBorder(ground, hit.side);
    case 'gap':
      return dragGap(ground, hit.gap, hit.end);
    case 'window':
      return ground.layout.layers.length === 0 ? undefined : dragFree(ground, hit.window);
  }
}

function dragHandle({ job, showing }: Ground, { at, label, along, value, least, most, edits }: Handle): Gesture {
  const reach = along.x ** 2 + along.y ** 2;
  const step = stepLength(showing);
  return {
    label,
    lights: at,
    move: (by) => {
      const wanted = toStep(value + (by.x * along.x + by.y * along.y) / reach, step);
      // At the ends the value need not lie on the step; a measure of nothing is none.
      const mm = Math.max(least < 0 ? least : Math.max(least, Math.min(step, most)), Math.min(most, wanted));
      const text = mm === wanted ? lengthToStore(mm, job.units, showing) : exactText(mm, job.units);
      return { edits: nearly(mm, value, showing) ? [] : edits(text), guides: [] };
    },
  };
}

function dragBorder(ground: Ground, side: Side): Gesture {
  const { job, layout, showing, written } = ground;
  const start = measuredBorders(job, layout)[side];
  const edits = (mm: number) => changeBorder(job, layout, side, lengthToStore(mm, job.units, showing), mm).edits;
  const across = side === 'left' || side === 'right';
  const inward = side === 'left' || side === 'bottom' ? 1 : -1;
  const rate = rateOf(written, layout, edits, start, (laid) => laid.content[side]) ?? inward;
  return {
    label: `Drag the border ${side}`,
    lights: `borders.${side}`,
    move: (by) => {
      const mm = Math.max(stepLength(showing), toStep(start + (across ? by.x : by.y) / rate, stepLength(showing)));
      return { edits: nearly(mm, start, showing) ? [] : edits(mm), guides: [] };
    },
  };
}

function dragGap(ground: Ground, index: number, end: 'from' | 'to'): Gesture | undefined {
  const { layout, showing, job, written } = ground;
  const gap = layout.gaps[index];
  const at = gap?.at;
  if (gap === undefined || at === undefined) return undefined;
  const edits = (mm: number): Edit[] => [{ at, value: lengthToStore(mm, job.units, showing) }];
  const rate = rateOf(written, layout, edits, gap.gap, (laid) => laid.gaps[index]?.[end]) ?? (end === 'to' ? 1 : -1);
  return {
    label: 'Drag the gap',
    lights: at,
    move: (by) => {
      const mm = Math.max(
        stepLength(showing),
        toStep(gap.gap + (gap.axis === 'across' ? by.x : by.y) / rate, stepLength(showing)),
      );
      return { edits: nearly(mm, gap.gap, showing) ? [] : edits(mm), guides: [] };
    },
  };
}

function dragFree(ground: Ground, index: number): Gesture | undefined {
  const { layout, showing, job, written, reach } = ground;
  const placed = layout.windows[index];
  const place = /^free\[(\d+)\]$/.exec(placed?.at ?? '');
  const free = written.free?.[Number(place?.[1])];
  if (placed === undefined || free === undefined) return undefined;
  return {
    label: `Move window ${placed.name}`,
    lights: placed.at,
    move: (by) => {
      const corner = { x: placed.window.left + by.x, y: placed.window.bottom + by.y };
      const snapped = snapWindow(layout, index, corner, stepLength(showing), reach);
      const still = Math.hypot(by.x, by.y) < 1e-9;
      return {
        edits: still ? [] : moveFreeEdits(free, placed.at, placed, layout, snapped.corner, job.units),
        guides: snapped.guides,
      };
    },
  };
}

/** How far a line moves for each millimetre a value grows, found by laying out a slightly larger one; undefined when it stays. */
function rateOf(
  written: WrittenJob,
  layout: Layout,
  edits: (mm: number) => readonly Edit[],
  value: number,
  lineOf: (layout: Layout) => number | undefined,
): number | undefined {
  const trial = 25.4;
  const tried = edits(value + trial);
  const job = readJob(setAll(spellOut(written, tried), tried));
  const laid = job.ok ? layOut(job.value.job) : undefined;
  const trialLayout = laid?.ok ? laid.value : laid?.sketch;
  if (!trialLayout) return undefined;
  const rate = ((lineOf(trialLayout) ?? 0) - (lineOf(layout) ?? 0)) / trial;
  return Math.abs(rate) < 0.1 ? undefined : rate;
}

/** A drag back to where it began changes nothing, whatever the step would make of the old value. */
function nearly(mm: number, start: number, showing: Showing): boolean {
  return Math.abs(mm - start) < stepLength(showing) / 2;
}
