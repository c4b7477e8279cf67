/** How even borders are: the one measure by which frames are ranked. */
import { SIDES, type PerSide } from '../geometry/box';

export interface Evenness {
  /**
   * Widest border less narrowest, mm, with the windows in the middle of the frame: weighting, and any other difference
   * from side to side that the job asks for, is no unevenness. 0: all four equal. The same as cut and as seen.
   */
  readonly by: number;
  /** Narrowest through widest of the same borders as seen, which does not hang on size: 1 is even, 0 is no border at all. */
  readonly ratio: number;
}

/** @param seen borders as seen. @param isArranged false where all windows are placed freely and so nothing is shared. */
export function evennessOf(seen: PerSide, isArranged: boolean): Evenness {
  const across = (seen.left + seen.right) / 2;
  const up = (seen.top + seen.bottom) / 2;
  const borders = isArranged ? [across, up] : SIDES.map((side) => seen[side]);
  const [least, most] = [Math.min(...borders), Math.max(...borders)];
  return { by: most - least, ratio: most > 0 ? Math.max(0, least) / most : 0 };
}
