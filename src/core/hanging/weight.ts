/** What hangs: weighed by the user, or reckoned from the parts with what could not be counted; unknown is never 0. */
import type { Hanging } from '../job/hanging';
import { massText } from '../mass';
import type { Problem } from '../problem';
import type { Unit } from '../units';

/** The parts of a frame, weighed from their measures; as much of it as is asked here. */
export interface Weighed {
  /** kg. */
  readonly counted: { readonly least: number; readonly nominal: number; readonly greatest: number };
  /** Parts whose weight is unknown, in words. */
  readonly notCounted: readonly string[];
}

export interface HangingWeight {
  readonly source: 'weighed' | 'reckoned' | 'unknown';
  /** kg; of a reckoned weight with parts that were not counted it is less than what hangs. */
  readonly kg?: { readonly least: number; readonly nominal: number; readonly greatest: number };
  readonly notCounted: readonly string[];
}

export function hangingWeight({ weight }: Hanging, weighed: Weighed | undefined): HangingWeight {
  if (weight !== undefined) {
    return { source: 'weighed', kg: { least: weight, nominal: weight, greatest: weight }, notCounted: [] };
  }
  if (!weighed || weighed.counted.greatest <= 0) {
    return { source: 'unknown', notCounted: weighed?.notCounted ?? [] };
  }
  return { source: 'reckoned', kg: weighed.counted, notCounted: weighed.notCounted };
}

/** True where nothing that hangs is missing from it. */
export function isWhole({ source, notCounted }: HangingWeight): boolean {
  return source === 'weighed' || (source === 'reckoned' && notCounted.length === 0);
}

/** A load that rests on the weight: `at least` where parts of that are missing. @param kg the load. */
export function restingOn(weight: HangingWeight, kg: number, unit: Unit): string {
  return `${isWhole(weight) ? '' : 'at least '}${massText(kg, unit)}`;
}

/** `; the weight is without the picture, the frame`, after what rests on a weight that is not whole. */
export function butWithout({ source, notCounted }: HangingWeight): string {
  return source !== 'reckoned' || notCounted.length === 0 ? '' : `; the weight is without ${notCounted.join(', ')}`;
}

/** A note where the weight is not that of a scale and something is missing from it. */
export function weightProblems(weight: HangingWeight): Problem[] {
  if (isWhole(weight)) return [];
  const { source, notCounted } = weight;
  const missing =
    notCounted.length > 0 ? `${notCounted.join(', ')} ${notCounted.length === 1 ? 'is' : 'are'}` : 'it is';
  return [
    {
      code: 'weight-not-known',
      severity: 'note',
      at: 'hanging.weight',
      message:
        source === 'unknown'
          ? 'What hangs has not been weighed, so that loads are told as parts of its weight. Weigh the finished frame, glass and all, before it is hung.'
          : `The weight is not whole: ${missing} not counted. Every load is more than is told, and no rating is proved by it. Weigh the finished frame before it is hung.`,
      remedy: 'weigh the finished frame and say it as "weight"',
    },
  ];
}
