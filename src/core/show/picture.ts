/** A picture of a show, as its list says it. */
import type { Size } from '../geometry/box';
import type { PictureKind } from '../job/job';

export interface ShowPicture {
  /** Of the list, on which it stands. */
  readonly line: number;
  readonly title: string;
  /** The whole sheet. */
  readonly sheet: Size;
  /** Where the sheet has margins. */
  readonly image?: Size;
  readonly kind?: PictureKind;
  /** How far the mat covers it, mm; negative where paper shows. */
  readonly overlap?: number;
  readonly thickness?: number;
  /** How many there are of it, such as prints of one edition that all hang. */
  readonly count: number;
  /** The name of a frame that is chosen already, or `own`: it hangs in one of its own, and none is looked for. */
  readonly frame?: string;
  /** Where it hangs. */
  readonly wall?: string;
  readonly note?: string;
}

/** What the column `frame` says of a picture that has one. */
export const OWN_FRAME = 'own';

/** The last picture that a list may hold. */
export const MOST_PICTURES = 500;
export const LEAST_PICTURES = 2;
