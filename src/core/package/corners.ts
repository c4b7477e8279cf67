/** What to look at in a frame's corners, and how far out of square it may be. */
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Show } from '../layout/show';
import type { CheckItem } from './check-item';

export interface Squareness {
  /** From corner to corner of a square rabbet. */
  readonly diagonal: number;
  /** How far both diagonals may differ before the package no longer lies in it without force. */
  readonly mayDiffer: number;
}

/**
 * A rabbet leaning by an angle whose sine is `s` has diagonals of `sqrt(w² + h² ± 2 w h s)`. A package laid along its longer
 * sides then loses `s` times the shorter side of their length, so that the allowance is used up at `s = allowance / shorter side`.
 */
export function squareness({
  rabbet: { width, height },
  allowance,
}: Pick<Layout['frame'], 'rabbet' | 'allowance'>): Squareness {
  const lean = Math.min(1, allowance / Math.min(width, height));
  const across = 2 * width * height * lean;
  const squares = width ** 2 + height ** 2;
  return {
    diagonal: Math.sqrt(squares),
    mayDiffer: Math.sqrt(squares + across) - Math.sqrt(squares - across),
  };
}

export function cornerItems(job: Job, layout: Layout, show: Show): CheckItem[] {
  return [
    {
      state: 'look',
      what: 'corners',
      words:
        job.frame.corners === 'closed'
          ? 'Closed, finished over the joint: no crack in the finish, none when you press across the corner. It can’t be cut down or taken apart.'
          : 'Mitred: no gap at the face, at the outer edge or in the rabbet, seen against the light; none opens when you press across the corner. Faces level with one another, pattern meeting.',
    },
    job.frame.build === 'float' ? evenGap() : square(layout, show),
  ];
}

function evenGap(): CheckItem {
  return {
    state: 'look',
    what: 'square',
    words: 'Both diagonals alike, of the frame as of the canvas: where they differ, the gap is seen to be uneven.',
  };
}

function square({ frame }: Layout, show: Show): CheckItem {
  const { diagonal, mayDiffer } = squareness(frame);
  return {
    state: 'look',
    what: 'square',
    words: `Both diagonals of the rabbet are ${show.length(diagonal)}; where they differ by more than ${show.limit(show.stepDown(mayDiffer))} the package binds.`,
    measures: { diagonal, mayDiffer },
  };
}
