/** How the finished frame hangs, as it is understood: mm and kg; what is left out is worked out from the frame. */
import type { HANGERS, SURROUNDINGS } from './written-hanging';

export type HangerChoice = (typeof HANGERS)[number];
export type HangerKind = Exclude<HangerChoice, 'by size'>;
export type Surrounding = (typeof SURROUNDINGS)[number];

interface Bought {
  /** What it is called on the shelf. */
  readonly name?: string;
  /** The maker's rated load of one, kg. */
  readonly load?: number;
}

export interface Hanging {
  readonly hanger: HangerChoice;
  readonly hooks?: 1 | 2;
  readonly hooksApart?: number;
  /** From the top of the frame to where ring, teeth or cleat take the load. */
  readonly hangerDown?: number;
  /** From the outer edge in to the middle of a ring. */
  readonly hangerIn?: number;
  /** From the top of the frame to the top of the taut wire. */
  readonly wireBelowTop?: number;
  readonly wire: Bought & {
    /** kg. */
    readonly breaksAt?: number;
    /** Breaking strength : load. */
    readonly margin: number;
  };
  /** Of each end. */
  readonly knots: number;
  readonly hook: Bought & {
    /** From the nail's hole down to where the wire or ring sits. */
    readonly seat?: number;
    /** From the wall to the wire. */
    readonly standOff: number;
  };
  /** On the frame. */
  readonly fitting: Bought & { readonly width?: number };
  readonly outOfLevel: number;
  /** Of the finished frame, weighed, kg. */
  readonly weight?: number;
  readonly bumpers: number;
  readonly surroundings: readonly Surrounding[];
}
