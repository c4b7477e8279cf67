/** The size to ask for where a piece is bought cut to size: on the job's step. */
import type { Size } from '../geometry/box';
import { stepLength, type Showing } from '../units';

/** What lies beside a step by less is on it, mm. */
const ON_STEP = 1e-6;

/** Rounded up to the step; where that would no longer go into `room`, down. */
export function orderSize(cut: Size, room: Size, showing: Showing): Size {
  return {
    width: orderLength(cut.width, room.width, showing),
    height: orderLength(cut.height, room.height, showing),
  };
}

/** @param room the longest that fits, mm. */
export function orderLength(length: number, room: number, showing: Showing): number {
  const step = stepLength(showing);
  const up = Math.ceil((length - ON_STEP) / step) * step;
  if (up - length <= ON_STEP) return length;
  const down = Math.floor((length + ON_STEP) / step) * step;
  return up <= room + ON_STEP || down <= 0 ? up : down;
}
