/** What a board may be cut from: the rows of the list of stock, and what the shelf says of new sheets. */
import type { Size } from '../geometry/box';
import { inParts, priceOfArea, type Money, type Price } from '../money';
import type { ShelfBoard, ShelfGlazing } from '../shelf/shelf';
import { MM_PER_INCH, type Unit } from '../units';
import type { Stock } from './ask';
import { grainUp, hasGrain, stockName, type StockSheet } from './stock-sheet';

/** Places of decimals that costs are counted in: as many as an amount may have. */
export const COST_PLACES = 6;

export interface BoardStock {
  readonly stock: readonly Stock[];
  /** Whether every new sheet has a price, so that costs are money. */
  readonly isPriced: boolean;
  /** Whether no new sheet was listed, and a usual one is taken. */
  readonly isTaken: boolean;
  /** True where pieces may not be turned. */
  readonly hasGrain: boolean;
  /** Undefined: as is said for all. */
  readonly kerf?: number;
}

/** Of the list, and where that has no new sheets of the board, of the shelf; of neither a usual sheet. */
export function boardStock(
  listed: readonly StockSheet[],
  sold: readonly (ShelfBoard | ShelfGlazing)[],
  units: Unit,
): BoardStock {
  const rows = withShelf(listed, sold);
  const news = rows.filter(({ sheet: { kind } }) => kind === 'sheet');
  const isPriced = news.length > 0 && news.every(({ sheet: { price } }) => price !== undefined);
  const kerf = listed.find((sheet) => sheet.kerf !== undefined)?.kerf;
  // Remnants alone say nothing of new sheets; a sheet that is counted as none says that there are none.
  const isTaken = news.length === 0;
  return {
    stock: [
      ...rows.map((row, index) => stockOf(row, index, isPriced)),
      ...(isTaken ? [usualSheet(units, rows.length + 1)] : []),
    ],
    isPriced,
    isTaken,
    hasGrain: listed.some(hasGrain),
    ...(kerf === undefined ? {} : { kerf }),
  };
}

interface Row {
  readonly sheet: StockSheet;
  /** By which it is known in the list; undefined: of the shelf. */
  readonly listed?: string;
}

function withShelf(listed: readonly StockSheet[], sold: readonly (ShelfBoard | ShelfGlazing)[]): Row[] {
  const own = listed.map((sheet): Row => ({ sheet, listed: stockName(sheet) }));
  if (listed.some(({ kind }) => kind === 'sheet')) return own;
  return [
    ...own,
    ...sold.flatMap(({ name, size, price, count }): Row[] => {
      if (!size) return [];
      const amount = price && priceOfSheet(price, size);
      return [{ sheet: { board: name, kind: 'sheet', ...size, ...(amount ? { price: amount } : {}), ...(count === undefined ? {} : { count }) } }]; // prettier-ignore
    }),
  ];
}

function priceOfSheet(price: Price, { width, height }: Size): Money | undefined {
  if (price.per === 'sheet') return price.amount;
  return priceOfArea({ ...price, amount: price.amount.times(width) }, height);
}

/** Money only where every new sheet has a price: areas and amounts can't be held against one another. */
function stockOf({ sheet, listed }: Row, index: number, inMoney: boolean): Stock {
  const { kind, price, count, trim } = sheet;
  const { width, height } = grainUp(sheet);
  // What is there anyway costs nothing; new sheets of no known price count by their area.
  const cost = inMoney && price ? inParts(price, COST_PLACES) : kind === 'remnant' ? 0 : costByArea({ width, height });
  return {
    id: `${kind} ${index + 1}`,
    kind,
    width,
    height,
    cost,
    ...(count === undefined ? {} : { count }),
    ...(trim === undefined || kind !== 'sheet' ? {} : { trim }),
    ...(listed === undefined ? {} : { listed }),
  };
}

/** Mat board is sold so where nothing else is known: common practice, no source; the metric size from memory. */
const USUAL = { in: { width: 32 * MM_PER_INCH, height: 40 * MM_PER_INCH }, mm: { width: 800, height: 1200 } };

export function usualSheet(units: Unit, number = 1): Stock {
  const size = units === 'in' ? USUAL.in : USUAL.mm;
  return { id: `sheet ${number}`, kind: 'sheet', ...size, cost: costByArea(size) };
}

function costByArea({ width, height }: Size): number {
  return Math.ceil((width * height) / 1000);
}
