/** A job with the frame it is written for replaced by one of the shelf. */
import type { Size } from '../geometry/box';
import type { Frame, Job } from '../job/job';
import type { ShelfFrame } from '../shelf/shelf';
import { bordersIn, hiddenIn, type Wish } from './wish';

/** Undefined where the frame has no room for borders that differ as the job wants them to. */
export function jobInFrame(wish: Wish, shelf: ShelfFrame, blank: Size): Job | undefined {
  const frame = frameOf(wish.job.frame, shelf, blank);
  const borders = bordersIn(wish, blank, hiddenIn(frame, wish.job.borders));
  return borders && { ...wish.job, frame, borders };
}

/** What the shelf does not say of lip and face is as in the job; depth and weight of another frame say nothing of this one. */
export function frameOf(own: Frame, shelf: ShelfFrame, blank: Size): Frame {
  const { blank: _b, readyMade: _r, turned: _t, mouldingDepth: _m, rabbetDepth: _d, weight: _w, density: _p, ...kept } = own; // prettier-ignore
  const { rabbetDepth, depth, weight, build, corners, comesWith, grooves } = shelf;
  // An open front: the canvas is seen whole, with the gap on every side.
  const front = build === 'float' ? { lip: 0, allowance: 2 * own.float.gap } : { lip: lipOf(own, shelf) };
  return {
    ...kept,
    blank,
    ...front,
    mouldingWidth: shelf.face ?? Math.max(own.mouldingWidth, front.lip),
    ...(depth === undefined ? {} : { mouldingDepth: depth }),
    ...(rabbetDepth === undefined ? {} : { rabbetDepth }),
    ...(weight === undefined ? {} : { weight }),
    build,
    corners,
    comesWith,
    grooves,
  };
}

/** No lip is wider than the face it is part of. */
function lipOf({ lip }: Frame, shelf: { readonly lip?: number; readonly face?: number }): number {
  return shelf.lip ?? Math.min(lip, shelf.face ?? lip);
}

/** The job in a frame made to fit, of a moulding. */
export function frameToFit(own: Frame, moulding: MouldingProfile): Frame {
  const { blank: _b, readyMade: _r, turned: _t, mouldingDepth: _m, rabbetDepth: _d, weight: _w, ...kept } = own;
  return {
    ...kept,
    lip: lipOf(own, moulding),
    mouldingWidth: moulding.face,
    ...(moulding.rabbetDepth === undefined ? {} : { rabbetDepth: moulding.rabbetDepth }),
    build: 'open back',
    corners: 'mitred',
    comesWith: [],
    grooves: [],
  };
}

interface MouldingProfile {
  readonly face: number;
  readonly lip?: number;
  readonly rabbetDepth?: number;
}
