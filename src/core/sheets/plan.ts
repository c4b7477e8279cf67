/** A plan of sheets as it is told: what lies where on each sheet, mm from its lower left corner, and the cuts in their order. */
import type { Box } from '../geometry/box';
import type { Stock, WantedPiece } from './ask';

export interface PlacedPiece {
  readonly piece: WantedPiece;
  readonly box: Box;
  readonly turned: boolean;
}

/**
 * A cut from edge to edge of the part in hand, at a setting of the guide from that part's edge. Cuts of one part that
 * follow one another at the same setting are told as one.
 */
export interface CutStep {
  /** The part in hand, on the sheet: what cuts before it have left of it. */
  readonly part: Box;
  /** `upright`: along the height, the setting counted from the left. `lying`: across, counted from the bottom. */
  readonly way: 'upright' | 'lying';
  readonly setting: number;
  /** How many times, one after another. */
  readonly times: number;
  /** 1: the first cuts, which run over the whole sheet. */
  readonly stage: number;
}

export interface PlannedSheet {
  readonly stock: Stock;
  readonly pieces: readonly PlacedPiece[];
  /** What is left over in one part each, mm. */
  readonly left: readonly Box[];
  readonly steps: readonly CutStep[];
}

export interface SheetPlan {
  readonly sheets: readonly PlannedSheet[];
  /** In the units of the stock's costs, or a number of sheets, as the aim has it. */
  readonly cost: number;
  /** No plan costs less than this. */
  readonly atLeast: number;
  /** Rounds of the search. */
  readonly rounds: number;
}
