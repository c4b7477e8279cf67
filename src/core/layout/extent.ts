/** How long a cell is along an axis, as a function of the border that some gaps share. */
import type { Axis, Cell, Grid, Line } from './cells';

/** Length at a given border, mm, and how fast it grows with the border. */
export interface Extent {
  readonly length: number;
  readonly growth: number;
}

const NOTHING: Extent = { length: 0, growth: 0 };

/** Natural length of a cell; gaps that share what is left between the borders count nothing yet. */
export function extentOf(cell: Cell, axis: Axis, border: number): Extent {
  if (cell.kind === 'leaf' || cell.kind === 'ring')
    return { length: axis === 'across' ? cell.size.width : cell.size.height, growth: 0 };
  if (cell.kind === 'grid') return strung(tracksOf(cell, axis, border), cell.gap[axis], border);
  if (cell.axis === axis)
    return strung(
      cell.cells.map((inner) => extentOf(inner, axis, border)),
      cell.gap,
      border,
    );
  return acrossLine(cell, axis, border);
}

/** Extents of a grid's columns (`across`) or rows (`up`). */
export function tracksOf(grid: Grid, axis: Axis, border: number): Extent[] {
  return tracks(grid, axis).map((cells) =>
    axis === 'up' && grid.align.up === 'baseline'
      ? baselineExtent(cells, border)
      : longest(cells.map((cell) => extentOf(cell, axis, border))),
  );
}

/** Cells of each column or row of a grid. */
export function tracks(grid: Grid, axis: Axis): Cell[][] {
  const count =
    axis === 'across' ? Math.min(grid.columns, grid.cells.length) : Math.ceil(grid.cells.length / grid.columns);
  const lists: Cell[][] = Array.from({ length: count }, () => []);
  grid.cells.forEach((cell, index) => lists[trackIndex(grid, axis, index)]?.push(cell));
  return lists;
}

export function trackIndex(grid: Grid, axis: Axis, index: number): number {
  return axis === 'across' ? index % grid.columns : Math.floor(index / grid.columns);
}

/** From the top of a cell down to its baseline: the lower edge of its first window. */
export function ascentOf(cell: Cell, border: number): number {
  if (cell.kind === 'leaf' || cell.kind === 'ring') return cell.size.height;
  const first = cell.cells[0];
  if (!first) return 0;
  if (cell.kind === 'line' && cell.axis === 'up') return ascentOf(first, border);
  const beside = cell.kind === 'line' ? cell.cells : (tracks(cell, 'up')[0] ?? []);
  const align = cell.kind === 'line' ? cell.align : cell.align.up;
  if (align === 'baseline') return Math.max(...beside.map((inner) => ascentOf(inner, border)));
  const height = longest(beside.map((inner) => extentOf(inner, 'up', border))).length;
  return alignOffset(align, height - extentOf(first, 'up', border).length) + ascentOf(first, border);
}

/** Where a shorter cell starts in a longer place. */
export function alignOffset(align: 'start' | 'centre' | 'end', spare: number): number {
  if (align === 'start') return 0;
  return align === 'end' ? spare : spare / 2;
}

/**
 * How many gaps along the axis take what is left, one after the other: all of them get the same part.
 * Windows that stand on a baseline keep their natural length, so below them nothing stretches.
 */
export function stretchOf(cell: Cell, axis: Axis): number {
  if (cell.kind === 'leaf' || cell.kind === 'ring') return 0;
  if (cell.kind === 'grid') {
    const inTracks = trackStretches(cell, axis);
    return sumOf(inTracks) + (cell.gap[axis] === 'between' ? inTracks.length - 1 : 0);
  }
  const inCells = cell.cells.map((inner) => stretchOf(inner, axis));
  if (cell.axis === axis) return sumOf(inCells) + (cell.gap === 'between' ? inCells.length - 1 : 0);
  return cell.align === 'baseline' ? 0 : Math.max(0, ...inCells);
}

/** The same for each column or row of a grid. */
export function trackStretches(grid: Grid, axis: Axis): number[] {
  const still = axis === 'up' && grid.align.up === 'baseline';
  return tracks(grid, axis).map((cells) => (still ? 0 : Math.max(0, ...cells.map((inner) => stretchOf(inner, axis)))));
}

function sumOf(numbers: readonly number[]): number {
  return numbers.reduce((a, b) => a + b, 0);
}

function acrossLine(line: Line, axis: Axis, border: number): Extent {
  if (line.align === 'baseline') return baselineExtent(line.cells, border);
  return longest(line.cells.map((inner) => extentOf(inner, axis, border)));
}

function baselineExtent(cells: readonly Cell[], border: number): Extent {
  const above = longest(cells.map((cell) => ({ length: ascentOf(cell, border), growth: 0 })));
  const below = longest(
    cells.map((cell) => {
      const { length, growth } = extentOf(cell, 'up', border);
      return { length: length - ascentOf(cell, border), growth };
    }),
  );
  return { length: above.length + below.length, growth: below.growth };
}

function strung(parts: readonly Extent[], gap: Line['gap'], border: number): Extent {
  const gaps = Math.max(0, parts.length - 1);
  const sum = parts.reduce(
    (total, part) => ({ length: total.length + part.length, growth: total.growth + part.growth }),
    NOTHING,
  );
  if (gap === 'between') return sum;
  if (gap === 'with-borders') return { length: sum.length + gaps * border, growth: sum.growth + gaps };
  return { length: sum.length + gaps * gap, growth: sum.growth };
}

function longest(parts: readonly Extent[]): Extent {
  return parts.reduce(
    (best, part) =>
      part.length > best.length || (part.length === best.length && part.growth > best.growth) ? part : best,
    NOTHING,
  );
}
