/** A job with the frame it is written for replaced by one of the shelf. */
import type { Size } from '../geometry/box';
import { goesBare } from '../job/bare-kinds';
import { defaultLength } from '../job/defaults';
import type { Frame, Job } from '../job/job';
import { readPackage } from '../job/read-package';
import { Reader } from '../job/reader';
import type { ShelfFrame } from '../shelf/shelf';
import { bordersIn, hiddenIn, type Wish } from './wish';

/** Undefined where the frame has no room for borders that differ as the job wants them to. */
export function jobInFrame(wish: Wish, shelf: ShelfFrame, blank: Size): Job | undefined {
  const { job } = wish;
  const frame = frameOf(job, shelf, blank);
  const borders = bordersIn(wish, blank, hiddenIn(frame, job.borders));
  return borders && { ...job, frame, borders, package: packageIn(job, frame) };
}

/** Held as is usual in that frame, unless the job is held in another way than is usual in its own. */
export function packageIn(job: Job, frame: Frame): Job['package'] {
  const { fixing } = job.package;
  const own = usualFixing(job, job.frame);
  if (fixing.kind !== own.kind) return job.package;
  const { kind, room } = usualFixing(job, frame);
  return { ...job.package, fixing: { ...fixing, kind, room: fixing.room === own.room ? room : fixing.room } };
}

function usualFixing({ pictures, layers, units, steps }: Job, frame: Frame): Job['package']['fixing'] {
  const bare = pictures.some(({ kind }) => goesBare(kind));
  return readPackage({}, { frame, inside: { layers, pictures }, bare }, new Reader(units, steps)).fixing;
}

/** What the shelf does not say of lip and face is as in the job; depth and weight of another frame say nothing of this one. */
export function frameOf(job: Job, shelf: ShelfFrame, blank: Size): Frame {
  const own = withLip(job);
  const { blank: _b, readyMade: _r, turned: _t, mouldingDepth: _m, rabbetDepth: _d, weight: _w, density: _p, ...kept } = own; // prettier-ignore
  const { rabbetDepth, depth, weight, build, corners, comesWith, grooves } = shelf;
  const { insideDepth: _i, ...float } = own.float;
  // An open front: the canvas is seen whole, with the gap on every side.
  const front = build === 'float' ? { lip: 0, allowance: 2 * float.gap } : { lip: lipOf(own, shelf) };
  return {
    ...kept,
    blank,
    ...front,
    float,
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

/** Nothing of a lip and its play is known from a float frame, which has none: they are what a job that says nothing has. */
function withLip({ frame, units }: Job): Frame {
  if (frame.build !== 'float') return frame;
  return { ...frame, lip: defaultLength('lip', units), allowance: defaultLength('allowance', units) };
}

/** No lip is wider than the face it is part of. */
function lipOf({ lip }: Frame, shelf: { readonly lip?: number; readonly face?: number }): number {
  return shelf.lip ?? Math.min(lip, shelf.face ?? lip);
}

/** The job in a frame made to fit, of a moulding. */
export function frameToFit(job: Job, moulding: MouldingProfile): Frame {
  const own = withLip(job);
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
