/** One line of a cost sheet: what it is for, how much of it, the basis in words, and the amount, rounded to the currency. */
import { roundedTo, type Money } from '../money';
import type { Currency } from './currencies';
import type { PriceWhat } from './price-rows';

/** In the order of the sheet. */
export const GROUPS = ['materials', 'fixings', 'mat work', 'labour'] as const;
export type CostGroup = (typeof GROUPS)[number];

/** What lines of several variants are held beside one another by, whatever each is made of. */
export const SLOTS = [
  'boards',
  'glazing',
  'spacer',
  'backing',
  'dust cover',
  'frame',
  'hinges',
  'fixing',
  'hangers',
  'openings',
  'odd shapes',
  'layout',
  'cut straight',
  'cut curve',
  'fit',
  'hang',
] as const;
export type CostSlot = (typeof SLOTS)[number];

/** Where what a line lacks would be said: on the shelf, in a row of the price list, or in the job. */
export type Lacking =
  | { readonly in: 'shelf' }
  /** By the path in the written job. */
  | { readonly in: 'job'; readonly at: 'frame.name' | 'hanging' }
  | { readonly in: 'prices'; readonly what: PriceWhat; readonly name?: string };

export interface PricedLine {
  readonly group: CostGroup;
  readonly slot: CostSlot;
  readonly what: string;
  /** `7 windows`, `78 1/2 in`. */
  readonly quantity: string;
  /** The sum, or what would have to be known. */
  readonly basis: string;
  /** Rounded half up to the currency's decimals; undefined: not known, and so not counted. */
  readonly amount?: Money;
  /** Of a line that is not counted; undefined: the shelf. */
  readonly lacks?: Lacking;
}

type Unrounded = Omit<PricedLine, 'group'>;

/** Here alone are amounts of lines rounded. */
export function linesIn(group: CostGroup, { places }: Currency, lines: readonly Unrounded[]): PricedLine[] {
  return lines.map(({ amount, ...line }) => ({
    group,
    ...line,
    ...(amount ? { amount: roundedTo(amount, places) } : {}),
  }));
}

/** Where the price of a line that is not counted would be said. */
export function lackingOf({ lacks = { in: 'shelf' } }: PricedLine): Lacking {
  return lacks;
}
