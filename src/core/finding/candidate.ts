/** One frame of the shelf, one way up, and what a job comes to in it. */
import { sizeOf, type PerSide, type Size } from '../geometry/box';
import { layOut } from '../layout/lay-out';
import type { Laid } from '../layout/laid';
import type { Layout } from '../layout/layout';
import { rangeMisses, type Miss } from '../layout/range-misses';
import { SAME } from '../layout/solve-borders';
import type { Problem } from '../problem';
import type { Shelf, ShelfFrame } from '../shelf/shelf';
import { costOf, usedIn, type Cost, type Used } from './cost';
import { evennessOf, type Evenness } from './evenness';
import { heldIn, type Held } from './held';
import { frameOf, jobInFrame } from './job-in-frame';
import { layoutReasons, leanReason, outrightReasons, rangeReasons, type Reason } from './reasons';
import { weightingIn, type Weighting } from './weighting';
import { hiddenIn, naturalSize, type Wish } from './wish';

export interface Candidate {
  readonly frame: ShelfFrame;
  /** True where it hangs the other way than its size is written. */
  readonly turned: boolean;
  /** Frame size (the blank) as it hangs. */
  readonly size: Size;
  /** True where the job can be cut for it with every border in range, and goes in as deep as it is named. */
  readonly works: boolean;
  /** False where none of it is left. */
  readonly isThere: boolean;
  /** Why it doesn't work; none where it does. */
  readonly reasons: readonly Reason[];
  /** What to look at where it does. */
  readonly remarks: readonly string[];
  /** How deep it lies in the frame; undefined where it isn't laid out. */
  readonly held?: Omit<Held, 'reasons' | 'remarks'>;
  /** The job laid out in it; undefined where the windows can't be placed. It may have errors, which are among the reasons. */
  readonly layout?: Layout;
  /** Borders of the arrangement, as cut and as seen. */
  readonly borders?: { readonly cut: PerSide; readonly seen: PerSide };
  /** Borders out of range, measured as the job's are. */
  readonly misses: readonly Miss[];
  /** By how much the border misses its range that misses it most, mm; where windows do not fit, of borders below nothing. Without a mat by how much its size is not the picture's. */
  readonly shortfall: number;
  /** None without a mat. */
  readonly evenness?: Evenness;
  /** Whether all four borders are the same, so that the mat may be turned and the frame hang either way. */
  readonly hangsEitherWay: 'yes' | 'not weighted' | 'no';
  /** Worked out when someone asks. */
  readonly weighting: Weighting;
  readonly used: Used;
  readonly cost: Cost;
  /** Errors of the layout as they are told in a job. */
  readonly errors: readonly Problem[];
}

/** Lays the job out in a frame of the shelf and judges what comes of it. */
export function candidateOf(wish: Wish, frame: ShelfFrame, turned: boolean, shelf: Shelf): Candidate {
  const size = turned ? { width: frame.size.height, height: frame.size.width } : frame.size;
  const job = jobInFrame(wish, frame, size);
  const inFrame = job?.frame ?? frameOf(wish.job, frame, size);
  const outright = outrightReasons(wish, inFrame, size);
  const isFloat = outright.some(({ kind }) => kind === 'float frame');
  const isLargeEnough = !outright.some(({ kind }) => kind === 'picture too large' || kind === 'windows do not fit');
  const laid = job && isLargeEnough ? layOut(job) : undefined;
  const layout = laid && layoutIn(laid);
  const misses = layout ? missesIn(wish, layout) : [];
  const { reasons: depthReasons, remarks, ...held } = (job && layout && heldIn(job, layout, shelf)) ?? NOT_HELD;
  // What takes no mat at all needs no word of how the mat would lie in it.
  const inIt = [...rangeReasons(misses, wish.job), ...(laid ? layoutReasons(laid.problems) : []), ...depthReasons];
  const reasons = [...outright, ...(!job && isLargeEnough ? [leanReason(wish, size)] : []), ...(isFloat ? [] : inIt)];
  const isBare = wish.job.layers.length === 0;
  let weighting: Weighting | undefined;
  return {
    frame,
    turned,
    size,
    works: reasons.length === 0,
    isThere: frame.count !== 0,
    reasons,
    remarks,
    ...('fit' in held ? { held } : {}),
    ...(layout ? { layout, borders: layout.borders } : {}),
    misses,
    shortfall: isBare
      ? apartBy(wish, size)
      : layout
        ? Math.max(0, ...misses.map(({ by }) => by))
        : shortfallOf(wish, size, hiddenIn(inFrame, wish.job.borders)),
    ...(layout && !isBare ? { evenness: evennessOf(layout.borders.seen, wish.root !== undefined) } : {}),
    hangsEitherWay: layout && !isBare ? eitherWay(wish, layout) : 'no',
    get weighting() {
      return (weighting ??= job && layout && !isBare ? weightingIn(wish, job) : { rules: [] });
    },
    used: usedIn(wish.job, size, frame.comesWith),
    cost: costOf(framePrice(frame), wish.job, size, frame.comesWith, shelf),
    errors: laid && !laid.ok ? laid.problems.filter(({ severity }) => severity === 'error') : [],
  };
}

const NOT_HELD = { reasons: [], remarks: [] };

function layoutIn(laid: Laid): Layout | undefined {
  return laid.ok ? laid.value : laid.sketch;
}

/** A job without a mat has no borders to speak of. */
function missesIn({ job: { borders, layers } }: Wish, layout: Layout): Miss[] {
  if (layers.length === 0) return [];
  return rangeMisses(borders.measured === 'as seen' ? layout.borders.seen : layout.borders.cut, borders.range);
}

/** As if borders below nothing could be cut, so that sizes that are too small can be put in order. */
function shortfallOf(wish: Wish, size: Size, hidden: number): number {
  const natural = naturalSize(wish) ?? { width: 0, height: 0 };
  const { least } = wish.job.borders.range;
  const border = Math.min(size.width - natural.width, size.height - natural.height) / 2 - hidden;
  return Math.max(0, least - border);
}

/** By how much a size is not the picture's that is to lie in it without a mat. */
function apartBy({ leaves: [first] }: Wish, size: Size): number {
  const sheet = first?.picture && sizeOf(first.picture.sheet);
  return sheet ? Math.max(Math.abs(size.width - sheet.width), Math.abs(size.height - sheet.height)) : 0;
}

function eitherWay({ root }: Wish, { borders: { cut } }: Layout): Candidate['hangsEitherWay'] {
  const same = (one: number, other: number) => Math.abs(one - other) <= SAME;
  if (!same(cut.left, cut.right)) return 'no';
  if (same(cut.top, cut.bottom)) return same(cut.left, cut.top) ? 'yes' : 'no';
  return root && same(cut.left, (cut.top + cut.bottom) / 2) ? 'not weighted' : 'no';
}

function framePrice({ name, price }: ShelfFrame) {
  return price ? { name, amount: price.amount } : { name, why: 'no price on the shelf' };
}
