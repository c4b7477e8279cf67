/** Borders that lie outside the range in which they are wanted. */
import { SIDES, type PerSide, type Side } from '../geometry/box';
import type { Borders } from '../job/job';
import { SLACK } from './limits/slack';

/** A border outside the range, mm. */
export interface Miss {
  readonly side: Side;
  readonly border: number;
  readonly way: 'narrow' | 'wide';
  /** The end of the range that it misses. */
  readonly limit: number;
  readonly by: number;
}

/** @param borders measured as the range is: as cut, or as seen. */
export function rangeMisses(borders: PerSide, { least, greatest = Infinity }: Borders['range']): Miss[] {
  return SIDES.flatMap((side): Miss[] => {
    const border = borders[side];
    if (border < least - SLACK) return [{ side, border, way: 'narrow', limit: least, by: least - border }];
    return border > greatest + SLACK ? [{ side, border, way: 'wide', limit: greatest, by: border - greatest }] : [];
  });
}
