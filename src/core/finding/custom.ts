/** Frames made to size beside the ready-made ones: which blank would keep the borders that are wanted, and what that costs. */
import type { PerSide, Size } from '../geometry/box';
import type { Borders, Job } from '../job/job';
import { layOut } from '../layout/lay-out';
import type { Layout } from '../layout/layout';
import { rangeMisses, type Miss } from '../layout/range-misses';
import { SAME } from '../layout/solve-borders';
import { sumOf, type Money } from '../money';
import { ofKind, type Shelf, type ShelfFrame } from '../shelf/shelf';
import type { Candidate } from './candidate';
import { areaOf, costOf, usedIn, type Cost, type Used } from './cost';
import { mouldingPrice, offersFor, stickLength, withMoulding, type Offer } from './offers';
import type { Wish } from './wish';

export type CustomKind =
  /** Without a mat: as large as the picture. */
  | 'picture'
  /** As large as the job's own borders make it, or as its own frame that is on no shelf. */
  | 'own'
  /** The smallest whose borders are in range. */
  | 'least'
  /** With equal borders, as narrow as the narrower ones of the best ready-made frame. */
  | 'even narrow'
  /** With equal borders, as wide as the wider ones. */
  | 'even wide';

export interface Custom {
  readonly kind: CustomKind;
  readonly blank: Size;
  /** The job as it is made: of the first offer, or of its own moulding. */
  readonly made: Job;
  readonly layout: Layout;
  readonly borders: { readonly cut: PerSide; readonly seen: PerSide };
  readonly misses: readonly Miss[];
  /** Length of moulding, mm, as of `Offer`: of the first offer, or of the job's own moulding. */
  readonly length: number;
  /** Mouldings of the shelf, those that are deep enough and cheapest first; prices not known come last. */
  readonly offers: readonly Offer[];
  readonly used: Used;
  /** With the first offer. */
  readonly cost: Cost;
  /** The smallest frame of the shelf that is no smaller either way and holds the job's depth; undefined where none does, and without a mat. */
  readonly nearestAbove?: ShelfFrame;
  /** Beside the best ready-made frame; undefined where none works. */
  readonly more?: More;
}

/** What one takes more than the other; below zero: less. */
export interface More {
  /** Of one moulding round either, mm. */
  readonly length: number;
  /** mm². */
  readonly board: number;
  readonly glazing: number;
  /** Of all that is known of both; undefined where that is nothing. */
  readonly amount?: Money;
  /** Parts whose price is not known of both. */
  readonly notCounted: readonly string[];
}

/** What is on the shelf, beside which frames are made to size. */
interface Beside {
  /** Every frame of the shelf, the one that suits best first. */
  readonly candidates: readonly Candidate[];
  /** The first that works. */
  readonly best: Candidate | undefined;
  readonly shelf: Shelf;
}

/** Without double sizes; none where gaps take what is left, or all windows are placed freely. */
export function customsFor(wish: Wish, beside: Beside): Custom[] {
  const { best, shelf } = beside;
  const make = (kind: CustomKind, job: Job) => customOf(kind, job, beside) ?? [];
  if (wish.job.layers.length === 0) return [make('picture', asLargeAsPicture(wish.job))].flat().filter((one) => !isBest(one, best)); // prettier-ignore
  if (!wish.root || wish.stretches.across || wish.stretches.up) return [];
  const own = make('own', wish.job);
  const asked = !wish.job.frame.blank && 'misses' in own && own.misses.length === 0;
  const found = [
    own,
    ...evenJobs(wish, best).map(([kind, job]) => make(kind, job)),
    ...(asked ? [] : [make('least', fittedJob(wish, wish.job.borders.range.least))]),
  ].flat();
  const isReady = (blank: Size) => ofKind(shelf, 'frame').some(({ size }) => sameSize(size, blank));
  const isFirst = ({ blank }: Custom, index: number) =>
    found.findIndex((other) => sameSize(other.blank, blank)) === index;
  return found.filter((custom, index) => !isReady(custom.blank) && isFirst(custom, index));
}

/** Made to fit, a frame without a mat has the picture's own size. */
function asLargeAsPicture(job: Job): Job {
  const { blank: _blank, readyMade: _name, turned: _turned, ...frame } = job.frame;
  return { ...job, frame };
}

/** One of its size is on the shelf and holds it as a frame made to size would. */
function isBest({ blank, layout }: Custom, best: Candidate | undefined): boolean {
  return best !== undefined && sameSize(best.size, blank) && best.layout?.frame.isFloat === layout.frame.isFloat;
}

