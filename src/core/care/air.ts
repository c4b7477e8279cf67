/** Judges the air between the picture and its glazing: how far apart they are at the least, and how far they should be. */
import { capital } from '../phrases';
import type { Size } from '../geometry/box';
import type { Job, Picture } from '../job/job';
import type { Show } from '../layout/show';
import { MM_PER_INCH } from '../units';
import { FOUR_PLY } from './board-demands';
import { notCounted } from './costs';
import { judged, type Demand, type Judgement, type Step } from './judgement';
import { SOURCES, type Source } from './sources';
import { isPainting, type Held, type Subject } from './subject';

/**
 * Least distance from a picture's face to the glazing, mm: mats and spacer as thin as they may be. A picture that floats
 * lies in the windows, so that its own thickness and that of its hinges are taken from it; below zero it is pressed.
 */
export function leastAir({ layers, package: { spacer, hinging } }: Job, held?: Held): number {
  const mats = layers.reduce((sum, { thinnest }) => sum + thinnest, spacer?.thickness.least ?? 0);
  return held?.floats === true ? mats - held.picture.thickest - hinging.thickness.greatest : mats;
}

/** Two 4-ply boards, or as much: 0.090 in, mm. */
export const TWO_BOARDS = 2 * FOUR_PLY;

/** Common practice, no source: sheets larger than this, mm, bow towards the glazing. */
const LARGE: Size = { width: 11 * MM_PER_INCH, height: 14 * MM_PER_INCH };

/** How much air a picture wants, mm, and why it wants more than one board gives. */
interface WantedAir {
  readonly least: number;
  readonly why?: string;
  readonly source: Source;
}

function wantedAir(picture: Picture): WantedAir {
  const two = (why: string, source: Source): WantedAir => ({ least: TWO_BOARDS, why, source });
  if (picture.kind === 'photograph') return two('a photograph sticks to glazing', SOURCES.florida);
  if (picture.kind === 'pastel or charcoal') return two('pastel and charcoal smear at a touch', SOURCES.florida);
  // A painting is stretched, or stiff.
  const bows = !isPainting(picture) && isLarger(picture.sheet, LARGE);
  if (bows) return two('a sheet larger than 11 x 14 in bows', SOURCES.practice);
  return { least: FOUR_PLY, source: SOURCES.factsGap };
}

/** True of what does not fit within a size either way round. */
export function isLarger(sheet: Size, than: Size): boolean {
  const [short, long] = sides(sheet);
  const [least, most] = sides(than);
  return short > least + 1e-6 || long > most + 1e-6;
}

function sides({ width, height }: Size): readonly [number, number] {
  return [Math.min(width, height), Math.max(width, height)];
}

interface Airing {
  readonly held?: Held;
  readonly air: number;
  readonly wanted: WantedAir;
}

/** Paper is judged as it will be behind glazing, which it wants; undefined for a painting without any. */
export function judgeAir(subject: Subject): Judgement | undefined {
  const { job, show } = subject;
  if (!job.package.glazing && !subject.hasPaper) return undefined;
  const worst = worstAired(subject);
  return judged({
    key: 'air',
    what: 'Air between picture and glazing',
    at: 'package.spacer',
    now: `${airText(worst.air, show)} at the least`,
    demands: [touchesNothing(worst, subject), ...standsOff(worst, subject)],
    step: () => spacerStep(worst, subject),
  });
}

/** The picture that is furthest from what it wants. */
function worstAired({ job, held }: Subject): Airing {
  const all = held.map((one): Airing => ({ held: one, air: leastAir(job, one), wanted: wantedAir(one.picture) }));
  const unsaid: Airing = { air: leastAir(job), wanted: { least: FOUR_PLY, source: SOURCES.factsGap } };
  const lacking = ({ air, wanted }: Airing) => wanted.least - air;
  return all.reduce<Airing | undefined>((a, b) => (a && lacking(a) >= lacking(b) ? a : b), undefined) ?? unsaid;
}

function touchesNothing({ air, held }: Airing, { show }: Subject): Demand {
  const met = air >= FOUR_PLY - 1e-9;
  const limit = show.limit(FOUR_PLY);
  const name = capital(held?.name ?? 'the picture');
  const words = met
    ? `${airText(air, show)} of air at the least, and ${limit} keeps it off the glazing`
    : `${name} has ${airText(air, show)} of air and may touch the glazing; ${limit} is asked at the least`;
  return { from: 'protective', met, words, sources: [SOURCES.factsGap, SOURCES.lcGuide] };
}

function standsOff({ air, wanted, held }: Airing, { show }: Subject): Demand[] {
  if (wanted.why === undefined) return [];
  const met = air >= wanted.least - 1e-9;
  const limit = show.limit(wanted.least);
  const words = met
    ? `That is no less than two boards (${limit}), since ${wanted.why}`
    : `${capital(held?.name ?? 'the picture')} has ${airText(air, show)} of air; two boards or ${limit} are asked, since ${wanted.why}`;
  return [{ from: 'conservation', met, words, sources: [wanted.source] }];
}

function airText(air: number, show: Show): string {
  return show.fine(Math.max(0, air));
}

/** The spacer that makes up what is lacking, on the step. */
function spacerStep({ air, wanted }: Airing, { job, show }: Subject): Step {
  const present = job.package.spacer?.thickness;
  const thickness = show.exact(show.stepUp((present?.least ?? 0) + lacking(air, wanted)));
  const words = `${present ? 'Take a spacer' : 'Put in a spacer'} of ${thickness}: the package grows deeper by as much`;
  return {
    words,
    reaches: 'conservation',
    fix: { label: `Plan with a spacer of ${thickness}`, edits: [{ at: 'package.spacer', value: { thickness } }] },
    cost: notCounted('spacers are not on a shelf'),
  };
}

function lacking(air: number, { least }: WantedAir): number {
  return Math.max(0, least - air);
}
