/** What is asked of a sheet plan: the pieces of one material, what they may be cut from, and how it is cut. */

/** Pieces that are alike. */
export interface WantedPiece {
  /** Told in the plan; several may share one. */
  readonly id: string;
  /** As it is to be cut, mm. */
  readonly width: number;
  readonly height: number;
  readonly count: number;
  /** False where grain or pattern runs one way. */
  readonly mayTurn: boolean;
}

/** A sheet of one size that pieces are cut from: new, a remnant, or what falls out of a window of this very job. */
export interface Stock {
  readonly id: string;
  readonly kind: 'sheet' | 'remnant' | 'fallout';
  /** mm. */
  readonly width: number;
  readonly height: number;
  /** In parts of the currency that are whole, such as cents; 0 of what is there anyway. */
  readonly cost: number;
  /** Undefined: as many as are wanted. */
  readonly count?: number;
}

export const SHEET_AIMS = ['cost', 'sheets'] as const;
export type SheetAim = (typeof SHEET_AIMS)[number];

export interface SheetsAsk {
  readonly pieces: readonly WantedPiece[];
  readonly stock: readonly Stock[];
  /** What one cut takes away, mm: 0 for a knife. */
  readonly kerf: number;
  /** Taken off all round a new sheet before it is used, mm. */
  readonly trim: number;
  /** Changes of direction between cuts at most; undefined: as many as it takes. The first cuts are stage 1. */
  readonly stages?: number;
  readonly aim: SheetAim;
  /** The same seed and the same number of rounds give the same plan. */
  readonly seed: number;
}
