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
/** Common practice, no source: 1/8 in for loose sheets larger than about 11 x 14 in. */
export const AIR_FOR_SIZE = MM_PER_INCH / 8;
const SMALL_SHEET = { short: 11 * MM_PER_INCH, long: 14 * MM_PER_INCH };

/** What is asked of the air over a picture. */
interface Demand {
  readonly code: LackCode;
  readonly severity: Severity;
  readonly asked: number;
  /** What there is to be judged by it: the least where it is published, else what it is called. */
  readonly found: number;
  readonly met: boolean;
  readonly source: string;
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
  const always: Demand[] = [
    {
      code: 'picture-touches-glazing',
      severity: 'warning',
      asked: LEAST_AIR,
      found: least,
      met: least > SLACK,
      source: 'Library of Congress, Guide to Preservation Matting and Framing',
    },
    {
      code: 'air-too-little',
      severity: 'warning',
      asked: LEAST_AIR,
      found: least,
      met: least >= LEAST_AIR - SLACK,
      source: 'FACTS, Standard Guide for Maximum Preservation Framing, cl. 10.01, as quoted',
    },
  ];
  // Two layers do, and so does a spacer that holds the glazing off as far as they would.
  return job.layers.length >= 2 ? always : [...always, ...demandsOfPicture(job, lying, nominal)];
}

function demandsOfPicture(job: Job, { picture }: LyingPicture, found: number): Demand[] {
  const measured = { asked: AIR_FOR_SIZE, found, met: found >= AIR_FOR_SIZE - SLACK };
  if (picture.kind === 'photograph' || rubsOff(picture)) {
    const source = 'Florida Department of State, State Archives: a double mat for photographs and friable media';
    return [{ code: 'air-for-medium', severity: 'warning', ...measured, source }];
  }
  if (!isLarge(picture.sheet) || job.package.hinging.method === 'glued down') return [];
  return [{ code: 'air-for-size', severity: 'note', ...measured, source: 'common practice, no source' }];
}

/** The first demand that is not met, and what is missing to meet them all. */
function lackOf(demands: readonly Demand[]): Lack | undefined {
  const unmet = demands.filter(({ met }) => !met);
  const [first] = unmet;
  if (!first) return undefined;
  const { code, severity, asked, source } = first;
  return { code, severity, asked, source, missing: Math.max(...unmet.map((one) => one.asked - one.found)) };
}

function isLarge({ width, height }: Size): boolean {
  const [short, long] = [Math.min(width, height), Math.max(width, height)];
  return short > SMALL_SHEET.short + SLACK || long > SMALL_SHEET.long + SLACK;
}
