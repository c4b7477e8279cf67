/** Screws: never longer than what they go into, and long enough to hold. */
import { ofKind, type Screw, type Shelf } from '../shelf/shelf';
import { MM_PER_INCH } from '../units';
import { SLACK } from './range';

/** Wood that must be left in front of a screw's point, mm: 1/8 in. Common practice, no source. */
export const MARGIN = MM_PER_INCH / 8;
/** Thread that must be in the wood to hold, mm: 1/4 in. Common practice, no source. */
export const BITE = MM_PER_INCH / 4;

export interface ScrewLimits {
  /** What it goes into, in words: `the moulding, 1/2 in deep beside the rabbet`. */
  readonly into: string;
  /** Longer comes out in front, or near it; undefined: not known. */
  readonly longest?: number;
  readonly shortest: number;
  /** The longest at hand that is neither too long nor too short. */
  readonly chosen?: Screw;
}

/**
 * @param passes what it goes through first, mm: a ledge, packing.
 * @param wood how much there is to go into, mm; undefined: not known.
 */
export function limitsOf(into: string, passes: number, wood: number | undefined, shelf: Shelf): ScrewLimits {
  const shortest = passes + BITE;
  if (wood === undefined) return { into, shortest };
  const longest = passes + wood - MARGIN;
  const chosen = ofKind(shelf, 'screw')
    .filter(({ length, count }) => count !== 0 && length <= longest + SLACK && length >= shortest - SLACK)
    .toSorted((a, b) => b.length - a.length)[0];
  return { into, longest, shortest, ...(chosen ? { chosen } : {}) };
}

/** Why a screw of this length is wrong; undefined where it is right or nothing is known. */
export function wrongLength(length: number, { longest, shortest }: ScrewLimits): 'too long' | 'too short' | undefined {
  if (longest !== undefined && length > longest + SLACK) return 'too long';
  return length < shortest - SLACK ? 'too short' : undefined;
}
