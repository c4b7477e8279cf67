/** How sheets are planned, as it was last chosen on this screen; kept over restarts. */
import { SHEET_AIMS, type SheetAim } from '../../core/sheets/ask';
import { MOST_KERF, MOST_TRIM } from '../../core/sheets/read-stock';

/** Times to look for, s for each board. */
export const TIMES = [2, 5, 20, 60] as const;
const USUAL_TIME = 5;
const MOST_LENGTH = 5000;

/** What each number may be: lengths in mm, worth in the prices' money, percents in hundredths. */
export const CHOICE_LIMITS = {
  kerf: [0, MOST_KERF],
  trim: [0, MOST_TRIM],
  longestCut: [1, MOST_LENGTH],
  /** Directions of cuts one after another at most. */
  stages: [1, 9],
  /** What one sheet fewer is worth. */
  perSheet: [0, 100_000],
  remnantPercent: [0, 100],
  /** What is kept of what is left. */
  keepWidth: [1, MOST_LENGTH],
  keepHeight: [1, MOST_LENGTH],
  keepStrip: [1, MOST_LENGTH],
  discard: [1, MOST_LENGTH],
} as const satisfies Readonly<Record<string, readonly [number, number]>>;

export type ChosenNumber = keyof typeof CHOICE_LIMITS;

/** A number that is not chosen is as is usual. */
export interface SheetChoices extends Readonly<Partial<Record<ChosenNumber, number | undefined>>> {
  readonly aim: SheetAim;
  readonly fallouts: boolean;
  /** Boards, in small letters, on which nothing is turned. */
  readonly upright: readonly string[];
  /** Of `TIMES`. */
  readonly seconds: number;
}

/** True of a number that may be chosen. */
export function mayBe(key: ChosenNumber, value: unknown): value is number {
  const [least, most] = CHOICE_LIMITS[key];
  const isWithin = typeof value === 'number' && value >= least && value <= most;
  return isWithin && (key !== 'stages' || Number.isInteger(value));
}

/** What is not as agreed is as if it had not been chosen. */
export function readChoices(text: string | null): SheetChoices {
  const kept = parsed(text);
  const numbers = (Object.keys(CHOICE_LIMITS) as ChosenNumber[]).filter((key) => mayBe(key, kept[key]));
  const { upright } = kept;
  return {
    ...Object.fromEntries(numbers.map((key) => [key, kept[key]])),
    aim: SHEET_AIMS.find((aim) => aim === kept['aim']) ?? 'cost',
    fallouts: kept['fallouts'] !== false,
    upright: Array.isArray(upright) ? upright.filter((one): one is string => typeof one === 'string') : [],
    seconds: TIMES.find((time) => time === kept['seconds']) ?? USUAL_TIME,
  };
}

function parsed(text: string | null): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text ?? '{}');
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}

const KEY = 'matwright.sheets';

export function rememberedChoices(): SheetChoices {
  try {
    return readChoices(localStorage.getItem(KEY));
  } catch {
    return readChoices(null);
  }
}

export function rememberChoices(value: SheetChoices): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(value));
  } catch {
    // A browser that keeps nothing still plans by it now.
  }
}
