/** What is asked of a sheet plan: the pieces of one material, what they may be cut from, and how it is cut. */
import type { Point } from '../geometry/box';
import type { PieceSource } from './piece-source';
import type { KeepRule } from './remnants';

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
  /** Of which job it is, and what is cut into it. */
  readonly from?: PieceSource;
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
  /** Taken off a new sheet all round, mm; undefined: as is asked for all. */
  readonly trim?: number;
  /** Of the row in the list of stock that it is taken from: see `stockName`. */
  readonly listed?: string;
  /** Of a fallout: what it falls out of. */
  readonly window?: FalloutWindow;
}

export interface FalloutWindow {
  /** Into the wanted pieces: the mat, which is cut first. */
  readonly piece: number;
  readonly name: string;
  /** How far the bevel runs beyond the part that is of full thickness, on every side, mm; 0 where that is cut out of a shape. */
  readonly run: number;
  /**
   * Of a shape that is no rectangle: where the part, the largest rectangle in it, is cut out of what falls out. Its lower left
   * corner from the furthest left and the lowest point of that, mm, as seen from the front.
   */
  readonly within?: Point;
}

/**
 * `cost`: the least money. `sheets`: the fewest new sheets. `remnant`: the least money when what the largest remnant cost is
 * taken off. Of plans that are as good, the one that leaves the largest remnant.
 */
export const SHEET_AIMS = ['cost', 'sheets', 'remnant'] as const;
export type SheetAim = (typeof SHEET_AIMS)[number];

/** A piece that the user has put where it is to stay. */
export interface Pin {
  /** Pins with one number lie on one sheet. */
  readonly sheet: number;
  /** Into the stock. */
  readonly stock: number;
  /** Into the wanted pieces; one of those that are alike. */
  readonly piece: number;
  readonly turned: boolean;
  /** Lower left corner on the sheet, mm. */
  readonly left: number;
  readonly bottom: number;
}

export interface SheetsAsk {
  readonly pieces: readonly WantedPiece[];
  readonly stock: readonly Stock[];
  /** What one cut takes away, mm: 0 for a knife. */
  readonly kerf: number;
  /** Taken off all round a new sheet before it is used, where its stock says nothing else, mm. */
  readonly trim: number;
  /** Directions of cuts one after another at most; undefined: as many as it takes. The first cuts are stage 1. */
  readonly stages?: number;
  /** The longest cut that the cutter makes, mm; undefined: any. Trimming is not counted. */
  readonly longestCut?: number;
  readonly aim: SheetAim;
  /** What opening one more new sheet is worth avoiding, in units of cost; 0 unless said. */
  readonly perSheet?: number;
  /**
   * What the largest remnant is worth of what that part of its sheet cost, from 0 to 1; unless said 1 for the aim `remnant`,
   * else 0.
   */
  readonly remnantWorth?: number;
  /** Which remnants are worth keeping; as is usual unless said. Only such count. */
  readonly keep?: KeepRule;
  readonly pins?: readonly Pin[];
  /** The same seed and the same number of rounds give the same plan. */
  readonly seed: number;
}

/** How much is taken off all round a sheet before it is used, mm: remnants and what falls out of windows are not trimmed. */
export function trimOf({ kind, trim }: Pick<Stock, 'kind' | 'trim'>, ask: Pick<SheetsAsk, 'trim'>): number {
  return kind === 'sheet' ? (trim ?? ask.trim) : 0;
}
