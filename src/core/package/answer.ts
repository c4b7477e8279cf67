/** Everything there is to say of a job's package, for screen, command line and paper alike. */
import type { Size } from '../geometry/box';
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import { showFor } from '../layout/show';
import type { Problem } from '../problem';
import type { Shelf } from '../shelf/shelf';
import { airOf, type Air } from './air';
import { airWords, matWords, picturesCalled } from './air-words';
import type { CheckItem } from './check-item';
import { checkList } from './check-list';
import { fitOf, squeezeOf, type Fit } from './fit';
import { fitWords } from './fit-words';
import { fixingScrews } from './fixing-screws';
import { floatOf, type FloatFit } from './float';
import { floatWords } from './float-words';
import { matOnPictures, type MatOnPicture } from './pressure';
import { packageProblems } from './problems';
import type { Range } from './range';
import { remediesFor, type Remedy } from './remedies';
import { stackOf, type Stack } from './stack';
import { standOutOf, type StandOut } from './stand-out';
import { standOutWords } from './stand-out-words';

/** What is asked beside the job. */
export interface PackageAsk {
  readonly shelf: Shelf;
  /** From the wall to the back of the frame, mm; else what the job's bumpers keep. */
  readonly wallGap?: number;
  /** The rabbet of the frame in hand, where it was measured. */
  readonly measured?: Size;
}

/** A part of the answer with its sentences. */
export type Told<T> = T & { readonly words: readonly string[] };

export interface PackageAnswer {
  readonly stack: Stack;
  readonly fit: Told<Fit>;
  /** By how much it would be squeezed if it were forced in. */
  readonly squeezed?: Range;
  readonly remedies: readonly Remedy[];
  readonly air: Told<{ readonly pictures: readonly Air[] }>;
  readonly pressure: Told<{ readonly pictures: readonly MatOnPicture[] }>;
  readonly standOut?: Told<StandOut>;
  readonly float?: Told<FloatFit>;
  readonly checkList: readonly CheckItem[];
  readonly problems: readonly Problem[];
}

export function answerPackage(job: Job, layout: Layout, ask: PackageAsk): PackageAnswer {
  const { shelf, measured } = ask;
  const show = showFor(job);
  const stack = stackOf(job, layout);
  const fit = fitOf(job, stack);
  const squeezed = squeezeOf(fit);
  const standOut = standOutOf(job, layout, stack, { shelf, wallGap: ask.wallGap ?? job.hanging.bumpers });
  const float = floatOf(job, layout, shelf);
  const screws = fixingScrews(job, layout, shelf);
  return {
    stack,
    fit: { ...fit, words: fitWords(job, fit, show) },
    ...(squeezed ? { squeezed } : {}),
    remedies: remediesFor(job, layout, shelf),
    air: airAnswer(job, layout),
    pressure: pressureAnswer(job, layout),
    ...(standOut ? { standOut: { ...standOut, words: standOutWords(job, standOut, show) } } : {}),
    ...(float ? { float: { ...float, words: floatWords(job, float, show) } } : {}),
    checkList: checkList({
      job,
      layout,
      stack,
      fit,
      screws,
      ...(standOut ? { standOut } : {}),
      ...(float ? { float } : {}),
      ...(measured ? { measured } : {}),
    }),
    problems: packageProblems(job, layout, shelf),
  };
}

/** Pictures with as much air are told together. */
function airAnswer(job: Job, layout: Layout): PackageAnswer['air'] {
  const pictures = airOf(job, layout);
  const show = showFor(job);
  const alike = groups(pictures, ({ air }) => JSON.stringify(air));
  const words = alike.flatMap((group) => {
    const [first] = group;
    const names = picturesCalled(job, group.map(({ index }) => index)); // prettier-ignore
    return first ? [airWords(first, names, job.package.spacer !== undefined, show)] : [];
  });
  const none = job.package.glazing === undefined ? ['There is no glazing.'] : ['There is no picture.'];
  return { pictures, words: words.length > 0 ? words : none };
}

function pressureAnswer(job: Job, layout: Layout): PackageAnswer['pressure'] {
  const pictures = matOnPictures(job, layout);
  const show = showFor(job);
  const words = groups(pictures, ({ kind, strips }) => `${kind} ${strips}`).flatMap((group) => {
    const [first] = group;
    return first ? [matWords(first, picturesCalled(job, group.map(({ index }) => index)), show)] : []; // prettier-ignore
  });
  return { pictures, words };
}

function groups<T>(items: readonly T[], key: (item: T) => string): readonly (readonly T[])[] {
  const found = new Map<string, T[]>();
  for (const item of items) found.set(key(item), [...(found.get(key(item)) ?? []), item]);
  return [...found.values()];
}
