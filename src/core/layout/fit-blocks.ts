/** Filling a room with windows of one size in one or two blocks of rows and columns: some upright, some turned on their side. */
import type { Size } from '../geometry/box';

/** A part filled with windows that all stand the same way. */
export interface FitBlock {
  readonly columns: number;
  readonly rows: number;
  readonly turned: boolean;
}

/** One block, or two side by side (`across`) or one above the other (`up`), a gap apart. */
export interface Blocks {
  readonly way: 'upright' | 'turned' | 'mixed';
  readonly along: 'across' | 'up';
  readonly blocks: readonly FitBlock[];
  readonly count: number;
}

/** Doubles may lose their last bits in a sum: what fits exactly, fits. */
const LAST_BITS = 1e-9;

/** How many lengths stand in a room with the gap between them. */
export function fitAlong(room: number, length: number, gap: number): number {
  return Math.max(0, Math.floor((room + gap) / (length + gap) + LAST_BITS));
}

export function turnedSize({ width, height }: Size): Size {
  return { width: height, height: width };
}

export function blockSize({ columns, rows, turned }: FitBlock, size: Size, gap: number): Size {
  const { width, height } = turned ? turnedSize(size) : size;
  return { width: columns * (width + gap) - gap, height: rows * (height + gap) - gap };
}

/** Every window the same way; undefined of a square turned, which is the same again. */
export function inOneBlock(room: Size, size: Size, gap: number, turned: boolean): Blocks {
  const { width, height } = turned ? turnedSize(size) : size;
  const columns = fitAlong(room.width, width, gap);
  const rows = fitAlong(room.height, height, gap);
  const count = columns * rows;
  const blocks = count === 0 ? [] : [{ columns, rows, turned }];
  return { way: turned ? 'turned' : 'upright', along: 'across', blocks, count };
}

/** The most windows in a block of upright and one of turned ones: every share of the room between them is tried. */
export function inTwoBlocks(room: Size, size: Size, gap: number): Blocks {
  const across = sideBySide(room, size, gap);
  // One above the other is side by side in a room on its side, where the turned ones stand upright.
  const up = sideBySide(turnedSize(room), turnedSize(size), gap);
  return across.count >= up.count ? across : { ...up, along: 'up', blocks: up.blocks.map(onItsSide) };
}

function onItsSide({ columns, rows, turned }: FitBlock): FitBlock {
  return { columns: rows, rows: columns, turned };
}

function sideBySide(room: Size, size: Size, gap: number): Blocks {
  const { width, height } = size;
  const rows = fitAlong(room.height, height, gap);
  const turnedRows = fitAlong(room.height, width, gap);
  let best: Blocks = { way: 'mixed', along: 'across', blocks: [], count: 0 };
  for (let columns = 1; columns <= fitAlong(room.width, width, gap); columns += 1) {
    const turnedColumns = fitAlong(room.width - columns * (width + gap), height, gap);
    const count = columns * rows + turnedColumns * turnedRows;
    if (count <= best.count || rows === 0 || turnedRows * turnedColumns === 0) continue;
    const blocks = [
      { columns, rows, turned: false },
      { columns: turnedColumns, rows: turnedRows, turned: true },
    ];
    best = { ...best, blocks, count };
  }
  return best;
}

/** The room that the blocks take up. */
export function roomTaken({ blocks, along }: Blocks, size: Size, gap: number): Size {
  const sizes = blocks.map((block) => blockSize(block, size, gap));
  const strung = (lengths: readonly number[]) => lengths.reduce((sum, length) => sum + length + gap, -gap);
  const [widths, heights] = [sizes.map(({ width }) => width), sizes.map(({ height }) => height)];
  return along === 'across'
    ? { width: strung(widths), height: Math.max(...heights) }
    : { width: Math.max(...widths), height: strung(heights) };
}

/** The widest gap at which the blocks still stand in the room; Infinity where there is no gap. */
export function widestGap({ blocks, along }: Blocks, room: Size, size: Size): number {
  const lines = blocks.map((block) => {
    const { width, height } = blockSize(block, size, 0);
    return { width, height, columns: block.columns, rows: block.rows };
  });
  const sum = (key: keyof (typeof lines)[number]) => lines.reduce((total, line) => total + line[key], 0);
  const widest = (length: number, taken: number, count: number) =>
    count > 1 ? (length - taken) / (count - 1) : Infinity;
  const beside = along === 'across';
  return Math.min(
    beside ? widest(room.width, sum('width'), sum('columns')) : widest(room.height, sum('height'), sum('rows')),
    ...lines.map(({ width, height, columns, rows }) =>
      beside ? widest(room.height, height, rows) : widest(room.width, width, columns),
    ),
  );
}
