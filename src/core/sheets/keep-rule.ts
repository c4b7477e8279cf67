/** The user's own rule of what is worth keeping of a sheet, filled up from the usual one and checked. */
import type { Size } from '../geometry/box';
import { bad, good, type Result } from '../problem';
import { lengthText, sizeText, type Showing } from '../units';
import { USUAL_KEEP, type KeepRule } from './remnants';

/** What the user says of it, mm; the rest is as usual. */
export interface KeepWish {
  readonly board?: Size | undefined;
  readonly strip?: number | undefined;
  readonly least?: number | undefined;
}

/** Refused where what is kept as board would be thrown away for being narrow. */
export function keepRule({ board, strip, least }: KeepWish, showing: Showing): Result<KeepRule> {
  const rule: KeepRule = {
    least: least ?? USUAL_KEEP.least,
    board: board ?? USUAL_KEEP.board,
    strip: strip ?? USUAL_KEEP.strip,
  };
  const narrow = Math.min(rule.board.width, rule.board.height);
  if (rule.least <= narrow + 1e-6) return good(rule);
  const limit = lengthText(narrow, showing);
  const value = lengthText(rule.least, showing);
  return bad([
    {
      code: 'keep-rule-contradicts',
      severity: 'error',
      at: 'keep',
      message: `What is under ${value} wide is to be thrown away, but ${sizeText(rule.board, showing)} is to be kept as board. Throw away under ${limit} at the most, or keep larger board only.`,
      value,
      limit,
      remedy: `under ${limit} thrown away`,
    },
  ]);
}
