/** One row of a price list, understood by itself. */
import type { Money } from '../money';
import type { Currency } from './currencies';
import type { MitreWaste, PriceRounding } from './price-list';
import type { PriceWhat } from './price-rows';

export interface PriceEntry {
  readonly what: PriceWhat;
  readonly per?: string;
  /** As written. */
  readonly name?: string;
  /** One of them, by what the row's value is; none after a problem. */
  readonly amount?: Money;
  readonly word?: string;
  readonly currency?: Currency;
  readonly waste?: MitreWaste;
  readonly rounding?: PriceRounding;
  readonly yes?: boolean;
  /** In the user's words. */
  readonly note?: string;
}

/** The same with the line of the file that it begins on, from 1. */
export interface PlacedEntry extends PriceEntry {
  readonly line: number;
}

/** By which rows are told apart: boards, parts and taxes by their names too; markup and margin are two ways to say one thing. */
export function priceName({ what, name = '' }: PriceEntry): string {
  return what === 'markup' || what === 'margin' ? 'earning' : `${what} ${name.trim().toLowerCase()}`;
}
