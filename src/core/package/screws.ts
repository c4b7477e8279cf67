/** Screws: never longer than what they go into, and long enough to hold. */
import { ofKind, type Screw, type Shelf } from '../shelf/shelf';
import { MM_PER_INCH } from '../units';
import { SLACK } from './range';

/** Wood that must be left in front of a screw's point, mm: 1/8 in. Common practice, no source. */
export const MARGIN = MM_PER_INCH / 8;
/** Thread that must be in the wood to hold, mm: 1/4 in. Common practice, no source. */
export const BITE = MM_PER_INCH / 4;

export interface ScrewLimits {
  /** What it goes into, in words: `the wood beside the rabbet`. */
  readonly into: string;
  /** What it passes first whose thickness is not known, `the ledge`: all lengths are then counted from behind that. */
  readonly passes?: string;
  /** Longer comes out in front, or near it; undefined: not known. */
  readonly longest?: number;
  readonly shortest: number;
  /** The longest at hand that is neither too long nor too short. */
  readonly chosen?: Screw;
  /** Lengths of all that are at hand, the shortest first. */
  readonly atHand: readonly number[];
}

/** What a screw goes through and into. */
export interface Wood {
  readonly into: string;
  /** What it goes through first, mm: a ledge, packing. */
  readonly through?: number;
  /** What else it goes through, of a thickness that is not known. */
  readonly passes?: string;
  /** How much there is to go into, mm; undefined: not known. */
  readonly wood: number | undefined;
}

export function limitsOf({ into, through = 0, passes, wood }: Wood, shelf: Shelf): ScrewLimits {
  const shortest = through + BITE;
  const longest = wood === undefined ? undefined : through + wood - MARGIN;
  const there = ofKind(shelf, 'screw')
    .filter(({ count }) => count !== 0)
    .toSorted((a, b) => a.length - b.length);
  const chosen =
    longest === undefined || passes !== undefined
      ? undefined
      : there.findLast(({ length }) => length <= longest + SLACK && length >= shortest - SLACK);
  return {
    into,
    ...(passes === undefined ? {} : { passes }),
    ...(longest === undefined ? {} : { longest }),
    shortest,
    ...(chosen ? { chosen } : {}),
    atHand: [...new Set(there.map(({ length }) => length))],
  };
}

export type Wrong = 'too long' | 'too short' | 'not known';

/** Why a screw of this length is wrong, or can't be judged; undefined where it is right. */
export function wrongLength(
  length: number,
  { passes, longest, shortest }: Omit<ScrewLimits, 'into' | 'atHand'>,
): Wrong | undefined {
  if (length < shortest - SLACK) return 'too short';
  if (longest === undefined || passes !== undefined) return 'not known';
  return length > longest + SLACK ? 'too long' : undefined;
}
