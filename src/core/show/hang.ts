/** Gives each picture of a show its place: the frame it takes among the sizes chosen, and the mat for that. */
import { sizeOf, type Size } from '../geometry/box';
import { fitOf } from '../package/fit';
import { stackOf } from '../package/stack';
import { assert } from '../problem';
import type { Candidates } from './candidates';
import { copiesOf, type Piece, type ShowChoosing } from './choosing-for';
import type { Costs } from './costs';
import { customSize } from './custom-size';
import { matFor } from './mat-for';
import type { Pattern } from './pattern';
import type { BarePlace, HungPlace, Place, ShowOptions } from './plan';
import { Filler } from './search/fill';
import { unevenness, type Trial } from './trial';
import type { Fit, TriedPicture } from './try-pictures';
import { whyLeft } from './why-left';
import type { FrameChoice } from './written-mat';

export interface Hanging {
  readonly pattern: Pattern;
  readonly tried: readonly TriedPicture[];
  readonly choosing: ShowChoosing;
  readonly candidates: Candidates;
  readonly costs: Costs;
  /** Chosen, as indices. */
  readonly sizes: readonly number[];
  readonly options: ShowOptions;
}

/** In the order of the list. */
export function hangAll(hanging: Hanging): Place[] {
  const frames = framesOf(hanging);
  return hanging.tried.flatMap((tried) => {
    // All copies of a picture in one frame have one mat.
    const made = new Map<number | undefined, HungPlace | BarePlace>();
    const places = frames.get(tried) ?? [];
    return copiesOf(tried).map(({ copy }): Place => {
      const frame = places[copy - 1];
      const place = made.get(frame) ?? placeFor(tried, frame, hanging);
      made.set(frame, place);
      return { picture: tried.picture, copy, ...place };
    });
  });
}

/** Indices of candidates, by picture and copy. */
function framesOf(hanging: Hanging): Map<TriedPicture, readonly (number | undefined)[]> {
  const { choosing, sizes } = hanging;
  const filler = new Filler(choosing);
  const { shares } = filler.fill(sizes);
  const placed = new Map<TriedPicture, (number | undefined)[]>();
  const put = ({ tried, copy }: Piece, frame: number | undefined) => {
    const list = placed.get(tried) ?? [];
    list[copy - 1] = frame;
    placed.set(tried, list);
  };
  choosing.pieces.forEach((pieces, kind) => {
    const inTurn = (shares[kind] ?? [])
      .toSorted((a, b) => a.frame - b.frame)
      .flatMap(({ frame, count }) => Array.from({ length: count }, () => frame));
    pieces.forEach((piece, index) => {
      const frame = inTurn[index];
      put(piece, frame === undefined || filler.limited ? frame : mostEven(piece.tried, frame, hanging));
    });
  });
  return placed;
}

/** Of frames that cost as much and are chosen too, the one that leaves the most even borders. */
function mostEven({ fits }: TriedPicture, frame: number, { choosing, sizes }: Hanging): number {
  const cost = choosing.frames[frame]?.cost;
  const alike = [...fits.keys()].filter((index) => {
    const stock = choosing.frames[index];
    return stock && stock.cost === cost && sizes.includes(stock.size);
  });
  const uneven = (index: number) => {
    const fit = fits.get(index);
    return fit ? unevenness(fit.borders) : Infinity;
  };
  return alike
    .sort((a, b) => a - b)
    .reduce((best, one) => (uneven(one) < uneven(best) - LAST_BITS ? one : best), frame);
}

/** What doubles lose on their way, mm. */
const LAST_BITS = 1e-6;

function placeFor(tried: TriedPicture, index: number | undefined, hanging: Hanging): HungPlace | BarePlace {
  const { candidates, costs } = hanging;
  const candidate = index === undefined ? undefined : candidates.frames[index];
  const fit = index === undefined ? undefined : tried.fits.get(index);
  if (!candidate || !fit) return placeWithout(tried, hanging);
  const { blank } = fit.frame;
  assert(blank, 'a frame of the shelf has a size');
  const place = hung(tried, { blank, frame: candidate.frame }, hanging, fit);
  return candidate.parts === undefined ? place : { ...place, cost: costs.costOf(candidate.parts) };
}

function placeWithout(tried: TriedPicture, hanging: Hanging): HungPlace | BarePlace {
  const { pattern, options, candidates } = hanging;
  if (tried.apart) return tried.apart;
  const { trial } = tried;
  const custom = trial && customSize(trial, pattern.job);
  if (options.allowCustom && custom)
    return hung(tried, { blank: custom }, { pattern: deepEnough(pattern, trial, custom) });
  const rabbet = custom && trial.depthMade(custom)?.needs;
  const beside = rabbet ? { custom: { ...custom, rabbet } } : {};
  if (tried.fits.size === 0) return { state: 'left', why: whyLeft(tried, candidates, pattern.job), ...beside };
  const isTaken = [...tried.fits.keys()].some((index) => hanging.sizes.includes(candidates.frames[index]?.size ?? -1));
  const would = isTaken ? undefined : sizeThatWould(tried, hanging);
  const why =
    would === undefined
      ? 'The frames on the shelf that take it are all used.'
      : `None of the sizes chosen takes it; ${would} would.`;
  return { state: 'left', why, ...(would === undefined ? beside : {}) };
}

/** A frame that is made takes a moulding that is deep enough: what the pattern says of a shallower one is left out. */
function deepEnough(pattern: Pattern, trial: Trial, blank: Size): Pattern {
  const { frame } = pattern.written;
  if (!frame || trial.depthMade(blank)?.verdict === 'fits') return pattern;
  const { rabbetDepth: _d, mouldingDepth: _m, ...rest } = frame;
  return { ...pattern, written: { ...pattern.written, frame: rest } };
}

/** The cheapest frame that it fits, and that there is one of. */
function sizeThatWould({ fits }: TriedPicture, { candidates, options }: Hanging): string | undefined {
  const parts = (index: number) => candidates.frames[index]?.parts ?? 0;
  const isThere = (index: number) => !options.onShelfOnly || candidates.frames[index]?.frame.count !== 0;
  const [first = -1] = [...fits.keys()].filter(isThere).sort((a, b) => parts(a) - parts(b) || a - b);
  return candidates.sizes[candidates.frames[first]?.size ?? -1]?.name;
}

function hung(
  { picture }: TriedPicture,
  choice: FrameChoice,
  { pattern }: Pick<Hanging, 'pattern'>,
  fit?: Fit,
): HungPlace {
  const mat = matFor(pattern, picture, choice);
  assert(mat.ok, `${picture.title}: what suits a picture can be laid out`);
  const { written, job, layout } = mat.value;
  return {
    state: choice.frame ? 'framed' : 'made to size',
    blank: choice.blank,
    ...(choice.frame ? { frame: choice.frame } : {}),
    borders: layout.borders,
    window: sizeOf(layout.content),
    written,
    problems: mat.problems,
    outOfRange: fit?.outOfRange ?? false,
    depth: fitOf(job, stackOf(job, layout)),
  };
}
