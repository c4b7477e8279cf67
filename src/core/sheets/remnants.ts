/** What is left of a sheet, and whether it is worth keeping. */
import { heightOf, widthOf, type Box, type Size } from '../geometry/box';
import { MM_PER_INCH } from '../units';

/** By which what is left is kept or thrown away, mm. */
export interface KeepRule {
  /** Narrower is thrown away. */
  readonly least: number;
  /** Either way round; as large is kept as board. */
  readonly board: Size;
  /** As long is kept as a strip. */
  readonly strip: number;
}

/** Common practice, no source: under 2 in discard; at least 10 x 12 in keep as board; long strips keep. How long a strip has to be, 24 in, is our own. */
export const USUAL_KEEP: KeepRule = {
  least: 2 * MM_PER_INCH,
  board: { width: 10 * MM_PER_INCH, height: 12 * MM_PER_INCH },
  strip: 24 * MM_PER_INCH,
};

export type Keeping = 'board' | 'strip' | 'waste';

export function keepingOf(box: Box, { least, board, strip }: KeepRule = USUAL_KEEP): Keeping {
  const [shorter, longer] = [Math.min(widthOf(box), heightOf(box)), Math.max(widthOf(box), heightOf(box))];
  const [narrow, long] = [Math.min(board.width, board.height), Math.max(board.width, board.height)];
  if (shorter >= narrow - LAST_BITS && longer >= long - LAST_BITS) return 'board';
  return shorter >= least - LAST_BITS && longer >= strip - LAST_BITS ? 'strip' : 'waste';
}

/** What doubles lose on their way, mm. */
const LAST_BITS = 1e-6;
