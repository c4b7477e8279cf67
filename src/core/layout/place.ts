/** Gives every window of a tree of cells its place along an axis. */
import type { Axis, Cell, Grid, Leaf, Line } from './cells';
import { alignOffset, ascentOf, extentOf, isStretchable, trackIndex, tracksOf } from './extent';

/** Distance of each window from the start of the axis (left, or top), mm. */
export type Starts = Map<Leaf, number>;

/**
 * Places a cell and all below it.
 * `room` is the length it has: its natural length, or more where a gap shares what is left.
 */
export function place(cell: Cell, axis: Axis, start: number, room: number, border: number, starts: Starts): void {
  if (cell.kind === 'leaf') starts.set(cell, start);
  else if (cell.kind === 'grid') placeGrid(cell, axis, start, room, border, starts);
  else if (cell.axis === axis) placeAlong(cell, axis, start, room, border, starts);
  else placeBeside(cell, axis, start, room, border, starts);
}

function placeAlong(line: Line, axis: Axis, start: number, room: number, border: number, starts: Starts): void {
  const lengths = line.cells.map((cell) => extentOf(cell, axis, border).length);
  const positions = stringOut(lengths, line.gap, start, room, border);
  line.cells.forEach((cell, index) =>
    place(cell, axis, positions[index] ?? start, lengths[index] ?? 0, border, starts),
  );
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
  const lengths = tracksOf(grid, axis, border).map((extent) => extent.length);
  const positions = stringOut(lengths, grid.gap[axis], start, room, border);
  const align = grid.align[axis];
  const ascents = align === 'baseline' ? trackAscents(grid, border, lengths.length) : [];
  grid.cells.forEach((cell, index) => {
    const track = trackIndex(grid, axis, index);
    const from = positions[track] ?? start;
    if (align === 'baseline') {
      place(
        cell,
        axis,
        from + (ascents[track] ?? 0) - ascentOf(cell, border),
        extentOf(cell, axis, border).length,
        border,
        starts,
      );
    } else placeIn(cell, axis, align, from, lengths[track] ?? 0, border, starts);
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
  if (isStretchable(cell, axis)) return place(cell, axis, start, room, border, starts);
  const length = extentOf(cell, axis, border).length;
  place(cell, axis, start + alignOffset(align, room - length), length, border, starts);
}

/** Where each of several lengths starts when they stand one after the other with a gap. */
function stringOut(
  lengths: readonly number[],
  gap: Line['gap'],
  start: number,
  room: number,
  border: number,
): number[] {
  const between = lengths.length < 2 ? 0 : (room - lengths.reduce((a, b) => a + b, 0)) / (lengths.length - 1);
  const step = gap === 'between' ? between : gap === 'with-borders' ? border : gap;
  let next = start;
  return lengths.map((length) => {
    const at = next;
    next += length + step;
    return at;
  });
}
