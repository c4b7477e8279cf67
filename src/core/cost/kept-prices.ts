/** The price list as a list that its user keeps: how its rows are told apart, and when two of them are the same. */
import type { KeptThings } from '../kept-list';
import { priceName, type PriceEntry } from './price-entry';
import { printPrices } from './print-prices';

export const KEPT_PRICES: KeptThings<PriceEntry> = {
  nameOf: priceName,
  isSame: (one, other) => printPrices([one]) === printPrices([other]),
};
