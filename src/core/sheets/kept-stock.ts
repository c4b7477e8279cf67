/** The stock as a list that its user keeps: how its rows are told apart, and when two of them are the same. */
import type { KeptThings } from '../kept-list';
import { printStock } from './print-stock';
import { stockName, type StockSheet } from './stock-sheet';

export const KEPT_STOCK: KeptThings<StockSheet> = {
  nameOf: stockName,
  // Printed, so that the last bits of lengths that were read in inches or in millimetres don't count.
  isSame: (one, other) => printStock([one], 'mm') === printStock([other], 'mm'),
};
