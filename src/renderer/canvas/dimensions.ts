/** Dimension lines: where each border and gap is drawn on the mat, and the path of what governs it. */
import { around, boxAt, grow, insets, SIDES, type Point, type Side } from '../../core/geometry/box';
import type { Job } from '../../core/job/job';
import type { Gap, Layout } from '../../core/layout/layout';
import type { Shown, Showing } from '../../core/units';
import { showLength } from '../../core/units';
import { borderLines } from './border-lines';
import { shownBorders } from '../session/shown-borders';

export interface Dimension {
  readonly key: string;
  /** Path it lights, such as `borders.left` or `windows.gap`; empty where nothing governs it. */
  readonly at: string;
  readonly kind: 'border' | 'gap';
  /** Of a border. */
  readonly side?: Side;
  /** Ends of the line, front view, mm. */
  readonly from: Point;
  readonly to: Point;
  readonly mm: number;
  /** How much more it is than the written length that governs it: windows of other heights or widths stand further apart. */
  readonly beyond: number;
  readonly shown: Shown;
  /** What it is, for assistive technology. */
  readonly name: string;
}

/** The four borders, measured as the job measures them. */
export function borderDimensions(job: Job, layout: Layout, showing: Showing): Dimension[] {
  const seen = job.borders.measured === 'as seen';
  const hidden = seen ? layout.frame.hidden : 0;
  const { width, height } = layout.frame.blank;
  const whole = { width: width - 2 * hidden, height: height - 2 * hidden };
  const borders = seen ? layout.borders.seen : layout.borders.cut;
  const shown = shownBorders(borders, whole, showing);
  const others = layout.windows.filter((window) => !window.at.startsWith('windows')).map(({ window }) => window);
  const ends = borderLines(grow(boxAt({ x: 0, y: 0 }, layout.frame.blank), -hidden), layout.content, others);
  return SIDES.map((side) => ({
    key: `border ${side}`,
    at: `borders.${side}`,
    kind: 'border' as const,
    side,
    from: ends[side][0],
    to: ends[side][1],
    mm: borders[side],
    beyond: 0,
    shown: shown[side],
    name: `Border ${side}, ${seen ? 'as seen' : 'as cut'}`,
  }));
}

/** Past so many gaps only one of each rule is numbered. */
const MOST_GAPS = 24;

export function gapDimensions(layout: Layout, showing: Showing): Dimension[] {
  const seen = new Set<string>();
  const few = layout.gaps.length <= MOST_GAPS;
  return layout.gaps.flatMap((gap, index) => {
    const rule = `${gap.axis} ${gap.at ?? index} ${gap.gap.toFixed(3)}`;
    const repeated = seen.has(rule);
    seen.add(rule);
    return few || !repeated ? [gapDimension(layout, gap, index, showing)] : [];
  });
}

function gapDimension(layout: Layout, gap: Gap, index: number, showing: Showing): Dimension {
  const [a, b] = gap.between.map((place) => layout.windows[place]?.name ?? '');
  const point = (along: number): Point =>
    gap.axis === 'across' ? { x: along, y: gap.beside } : { x: gap.beside, y: along };
  return {
    key: `gap ${index}`,
    at: gap.at ?? '',
    kind: 'gap',
    from: point(gap.from),
    to: point(gap.to),
    mm: gap.gap,
    beyond: typeof gap.rule === 'number' ? gap.gap - gap.rule : 0,
    shown: showLength(gap.gap, showing),
    name: `Gap between ${a} and ${b}`,
  };
}

/** The borders of one layer's openings, for the back view. */
export function layerDimensions(layout: Layout, layerNumber: number, showing: Showing): Dimension[] {
  const openings = layout.windows.flatMap((window) => window.layers[layerNumber - 1]?.back ?? []);
  const blank = boxAt({ x: 0, y: 0 }, layout.frame.blank);
  const all = around(openings);
  if (all === undefined) return [];
  const borders = insets(blank, all);
  const shown = shownBorders(borders, layout.frame.blank, showing);
  const ends = borderLines(blank, all, []);
  return SIDES.map((side) => ({
    key: `layer ${side}`,
    at: '',
    kind: 'border' as const,
    side,
    from: ends[side][0],
    to: ends[side][1],
    mm: borders[side],
    beyond: 0,
    shown: shown[side],
    name: `Border ${side} of layer ${layerNumber}, front view`,
  }));
}
