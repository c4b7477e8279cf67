/** From a square cut in a scrap and measured: what a cutter's scale is off by, and how far its cuts must run past a corner. */
import type { PerSide } from '../geometry/box';
import { SIDES } from '../geometry/box';
import { bad, good, isError, type Problem, type Result } from '../problem';
import { MM_PER_INCH } from '../units';

/** A calibration cut, all in mm. */
export interface CalibrationCut {
  /** What the scale read for all four cuts. */
  readonly scale: number;
  /** From each edge of the scrap to the cut line, on the side that faced the cutter. */
  readonly borders: PerSide;
  /** At each corner, on the face: how far the cuts run over it; negative where they stop short. */
  readonly corners: readonly number[];
  /** How far past each corner the blade was run. */
  readonly usedOvercut: number;
}

export interface Calibration {
  /** Scale reading less guide setting, mm. */
  readonly scaleOffset: number;
  /** That would have closed the corners, mm. */
  readonly overcut: number;
  /** Greatest less least of what was measured, mm. */
  readonly spread: { readonly borders: number; readonly corners: number };
}

/** Measurements that differ by more are not of one cutter well set, mm: 1/32 in. Common practice, no source. */
export const MOST_SPREAD = MM_PER_INCH / 32;
/** An offset greater than this is more often a slip of the rule, mm: 1/2 in. Common practice, no source. */
const MOST_OFFSET = MM_PER_INCH / 2;
const SLACK = 1e-9;

/**
 * Means of the four borders and of the corners. Problems: `calibration-impossible` where a measure cannot be;
 * warnings where measures disagree by more than `MOST_SPREAD`, or the result is not to be believed.
 *
 * @param show a length in words.
 */
export function calibrate(cut: CalibrationCut, show: (mm: number) => string): Result<Calibration> {
  const borders = SIDES.map((side) => cut.borders[side]);
  const wrong = impossible(cut, borders, show);
  if (wrong.some(isError)) return bad(wrong);
  const scaleOffset = cut.scale - mean(borders);
  const wanted = cut.usedOvercut - mean(cut.corners);
  const spread = { borders: spreadOf(borders), corners: spreadOf(cut.corners) };
  return good({ scaleOffset, overcut: Math.max(0, wanted), spread }, [
    ...disagreements(spread, show),
    ...unbelievable(scaleOffset, wanted, show),
  ]);
}

function impossible({ scale, corners, usedOvercut }: CalibrationCut, borders: number[], show: Show): Problem[] {
  const refuse = (at: string, message: string): Problem => ({
    code: 'calibration-impossible',
    severity: 'error',
    at,
    message,
  });
  return [
    ...(scale > 0 ? [] : [refuse('scale', `The scale read ${show(scale)}; it must be more than nothing.`)]),
    ...(borders.every((border) => border > 0)
      ? []
      : [refuse('borders', 'A border is measured as nothing or less; measure from the edge of the scrap to the cut.')]),
    ...(corners.length > 0
      ? []
      : [refuse('corners', 'No corner is measured; one at least is wanted, better all four.')]),
    ...(usedOvercut >= 0
      ? []
      : [refuse('overcut', `The overcut used was ${show(usedOvercut)}; it can't be negative.`)]),
  ];
}

function disagreements({ borders, corners }: Calibration['spread'], show: Show): Problem[] {
  const told = (at: string, spread: number, what: string, remedy: string): Problem[] =>
    spread <= MOST_SPREAD + SLACK
      ? []
      : [
          {
            code: 'calibration-disagrees',
            severity: 'warning',
            at,
            message: `${what} differ by ${show(spread)}, more than ${show(MOST_SPREAD)}; ${remedy}.`,
            value: show(spread),
            limit: show(MOST_SPREAD),
            remedy,
          },
        ];
  return [
    ...told('borders', borders, 'The four borders', 'see that scrap and guide are square, and measure or cut again'),
    ...told('corners', corners, 'The corners', 'start and stop each cut at the same mark, and cut again'),
  ];
}

function unbelievable(scaleOffset: number, overcut: number, show: Show): Problem[] {
  return [
    ...(Math.abs(scaleOffset) <= MOST_OFFSET
      ? []
      : [
          {
            code: 'calibration-unlikely',
            severity: 'warning' as const,
            at: 'borders',
            message: `The scale would be off by ${show(scaleOffset)}, more than ${show(MOST_OFFSET)}; see that the borders were measured from the edge that lay at the guide.`,
          },
        ]),
    ...(overcut >= -SLACK
      ? []
      : [
          {
            code: 'calibration-unlikely',
            severity: 'warning' as const,
            at: 'corners',
            message: `The cuts run over by ${show(-overcut)} more than the blade was run past the corner; it is set to stop at the corner. See that start and stop were at the marks.`,
          },
        ]),
  ];
}

type Show = (mm: number) => string;

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function spreadOf(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
