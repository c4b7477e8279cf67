/** How sheets are planned, as it was last chosen on this screen; kept over restarts. */
import { z } from 'zod';
import { SHEET_AIMS } from '../../core/sheets/ask';
import { MOST_KERF, MOST_TRIM } from '../../core/sheets/read-stock';

/** Times to look for, s for each board. */
export const TIMES = [2, 5, 20, 60] as const;
export const MOST_STAGES = 9;
/** Longest cut, and sides of what is kept, mm. */
export const LEAST_LENGTH = 1;
export const MOST_LENGTH = 5000;
/** What one sheet fewer may be worth, in the prices' money. */
export const MOST_WORTH = 100_000;

const length = z.number().min(LEAST_LENGTH).max(MOST_LENGTH);

/** What is not as agreed is as if it had not been chosen. */
const choices = z.object({
  aim: z.enum(SHEET_AIMS).catch('cost'),
  /** mm; undefined: none. */
  kerf: z.number().min(0).max(MOST_KERF).optional().catch(undefined),
  trim: z.number().min(0).max(MOST_TRIM).optional().catch(undefined),
  /** mm; undefined: any. */
  longestCut: length.optional().catch(undefined),
  stages: z.number().int().min(1).max(MOST_STAGES).optional().catch(undefined),
  fallouts: z.boolean().catch(true),
  /** Boards, in small letters, on which nothing is turned. */
  upright: z.array(z.string()).catch([]),
  perSheet: z.number().min(0).max(MOST_WORTH).optional().catch(undefined),
  /** In hundredths. */
  remnantPercent: z.number().min(0).max(100).optional().catch(undefined),
  /** What is kept of what is left, mm; undefined: as usual. */
  keepWidth: length.optional().catch(undefined),
  keepHeight: length.optional().catch(undefined),
  keepStrip: length.optional().catch(undefined),
  discard: length.optional().catch(undefined),
  /** s for each board. */
  seconds: z
    .number()
    .refine((value) => (TIMES as readonly number[]).includes(value))
    .catch(5),
});

export type SheetChoices = z.infer<typeof choices>;

const KEY = 'matwright.sheets';

export function readChoices(text: string | null): SheetChoices {
  try {
    return choices.parse(JSON.parse(text ?? '{}'));
  } catch {
    return choices.parse({});
  }
}

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
