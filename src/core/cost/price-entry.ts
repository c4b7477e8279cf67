/** One row of a price list, understood by itself. */
import type { Money } from '../money';
import type { Currency } from './currencies';
import type { MitreWaste, PriceRounding } from './price-list';
import type { PriceWhat } from './price-rows';

export interface PriceEntry {
  readonly line: number;
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
}
