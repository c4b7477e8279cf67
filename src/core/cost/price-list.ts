/** What a shop asks for its work: the user's own prices and rules, as they are understood; amounts and percents are exact. */
import type { FixingKind } from '../job/package';
import type { Money } from '../money';
import type { Currency } from './currencies';

/** How boards are charged. */
export const BOARD_CHARGES = ['by sheet used', 'by area', 'by united inches'] as const;
export type BoardCharge = (typeof BOARD_CHARGES)[number];

/** What a price of board is for, by how boards are charged; a sheet's own price stands on the shelf. */
export const BOARD_BASES = {
  'by sheet used': [],
  'by area': ['m2', 'sq ft'],
  'by united inches': ['united in'],
} as const satisfies Record<BoardCharge, readonly string[]>;
export type BoardBasis = (typeof BOARD_BASES)[BoardCharge][number];

export interface BoardPrice {
  readonly amount: Money;
  readonly per: BoardBasis;
}

/** Parts that no shelf holds. */
export const PARTS = [
  'spacer',
  'hinges',
  'backing',
  'dust cover',
  'points',
  'brads',
  'bent tabs',
  'turn buttons',
  'screws',
] as const satisfies readonly (FixingKind | 'spacer' | 'hinges' | 'backing' | 'dust cover')[];
export type PartName = (typeof PARTS)[number];

/** For the whole frame, for a length once round the frame size, or for the area of the frame size. */
export const PART_BASES = ['frame', 'm', 'ft', 'in', 'm2', 'sq ft'] as const;
export interface PartPrice {
  readonly amount: Money;
  readonly per: (typeof PART_BASES)[number];
}

/** Steps of work that are paid by their minutes. */
export const STEPS = ['cut straight', 'cut curve', 'fit', 'hang'] as const;
export type Step = (typeof STEPS)[number];

/** What the minutes of a step are for. */
export const STEP_BASES = {
  'cut straight': ['opening', 'cut'],
  'cut curve': ['opening'],
  fit: ['frame'],
  hang: ['frame'],
} as const satisfies Record<Step, readonly string[]>;

export interface StepMinutes {
  readonly minutes: Money;
  readonly per: 'opening' | 'cut' | 'frame';
}

/** What is added to a moulding for its mitres. */
export type MitreWaste =
  /** What the frame takes of its stick: the outsides of its rails, with the saw cuts. */
  | { readonly rule: 'as cut' }
  /** Eight times the width of the face. */
  | { readonly rule: '8 x face' }
  /** Of twice width and height of the rabbet. */
  | { readonly rule: 'percent'; readonly percent: Money };

export interface PriceRounding {
  readonly way: 'nearest' | 'up';
  readonly step: Money;
}

export interface Tax {
  readonly name: string;
  readonly percent: Money;
}

/** At the head of what customers get; each as the user wrote it. */
export interface Shop {
  readonly name?: string;
  readonly address?: string;
}

export interface PriceList {
  readonly currency: Currency;
  readonly board: {
    readonly charge: BoardCharge;
    /** By the board's name in small letters; '' is for every other board. */
    readonly prices: ReadonlyMap<string, BoardPrice>;
    /** Whether a sheet's waste is paid by the jobs that are cut from it, each by the area of its pieces. */
    readonly sharesWaste: boolean;
  };
  readonly mitreWaste: MitreWaste;
  readonly openings: {
    readonly first?: Money;
    readonly further?: Money;
    /** Whether a window counts once, or once in each layer. */
    readonly counted: 'by window' | 'by layer';
  };
  /** Flat, for a mat. */
  readonly layout?: Money;
  /** For each window that is no rectangle, counted as the openings are. */
  readonly oddShape?: Money;
  readonly parts: ReadonlyMap<PartName, PartPrice>;
  /** Of an hour. */
  readonly hour?: Money;
  readonly steps: ReadonlyMap<Step, StepMinutes>;
  /** Percent of materials and work. */
  readonly overhead?: Money;
  /** Percent of the cost, or of the price. */
  readonly earning?: { readonly of: 'markup' | 'margin'; readonly percent: Money };
  /** Undefined: to the currency's smallest part. */
  readonly rounding?: PriceRounding;
  readonly taxes: readonly Tax[];
  /** Whether what the customer is told holds the taxes, so that it is the sum with them that is rounded. */
  readonly includesTax: boolean;
  readonly shop: Shop;
}
