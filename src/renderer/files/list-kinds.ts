/** The lists that a user keeps, each with what is particular to it. */
import { KEPT_PRICES } from '../../core/cost/kept-prices';
import type { PriceEntry } from '../../core/cost/price-entry';
import { priceRowTitle, priceRowWords } from '../../core/cost/price-row-words';
import { printPrices } from '../../core/cost/print-prices';
import { readPriceRows } from '../../core/cost/read-price-rows';
import { parseCutters, printCutters } from '../../core/job/cutter-list';
import { KEPT_CUTTERS } from '../../core/job/kept-cutters';
import type { WrittenCutter } from '../../core/job/written-cutter';
import { good } from '../../core/problem';
import { itemWords } from '../../core/shelf/item-words';
import { KEPT_SHELF } from '../../core/shelf/kept-shelf';
import { printShelf } from '../../core/shelf/print-shelf';
import { readShelf } from '../../core/shelf/read-shelf';
import type { ShelfItem } from '../../core/shelf/shelf';
import { startShelf } from '../../core/shelf/start-shelf';
import { editStock } from '../../core/sheets/edit-stock';
import { KEPT_STOCK } from '../../core/sheets/kept-stock';
import { printStock } from '../../core/sheets/print-stock';
import { readStock } from '../../core/sheets/read-stock';
import type { StockSheet } from '../../core/sheets/stock-sheet';
import { stockWork } from '../../core/sheets/stock-work';
import { parseUseRecord } from '../../core/sheets/use-record';
import { stockRowWords } from '../../core/sheets/use-words';
import type { Showing, Unit } from '../../core/units';
import type { ListKind } from './kept-list.svelte';

export const CUTTERS: ListKind<WrittenCutter> = {
  ...KEPT_CUTTERS,
  name: 'cutters',
  call: ({ name }) => name,
  words: 'the list of cutters',
  start: () => [],
  read: parseCutters,
  print: printCutters,
};

export const PRICES: ListKind<PriceEntry> = {
  ...KEPT_PRICES,
  name: 'prices',
  words: 'the price list',
  call: priceRowTitle,
  start: () => [],
  read: readPriceRows,
  print: printPrices,
  tell: (entry) => priceRowWords(entry, 2),
};

/** @param units of the job: in which system of sizes the generic shelf is, while there is none of the user's own. */
export function shelfKind(units: () => Unit): ListKind<ShelfItem> {
  return {
    ...KEPT_SHELF,
    name: 'shelf',
    call: ({ name }) => name,
    words: 'the shelf',
    start: () => startShelf(units() === 'in' ? 'inch' : 'metric'),
    read: (text) => readShelf(text),
    print: (items) => printShelf(items),
    tell: (item) => itemWords(item, { unit: units(), inchStep: 16, metricStep: 0.5 }),
  };
}

/** @param units of the job, for sizes in words. */
export function stockKind(units: () => Unit): ListKind<StockSheet> {
  const showing = (): Showing => ({ unit: units(), inchStep: 64, metricStep: 0.1 });
  return {
    ...KEPT_STOCK,
    name: 'stock',
    words: 'the stock',
    call: ({ board }) => board,
    start: () => [],
    read: (text) => readStock(text),
    print: (list) => printStock(list),
    // The file is the user's: columns of their own stay, and cells as they wrote them.
    write: (text, list, hints) => editStock(text, list, { ...hints, withNotes: true }),
    tell: (sheet) => stockRowWords(sheet, showing()),
    readUse: (text) => {
      const read = parseUseRecord(text);
      return read.ok ? good({ ...read.value, back: stockWork(read.value.back, showing(), 'take back') }) : read;
    },
  };
}
