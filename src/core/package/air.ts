/** Air between a picture and the glazing: how much there is, and how much its size and medium ask for. */
import type { Size } from '../geometry/box';
import type { Job } from '../job/job';
import type { Layout } from '../layout/layout';
import type { Severity } from '../problem';
import { MM_PER_INCH } from '../units';
import { lyingPictures, rubsOff, thicknessOf, type LyingPicture } from './pictures';
import { each, less, NOTHING, SLACK, sum, type Range } from './range';

export interface Air {
  /** Into the job's pictures. */
  readonly index: number;
  /** From its face to the back of the glazing; the picture is taken to lie flat. */
  readonly air: Range;
  /** Layers of mat between them. */
  readonly layers: number;
  /** What is asked and not there, the most pressing alone; undefined: enough. */
  readonly lack?: Lack;
}

export type LackCode = 'picture-touches-glazing' | 'air-too-little' | 'air-for-medium' | 'air-for-size';

export interface Lack {
  readonly code: LackCode;
  readonly severity: Severity;
  /** What is asked, mm. */
  readonly asked: number;
  /** What is missing to that, mm: a spacer so much thicker gives it. */
  readonly missing: number;
  readonly source: string;
}

/** FACTS, Standard Guide for Maximum Preservation Framing, cl. 10.01 (as quoted): the gap from art to glazing, mm. */
export const LEAST_AIR = 0.045 * MM_PER_INCH;
/** As much as two 4-ply boards keep off the glazing at the least, mm. */
const TWO_BOARDS = 2 * LEAST_AIR;
/** What to make it where there is less, mm: 1/8 in. Common practice, no source. */
export const GOOD_AIR = MM_PER_INCH / 8;
/** Common practice, no source: larger loose sheets want more than one board. */
const SMALL_SHEET = { short: 11 * MM_PER_INCH, long: 14 * MM_PER_INCH };

/** What is asked of the air over a picture. */
interface Demand extends Lack {
  readonly met: boolean;
}

/** Of every picture behind glazing; none where there is no glazing. */
export function airOf(job: Job, layout: Layout): Air[] {
  if (!job.package.glazing) return [];
  return lyingPictures(job, layout).map((lying) => {
    const open = openOver(job, lying);
    const lack = lackOf(demandsOn(job, lying, open));
    const air = each((of) => Math.max(0, of(open)));
    return { index: lying.index, air, layers: job.layers.length, ...(lack ? { lack } : {}) };
  });
}

/**
 * The mat and the spacer hold the glazing off what they rest on: the picture, or the mount board it floats on.
 * Negative where the picture is too thick for them.
 */
function openOver(job: Job, { picture, underMat }: LyingPicture): Range {
  const { spacer, hinging } = job.package;
  const layers = job.layers.map(({ thinnest, thickness, thickest }) => ({
    least: thinnest,
    nominal: thickness,
    greatest: thickest,
  }));
  const cover = sum([spacer?.thickness ?? NOTHING, ...layers]);
  if (underMat || layers.length === 0) return cover;
  return less(cover, sum([thicknessOf(picture), hinging.thickness]));
}

function demandsOn(job: Job, lying: LyingPicture, { least, nominal }: Range): Demand[] {
  const board = { severity: 'warning', asked: LEAST_AIR, missing: LEAST_AIR - least } as const;
  return [
    {
      ...board,
      code: 'picture-touches-glazing',
      met: least > SLACK,
      source: 'Library of Congress, Guide to Preservation Matting and Framing',
    },
    {
      ...board,
      code: 'air-too-little',
      met: least >= LEAST_AIR - SLACK,
      source: 'FACTS, Standard Guide for Maximum Preservation Framing, cl. 10.01, as quoted',
    },
    ...demandsOfPicture(job, lying, {
      asked: GOOD_AIR,
      met: least >= TWO_BOARDS - SLACK,
      missing: Math.max(GOOD_AIR - nominal, TWO_BOARDS - least),
    }),
  ];
}

/** Two boards, or a spacer that does as much. */
function demandsOfPicture(
  job: Job,
  { picture }: LyingPicture,
  two: Pick<Demand, 'asked' | 'met' | 'missing'>,
): Demand[] {
  if (picture.kind === 'photograph' || rubsOff(picture)) {
    const source = 'Florida Department of State, State Archives: a double mat for photographs and friable media';
    return [{ ...two, code: 'air-for-medium', severity: 'warning', source }];
  }
  if (!isLarge(picture.sheet) || job.package.hinging.method === 'glued down') return [];
  return [{ ...two, code: 'air-for-size', severity: 'note', source: 'common practice, no source' }];
}

/** The first demand that is not met, with what is missing to meet them all. */
function lackOf(demands: readonly Demand[]): Lack | undefined {
  const unmet = demands.filter(({ met }) => !met);
  const [first] = unmet;
  if (!first) return undefined;
  const { code, severity, asked, source } = first;
  return { code, severity, asked, source, missing: Math.max(...unmet.map(({ missing }) => missing)) };
}

function isLarge({ width, height }: Size): boolean {
  const [short, long] = [Math.min(width, height), Math.max(width, height)];
  return short > SMALL_SHEET.short + SLACK || long > SMALL_SHEET.long + SLACK;
}