/** Equal borders beside the best ready-made frame: as narrow as its narrower ones, as wide as its wider ones. */
function evenJobs(wish: Wish, best: Candidate | undefined): (readonly [CustomKind, Job])[] {
  if (!best?.borders || !best.evenness || best.evenness.by <= SAME) return [];
  const { left, top, right, bottom } = wish.job.borders.measured === 'as seen' ? best.borders.seen : best.borders.cut;
  const [across, up] = [(left + right) / 2, (top + bottom) / 2];
  return [
    ['even narrow', fittedJob(wish, Math.min(across, up))],
    ['even wide', fittedJob(wish, Math.max(across, up))],
  ];
}

/** Made to fit, with one border all round and the job's rule for the bottom on top of that. */
function fittedJob({ job, lean }: Wish, border: number): Job {
  const { rule, all: _a, sides: _s, left: _l, right: _r, top: _t, bottom: _b, ...plain } = job.borders;
  const { blank: _blank, readyMade: _name, turned: _turned, ...frame } = job.frame;
  const even = rule === 'centred' || rule === 'equal';
  const borders: Borders = even
    ? { ...plain, rule: 'equal', all: border }
    : rule === 'by-hand'
      ? {
          ...plain,
          rule,
          left: border + Math.max(0, lean.across),
          right: border + Math.max(0, -lean.across),
          top: border + Math.max(0, lean.up),
          bottom: border + Math.max(0, -lean.up),
        }
      : { ...plain, rule, sides: border };
  return { ...job, frame, borders };
}

function customOf(kind: CustomKind, job: Job, { candidates, best, shelf }: Beside): Custom | undefined {
  const offers = offersFor(job, shelf);
  const [first] = offers;
  const made = first ? withMoulding(job, first.moulding) : toBeMade(job);
  const laid = layOut(made);
  if (!laid.ok) return undefined;
  const { frame, borders } = laid.value;
  const cost = costOf(mouldingPrice(first), made, frame.blank, [], shelf);
  const used = usedIn(made, frame.blank, []);
  // Without a mat a larger frame lets the picture fall through.
  const nearestAbove = kind === 'picture' ? undefined : frameAbove(frame.blank, candidates);
  const { cut, seen } = borders;
  return {
    kind,
    blank: frame.blank,
    made,
    layout: laid.value,
    borders: { cut, seen },
    misses: kind === 'picture' ? [] : rangeMisses(job.borders.measured === 'as seen' ? seen : cut, job.borders.range),
    length: stickLength(laid.value),
    offers,
    used,
    cost,
    ...(nearestAbove ? { nearestAbove } : {}),
    ...(best ? { more: moreThan({ blank: frame.blank, used, cost }, best) } : {}),
  };
}

/** Of a moulding that is nowhere: what is known of the depth of the job's own frame says nothing of another. */
function toBeMade(job: Job): Job {
  const { rabbetDepth: _d, ...frame } = job.frame;
  return { ...job, frame };
}

function moreThan(custom: { readonly blank: Size; readonly used: Used; readonly cost: Cost }, best: Candidate): More {
  const round = ({ width, height }: Size) => 2 * (width + height);
  const apart = custom.cost.parts.map(({ what, amount }) => {
    const other = best.cost.parts.find((part) => part.what === what);
    const known = amount && other && (other.isIncluded ? amount : other.amount && amount.minus(other.amount));
    return { what, known };
  });
  const sums = apart.flatMap(({ known }) => known ?? []);
  return {
    length: round(custom.blank) - round(best.size),
    board: custom.used.board - best.used.board,
    glazing: custom.used.glazing - best.used.glazing,
    ...(sums.length > 0 ? { amount: sumOf(sums) } : {}),
    notCounted: apart.flatMap(({ what, known }) => (known ? [] : [what])),
  };
}

/** Of frames that the job does not go into, however large they are, none is named. */
function frameAbove(blank: Size, candidates: readonly Candidate[]): ShelfFrame | undefined {
  const [short, long] = sides(blank);
  return candidates
    .filter(({ reasons }) => !reasons.some(({ kind }) => kind === 'rabbet too shallow' || kind === 'float frame'))
    .map(({ frame }) => frame)
    .filter(({ size }) => sides(size)[0] >= short - SAME && sides(size)[1] >= long - SAME)
    .reduce<ShelfFrame | undefined>((a, b) => (a && areaOf(a.size) <= areaOf(b.size) ? a : b), undefined);
}

function sides({ width, height }: Size): readonly [short: number, long: number] {
  return width <= height ? [width, height] : [height, width];
}

function sameSize(one: Size, other: Size): boolean {
  return sides(one).every((side, index) => Math.abs(side - (sides(other)[index] ?? NaN)) <= SAME);
}
