/** A depth that something has to go into, what is left of it, and what that says. */
import { exactly, less, SLACK, type Range } from './range';

/** From the back of the lip. */
export interface Room {
  readonly kind: 'rabbet' | 'groove';
  /** `the rabbet`, `groove 2`. */
  readonly name: string;
  readonly at: string;
  readonly depth: number;
}

/** Room less what goes into it, mm; negative where it does not fit. */
export interface Free {
  /** With all at its thinnest. */
  readonly best: number;
  readonly nominal: number;
  /** With all at its thickest. */
  readonly worst: number;
}

/** `may not fit`: as named it does, at its thickest it doesn't. `held behind`: it stands out, and clips hold it there. */
export type Verdict = 'fits' | 'may not fit' | 'does not fit' | 'held behind' | 'depth unknown' | 'float frame';

export function freeIn(depth: number, needs: Range): Free {
  const { least, nominal, greatest } = less(exactly(depth), needs);
  return { best: greatest, nominal, worst: least };
}

export function verdictOf({ nominal, worst }: Free): Verdict {
  if (worst >= -SLACK) return 'fits';
  return nominal >= -SLACK ? 'may not fit' : 'does not fit';
}
