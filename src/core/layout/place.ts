/** Gives every window of a tree of cells its place along an axis. */
import type { Axis, Cell, Grid, Leaf, Line, Ring } from './cells';
import { alignOffset, ascentOf, extentOf, stretchOf, trackIndex, tracksOf, trackStretches } from './extent';

/** Distance of each window from the start of the axis (left, or top), mm. */
export type Starts = Map<Leaf, number>;

/**
 * Places a cell and all below it.
 * `room` is the length it has: its natural length, or more where a gap shares what is left.
 */
export function place(cell: Cell, axis: Axis, start: number, room: number, border: number, starts: Starts): void {
  if (cell.kind === 'leaf') starts.set(cell, start);
  else if (cell.kind === 'ring') placeRing(cell, axis, start, starts);
  else if (cell.kind === 'grid') placeGrid(cell, axis, start, room, border, starts);
  else if (cell.axis === axis) placeAlong(cell, axis, start, room, border, starts);
  else placeBeside(cell, axis, start, room, border, starts);
}

function placeRing(ring: Ring, axis: Axis, start: number, starts: Starts): void {
  ring.cells.forEach((leaf, index) => {
    const { x, y } = ring.corners[index] ?? { x: 0, y: 0 };
    starts.set(leaf, start + (axis === 'across' ? x : ring.size.height - y - leaf.size.height));
  });
}

function placeAlong(line: Line, axis: Axis, start: number, room: number, border: number, starts: Starts): void {
  const natural = line.cells.map((cell) => extentOf(cell, axis, border).length);
  const stretches = line.cells.map((cell) => stretchOf(cell, axis));
  const places = stringOut(natural, stretches, line.gap, start, room, border);
  line.cells.forEach((cell, index) => {
    const { from, length } = places[index] ?? { from: start, length: 0 };
    place(cell, axis, from, length, border, starts);
  });
}

function placeBeside(line: Line, axis: Axis, start: number, room: number, border: number, starts: Starts): void {
  const ascent = line.align === 'baseline' ? Math.max(...line.cells.map((cell) => ascentOf(cell, border))) : 0;
  for (const cell of line.cells) {
    if (line.align === 'baseline') {
      place(cell, axis, start + ascent - ascentOf(cell, border), extentOf(cell, axis, border).length, border, starts);
    } else placeIn(cell, axis, line.align, start, room, border, starts);
  }
}

function placeGrid(grid: Grid, axis: Axis, start: number, room: number, border: number, starts: Starts): void {
  const natural = tracksOf(grid, axis, border).map((extent) => extent.length);
  const places = stringOut(natural, trackStretches(grid, axis), grid.gap[axis], start, room, border);
  const align = grid.align[axis];
  const ascents = align === 'baseline' ? trackAscents(grid, border, places.length) : [];
  grid.cells.forEach((cell, index) => {
    const track = trackIndex(grid, axis, index);
    const { from, length } = places[track] ?? { from: start, length: 0 };
    if (align === 'baseline') {
      place(
        cell,
        axis,
        from + (ascents[track] ?? 0) - ascentOf(cell, border),
        extentOf(cell, axis, border).length,
        border,
        starts,
      );
    } else placeIn(cell, axis, align, from, length, border, starts);
  });
}

function trackAscents(grid: Grid, border: number, count: number): number[] {
  const ascents = Array.from({ length: count }, () => 0);
  grid.cells.forEach((cell, index) => {
    const track = trackIndex(grid, 'up', index);
    ascents[track] = Math.max(ascents[track] ?? 0, ascentOf(cell, border));
  });
  return ascents;
}

/** A cell that can share out what is left takes all the room; any other is aligned in it. */
function placeIn(
  cell: Cell,
  axis: Axis,
  align: 'start' | 'centre' | 'end',
  start: number,
  room: number,
  border: number,
  starts: Starts,
): void {
  if (stretchOf(cell, axis) > 0) return place(cell, axis, start, room, border, starts);
  const length = extentOf(cell, axis, border).length;
  place(cell, axis, start + alignOffset(align, room - length), length, border, starts);
}

/** Where each of several lengths lies when they stand one after the other; what is left over goes to what stretches. */
function stringOut(
  lengths: readonly number[],
  stretches: readonly number[],
  gap: Line['gap'],
  start: number,
  room: number,
  border: number,
): { from: number; length: number }[] {
  const gaps = lengths.length - 1;
  const fixed = gap === 'between' ? 0 : gap === 'with-borders' ? border : gap;
  const count = stretches.reduce((a, b) => a + b, gap === 'between' ? gaps : 0);
  const spare = room - lengths.reduce((a, b) => a + b, 0) - gaps * fixed;
  const part = count === 0 ? 0 : spare / count;
  const step = gap === 'between' ? part : fixed;
  let from = start;
  return lengths.map((natural, index) => {
    const at = { from, length: natural + part * (stretches[index] ?? 0) };
    from += at.length + step;
    return at;
  });
}
