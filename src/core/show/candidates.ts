/** The frames of a shelf that a show may choose from: by size, each as a job understands it, with what it costs. */
import { nameOfSize } from '../frame/ready-made';
import type { Size } from '../geometry/box';
import type { Frame, Job } from '../job/job';
import { readJob } from '../job/read';
import { ofKind, type Shelf, type ShelfFrame } from '../shelf/shelf';
import { sizeText, showingOf } from '../units';
import type { Costs } from './costs';
import type { Pattern } from './pattern';
import { writeMat } from './written-mat';

export interface Candidate {
  readonly frame: ShelfFrame;
  /** As jobs have it, hanging each way; one of a square. */
  readonly ways: readonly Frame[];
  /** How it is usual to hold things in it, where the pattern does not say. */
  readonly fixing: Job['package']['fixing'];
  /** Of one picture in it, in whole parts; undefined of a frame without a price that pictures are bound to. */
  readonly parts?: number;
  /** Index of its size. */
  readonly size: number;
}

/** A size that frames of the shelf have, whichever way they are said. */
export interface FrameSize extends Size {
  readonly name: string;
}

/** A frame that is not chosen from, and why. */
export interface LeftOut {
  readonly frame: ShelfFrame;
  readonly why: string;
}

export interface Candidates {
  readonly sizes: readonly FrameSize[];
  /** In an order of their own, whatever that of the shelf is: by size, cost and name. */
  readonly frames: readonly Candidate[];
  readonly leftOut: readonly LeftOut[];
}

/** @param bound names, in small letters, of frames that pictures are bound to: these need no price. */
export function candidatesOf(pattern: Pattern, shelf: Shelf, costs: Costs, bound: ReadonlySet<string>): Candidates {
  const leftOut: LeftOut[] = [];
  const found: Omit<Candidate, 'size'>[] = [];
  for (const frame of ofKind(shelf, 'frame')) {
    const ways = waysOf(pattern, frame);
    const parts = costs.partsOf(frame);
    const isBound = bound.has(frame.name.toLowerCase());
    if ('why' in ways) leftOut.push({ frame, why: ways.why });
    else if (typeof parts === 'number') found.push({ frame, ...ways, parts });
    else if (isBound) found.push({ frame, ...ways });
    else leftOut.push({ frame, why: parts.why });
  }
  const sorted = found.toSorted(inOrder);
  const sizes: FrameSize[] = [];
  const frames = sorted.map((candidate): Candidate => {
    const { width, height } = upright(candidate.frame.size);
    const last = sizes.at(-1);
    if (!last || fine(last.width) !== fine(width) || fine(last.height) !== fine(height)) {
      const size = { width, height };
      sizes.push({ ...size, name: nameOfSize(size) ?? sizeText(size, showingOf(pattern.job)) });
    }
    return { ...candidate, size: sizes.length - 1 };
  });
  return { sizes, frames, leftOut };
}

function waysOf(pattern: Pattern, frame: ShelfFrame): Pick<Candidate, 'ways' | 'fixing'> | { readonly why: string } {
  if (frame.build === 'float') return { why: 'a float frame takes no mat, it is for a canvas or panel only' };
  const [stand] = pattern.job.pictures;
  const picture = { line: 0, title: '', sheet: stand?.sheet ?? frame.size, count: 1 };
  const read = readJob(writeMat(pattern, picture, { blank: upright(frame.size), frame }));
  if (!read.ok) return { why: read.problems.map(({ message }) => message).join(' ') };
  const { frame: way, package: held } = read.value.job;
  const { width, height } = upright(frame.size);
  const turned = { ...way, blank: { width: height, height: width } };
  return { ways: fine(width) === fine(height) ? [way] : [way, turned], fixing: held.fixing };
}

/** Thousandths of a millimetre: frames whose sides differ by less are of one size, whatever unit they were said in. */
function fine(mm: number): number {
  return Math.round(mm * 1000);
}

function upright({ width, height }: Size): Size {
  return width <= height ? { width, height } : { width: height, height: width };
}

function inOrder(one: Omit<Candidate, 'size'>, other: Omit<Candidate, 'size'>): number {
  const [a, b] = [upright(one.frame.size), upright(other.frame.size)];
  return (
    fine(a.width) - fine(b.width) ||
    fine(a.height) - fine(b.height) ||
    (one.parts ?? 0) - (other.parts ?? 0) ||
    (one.frame.name < other.frame.name ? -1 : 1)
  );
}
