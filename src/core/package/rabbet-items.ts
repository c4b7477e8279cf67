/** The rabbet to look at: how large and how deep it has to be, and what the one in hand takes. */
import type { Size } from '../geometry/box';
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Show } from '../layout/show';
import { MM_PER_INCH } from '../units';
import type { CheckItem } from './check-item';
import type { Fit } from './fit';
import { SLACK } from './range';

/** The lip must still cover so much of a package that is pushed to one side, mm: 1/16 in. Common practice, no source. */
const COVERED = MM_PER_INCH / 16;

/** What a frame measured so takes: rabbet less allowance. */
export function contentsFor(rabbet: Size, allowance: number): Size {
  return { width: rabbet.width - allowance, height: rabbet.height - allowance };
}

/** @param measured of the frame in hand. */
export function sizeItem(layout: Layout, measured: Size | undefined, show: Show): CheckItem {
  if (measured) return measuredItem(measured, layout, show);
  const { blank, rabbet, allowance } = layout.frame;
  return {
    state: 'look',
    what: 'rabbet size',
    words: `Measure between the rabbet’s walls at both ends of each side: ${show.size(rabbet)} for a package of ${show.size(blank)} with ${show.limit(allowance)} play. If less, cut everything that much smaller.`,
    measures: { width: rabbet.width, height: rabbet.height },
  };
}

function measuredItem(measured: Size, { frame: { blank, allowance, lip } }: Layout, show: Show): CheckItem {
  const takes = contentsFor(measured, allowance);
  const tight = takes.width < blank.width - SLACK || takes.height < blank.height - SLACK;
  const play = Math.max(measured.width - blank.width, measured.height - blank.height);
  const loose = play > lip - COVERED + SLACK;
  const taken = `A rabbet of ${show.size(measured)} takes ${show.size(takes)} with ${show.limit(allowance)} play, and the package is ${show.size(blank)}`;
  return {
    state: tight ? 'needed' : loose ? 'look' : 'done',
    what: 'rabbet size',
    words: tight
      ? `${taken}: cut glazing, mat, mount board and backing to ${show.size(takes)}, or take another frame.`
      : loose
        ? `${taken}: pushed to one side, it comes out from under the lip at the other. Cut all of it to ${show.size(takes)}, or keep it in the middle with strips of board at its edges.`
        : `${taken}.`,
    measures: { width: takes.width, height: takes.height },
  };
}

export function depthItem({ frame: { rabbetDepth } }: Job, { needs }: Fit, show: Show): CheckItem {
  return {
    state: rabbetDepth === undefined ? 'needed' : 'done',
    what: 'rabbet depth',
    words:
      rabbetDepth === undefined
        ? `Measure it from the back of the lip to the back of the frame, and say it in the job: ${show.limit(needs.greatest)} is wanted.`
        : `${show.limit(rabbetDepth)} from the back of the lip to the back of the frame.`,
    measures: { wanted: needs.greatest },
  };
}
