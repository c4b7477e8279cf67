/** The sizes of the frame round a blank. */
import type { Size } from '../geometry/box';
import type { Job } from '../job/job';
import type { FrameSizes } from './layout';

export function frameSizes(job: Job, blank: Size): FrameSizes {
  const { allowance, lip, mouldingWidth, colour, build } = job.frame;
  const larger = (by: number): Size => ({ width: blank.width + by, height: blank.height + by });
  return {
    blank,
    rabbet: larger(allowance),
    sight: larger(allowance - 2 * lip),
    outside: larger(allowance + 2 * (mouldingWidth - lip)),
    allowance,
    lip,
    mouldingWidth,
    colour,
    hidden: hiddenBorder(job),
    isFloat: build === 'float',
  };
}

/** How much of each border the frame hides; of a float frame less than nothing, the gap. */
export function hiddenBorder({ frame }: Pick<Job, 'frame'>): number {
  return frame.lip - frame.allowance / 2;
}
