/** Filling a room with ovals of one size in staggered rows: each row shifted by half a place, so that it sinks between those beside it. */
import type { Point, Size } from '../geometry/box';
import { fitAlong, turnedSize } from './fit-blocks';

/** Staggered rows (`across`), or columns (`up`), every neighbour the same distance away. */
export interface Staggered {
  readonly way: 'staggered';
  readonly along: 'across' | 'up';
  readonly turned: boolean;
  readonly count: number;
  /** In the first row (column), and in the one beside it. */
  readonly inRow: readonly [number, number];
  readonly rows: number;
  /** From a row to the next, middle to middle, mm. */
  readonly pitch: number;
}

const LAST_BITS = 1e-9;

/** The most ovals in staggered rows or columns, upright or turned. */
export function staggered(room: Size, size: Size, gap: number): Staggered {
  const ways = [false, true].flatMap((turned) => {
    const one = turned ? turnedSize(size) : size;
    return [
      { along: 'across' as const, turned, ...inRows(room, one, gap) },
      { along: 'up' as const, turned, ...inRows(turnedSize(room), turnedSize(one), gap) },
    ];
  });
  const best = ways.reduce((most, one) => (one.count > most.count ? one : most));
  return { way: 'staggered', ...best };
}

function inRows(room: Size, size: Size, gap: number): Pick<Staggered, 'count' | 'inRow' | 'rows' | 'pitch'> {
  const first = fitAlong(room.width, size.width, gap);
  const shifted = fitAlong(room.width - (size.width + gap) / 2, size.width, gap);
  const pitch = rowPitch(size, gap);
  const rows = room.height < size.height ? 0 : 1 + Math.floor((room.height - size.height) / pitch + LAST_BITS);
  // A single place in every row leaves nothing to shift into.
  const useful = first > 0 && shifted > 0 && rows > 1;
  const count = useful ? Math.ceil(rows / 2) * first + Math.floor(rows / 2) * shifted : 0;
  return { count, inRow: [first, shifted], rows, pitch };
}

/**
 * From row to row, mm, so that ovals of neighbouring rows are a gap apart at their nearest.
 * Two equal ellipses lie alike round the point halfway between their middles, so half the gap lies on either side of it:
 * that point is on the parallel curve of one of them, `(a cos t + d n_x, b sin t + d n_y)` with `d` half the gap.
 */
export function rowPitch({ width, height }: Size, gap: number): number {
  const parallel = (t: number): Point => {
    const [a, b] = [width / 2, height / 2];
    const normal = { x: b * Math.cos(t), y: a * Math.sin(t) };
    const far = gap / 2 / Math.hypot(normal.x, normal.y);
    return { x: a * Math.cos(t) + normal.x * far, y: b * Math.sin(t) + normal.y * far };
  };
  const halfway = (width + gap) / 4;
  let [low, high] = [0, Math.PI / 2];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (parallel(middle).x > halfway) low = middle;
    else high = middle;
  }
  // Rows that are shifted alike must not meet either.
  return Math.max(2 * parallel((low + high) / 2).y, (height + gap) / 2);
}

/** The room that the rows take up. */
export function staggeredRoom({ along, turned, inRow, rows, pitch }: Staggered, size: Size, gap: number): Size {
  const one = along === 'across' ? oriented(size, turned) : turnedSize(oriented(size, turned));
  const [first, shifted] = inRow;
  const ends = Math.max(first, shifted + 0.5);
  const room = { width: ends * (one.width + gap) - gap, height: (rows - 1) * pitch + one.height };
  return along === 'across' ? room : turnedSize(room);
}

/** Middles of the ovals from the left and the top of the room they take up, row after row. */
export function staggeredMiddles({ along, turned, inRow, rows, pitch }: Staggered, size: Size, gap: number): Point[] {
  const one = along === 'across' ? oriented(size, turned) : turnedSize(oriented(size, turned));
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: inRow[row % 2 === 0 ? 0 : 1] }, (_one, place) => {
      const x = one.width / 2 + (place + (row % 2 === 0 ? 0 : 0.5)) * (one.width + gap);
      const y = one.height / 2 + row * pitch;
      return along === 'across' ? { x, y } : { x: y, y: x };
    }),
  ).flat();
}

function oriented(size: Size, turned: boolean): Size {
  return turned ? turnedSize(size) : size;
}
