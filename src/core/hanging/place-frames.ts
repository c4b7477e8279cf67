/** Where frames stand by their arrangement: distances from the start of the whole, and heights above the floor. */
import type { Wall, WallAlign } from '../job/wall';
import type { MeasuredFrame } from './wall-plan';

export interface Place {
  /** From the start of the whole to the frame's nearer side. */
  readonly near: number;
  /** From the floor to its middle. */
  readonly height: number;
}

/** A place for each frame, in their order. */
export function placeFrames(wall: Wall, frames: readonly MeasuredFrame[]): Place[] {
  const { arrangement, centre } = wall;
  switch (arrangement.kind) {
    case 'row':
      return inRow(frames, arrangement.gap, arrangement.align, centre);
    case 'grid':
      return inGrid(frames, arrangement, centre);
    case 'stairs':
      return onStairs(frames, arrangement, centre);
    case 'group':
      return inGroup(frames, arrangement.gap, centre);
  }
}

function inRow(frames: readonly MeasuredFrame[], gap: number, align: WallAlign, centre: number): Place[] {
  const tallest = Math.max(...frames.map(({ size }) => size.height));
  const nears = starts(frames.map(({ size }) => size.width), gap); // prettier-ignore
  return frames.map(({ size }, index) => {
    const aside = (tallest - size.height) / 2;
    const height = align === 'centre' ? centre : align === 'top' ? centre + aside : centre - aside;
    return { near: nears[index] ?? 0, height };
  });
}

interface Grid {
  readonly columns: number;
  readonly columnGap: number;
  readonly rowGap: number;
}

/** Row after row from the top; each column as wide as its widest frame, each row as high as its highest. */
function inGrid(frames: readonly MeasuredFrame[], { columns, columnGap, rowGap }: Grid, centre: number): Place[] {
  const across = Math.min(columns, frames.length);
  const columnOf = (index: number) => index % across;
  const rowOf = (index: number) => Math.floor(index / across);
  const most = (of: (index: number) => boolean, side: 'width' | 'height') =>
    Math.max(...frames.map(({ size }, index) => (of(index) ? size[side] : 0)));
  const widths = Array.from({ length: across }, (_, column) => most((index) => columnOf(index) === column, 'width'));
  const rows = Math.ceil(frames.length / across);
  const heights = Array.from({ length: rows }, (_, row) => most((index) => rowOf(index) === row, 'height'));
  const [lefts, tops] = [starts(widths, columnGap), starts(heights, rowGap)];
  const top = centre + (heights.reduce((sum, each) => sum + each, 0) + (rows - 1) * rowGap) / 2;
  return frames.map(({ size }, index) => {
    const [column, row] = [columnOf(index), rowOf(index)];
    return {
      near: (lefts[column] ?? 0) + ((widths[column] ?? 0) - size.width) / 2,
      height: top - (tops[row] ?? 0) - (heights[row] ?? 0) / 2,
    };
  });
}

/** What has no edge of its own hangs after the one before it. */
function inGroup(frames: readonly MeasuredFrame[], gap: number, centre: number): Place[] {
  let after = 0;
  return frames.map((frame) => {
    const near = frame.edge ?? after;
    after = near + frame.size.width + gap;
    return { near, height: frame.centre ?? centre };
  });
}

/** Up for along, as stairs usually are (common practice, no source). */
const STAIRS_RISE = 7 / 11;

/** Middles on a slanting line; whatever lies first along the wall is its start. */
function onStairs(
  frames: readonly MeasuredFrame[],
  { gap, run: said, rise: saidRise }: { readonly gap: number; readonly run?: number; readonly rise?: number },
  centre: number,
): Place[] {
  const run = said ?? Math.max(...frames.map(({ size }) => size.width)) + gap;
  const rise = saidRise ?? run * STAIRS_RISE;
  const nears = frames.map(({ size }, index) => index * run - size.width / 2);
  const first = Math.min(...nears);
  return nears.map((near, index) => ({ near: near - first, height: centre + index * rise }));
}

/** Where each of several lengths begins, one after another with a gap between. */
function starts(lengths: readonly number[], gap: number): number[] {
  let at = 0;
  return lengths.map((length) => {
    const start = at;
    at += length + gap;
    return start;
  });
}
