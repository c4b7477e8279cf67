/** A plan of sheets as it is told: what lies where on each sheet, mm from its lower left corner, and the cuts in their order. */
import type { Box } from '../geometry/box';
import type { Stock, WantedPiece } from './ask';

export interface PlacedPiece {
  readonly piece: WantedPiece;
  readonly box: Box;
  /** By a quarter anticlockwise: its top lies at the left. */
  readonly turned: boolean;
  /** From 1 through all sheets of the plan, in the order in which they are cut. */
  readonly number: number;
  /** True where the user has put it there. */
  readonly pinned?: true;
}

/**
 * What is done with the guide at one setting and one part in hand. `trim`: the edges of a new sheet come off all round;
 * `square`: the bevelled edges of what fell out of a window do; `cut`: from edge to edge, the setting counted from the part's
 * left or lower edge, as often as told, and what comes off is laid aside.
 */
export interface CutStep {
  readonly kind: 'trim' | 'square' | 'cut';
  /** The part in hand, on the sheet: what cuts before it have left of it. Of `square` what it leaves: see `partInHand`. */
  readonly part: Box;
  /** What it is called: a letter, or the empty text of the whole sheet or fallout. */
  readonly of: string;
  /** `upright`: along the height, the setting counted from the left. `lying`: across, counted from the bottom. */
  readonly way: 'upright' | 'lying';
  readonly setting: number;
  /** How many times, one after another. */
  readonly times: number;
  /** 1: the first cuts, which run over the whole sheet. */
  readonly stage: number;
  /** True where the guide stays as it was for the step before. */
  readonly guideStays: boolean;
  /** What comes off, in order: numbers of pieces, letters of parts that are cut further. */
  readonly gives: readonly string[];
  /** What is then left of the part in hand, where this was its last cut: a piece's number, a letter, or nothing of use. */
  readonly leaves?: string;
}

export interface PlannedSheet {
  readonly stock: Stock;
  readonly pieces: readonly PlacedPiece[];
  /** What is left over in one part each, mm. */
  readonly left: readonly Box[];
  readonly steps: readonly CutStep[];
}

export interface SheetPlan {
  /** What falls out of a window comes after the sheet that its mat is cut from. */
  readonly sheets: readonly PlannedSheet[];
  /** In the units of the stock's costs, or a number of sheets, as the aim has it. */
  readonly cost: number;
  /** No plan costs less than this. */
  readonly atLeast: number;
  /** Rounds of the search. */
  readonly rounds: number;
}
