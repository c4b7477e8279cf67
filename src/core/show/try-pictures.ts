/** Tries every picture of a show in every frame of the shelf, both ways round. */
import type { PerSide } from '../geometry/box';
import type { Frame, PictureKind } from '../job/job';
import { readJob } from '../job/read';
import type { Problem } from '../problem';
import type { Candidate } from './candidates';
import type { Pattern } from './pattern';
import { OWN_FRAME, type ShowPicture } from './picture';
import { Trial, unevenness } from './trial';
import { writeMat } from './written-mat';

/** How a picture stands in a frame. */
export interface Fit {
  /** With its blank as it hangs. */
  readonly frame: Frame;
  /** As the range is measured. */
  readonly borders: PerSide;
  /** True of a frame that the list binds it to, with borders out of range. */
  readonly outOfRange?: true;
}

export interface TriedPicture {
  readonly picture: ShowPicture;
  /** Undefined where no job can be made of it, or none is wanted. */
  readonly trial?: Trial;
  /** Why it is not even tried. */
  readonly apart?: { readonly state: 'own' | 'left'; readonly why: string };
  /** By candidate. */
  readonly fits: ReadonlyMap<number, Fit>;
}

/** Pictures that go into a frame as they are. */
const WITHOUT_MAT: readonly (PictureKind | undefined)[] = ['painting on canvas', 'painting on panel'];

/** Any frame will do to read a job by, mm. */
const ANY_BLANK = { width: 1000, height: 1000 };

export function tryPicture(pattern: Pattern, picture: ShowPicture, candidates: readonly Candidate[]): TriedPicture {
  const none = new Map<number, Fit>();
  if (picture.frame?.toLowerCase() === OWN_FRAME) {
    return { picture, fits: none, apart: { state: 'own', why: 'It hangs in a frame of its own.' } };
  }
  if (WITHOUT_MAT.includes(picture.kind ?? pattern.job.pictures[0]?.kind)) {
    const why = 'A canvas or panel goes into its frame without a mat; choose its frame by itself.';
    return { picture, fits: none, apart: { state: 'left', why } };
  }
  const read = readJob(writeMat(pattern, picture, { blank: ANY_BLANK }));
  if (!read.ok) return { picture, fits: none, apart: { state: 'left', why: messagesOf(read.problems) } };
  const trial = new Trial(read.value.job);
  const bound = picture.frame?.toLowerCase();
  const fits = new Map<number, Fit>();
  candidates.forEach((candidate, index) => {
    const isBound = bound === candidate.frame.name.toLowerCase();
    if (bound === undefined ? candidate.parts === undefined : !isBound) return;
    const fit = bestFit(trial, candidate) ?? (isBound ? boundFit(trial, candidate) : undefined);
    if (fit) fits.set(index, fit);
  });
  return { picture, trial, fits };
}

/** The more even way round; of two alike the first, upright. */
function bestFit(trial: Trial, { ways, fixing }: Candidate): Fit | undefined {
  const fits = ways.flatMap((frame) => {
    const borders = trial.suits(frame);
    return borders && isDeepEnough(trial, frame, fixing) ? [{ frame, borders }] : [];
  });
  return moreEven(fits);
}

/** What its list binds it to holds a picture whatever the borders, as long as the mat can be cut and all of it goes in. */
function boundFit(trial: Trial, { ways, fixing }: Candidate): Fit | undefined {
  const fits = ways.flatMap((frame) => {
    const tried = trial.laidOut(frame);
    const goesIn = tried.ok && isDeepEnough(trial, frame, fixing);
    return goesIn ? [{ frame, borders: tried.borders, outOfRange: true as const }] : [];
  });
  return moreEven(fits);
}

/** As all is named; nothing is worked out where nobody has measured the frame. */
function isDeepEnough(trial: Trial, frame: Frame, fixing: Candidate['fixing']): boolean {
  if (frame.rabbetDepth === undefined && frame.grooves.length === 0) return true;
  return trial.depthIn(frame, fixing)?.verdict !== 'does not fit';
}

/** Borders as even as one another within what doubles lose, mm. */
const LAST_BITS = 1e-6;

function moreEven(fits: readonly Fit[]): Fit | undefined {
  return fits.reduce<Fit | undefined>(
    (best, fit) => (best && unevenness(fit.borders) > unevenness(best.borders) - LAST_BITS ? best : fit),
    undefined,
  );
}

export function messagesOf(problems: readonly Problem[]): string {
  return problems
    .filter(({ severity }) => severity === 'error')
    .map(({ message }) => message)
    .join(' ');
}
