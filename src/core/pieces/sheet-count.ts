/** How many pieces of one size come from a sheet by straight cuts, and so how many sheets some pieces take. */
import type { Size } from '../geometry/box';
import { inOneBlock, inTwoBlocks } from '../layout/fit-blocks';

/** All one way, or a block of each; the board's grain is taken not to matter. */
export function piecesPerSheet(piece: Size, sheet: Size): number {
  const ways = [inOneBlock(sheet, piece, 0, false), inOneBlock(sheet, piece, 0, true), inTwoBlocks(sheet, piece, 0)];
  return Math.max(...ways.map(({ count }) => count));
}
