/** What some pieces cost of a board or glazing that is sold by its area or by the sheet. */
import type { Size } from '../geometry/box';
import { moneyText, priceOfArea, sumOf, type Money, type Price } from '../money';
import type { ShelfBoard, ShelfGlazing } from '../shelf/shelf';
import { sizeText, type Showing } from '../units';
import type { Piece } from './piece';
import { piecesPerSheet } from './sheet-count';

export interface SheetCost {
  /** What it is called on the shelf. */
  readonly name: string;
  readonly amount?: Money;
  readonly basis: string;
}

/** By the area that is bought, or by whole sheets. */
export function sheetCost(
  { name, price, size }: ShelfBoard | ShelfGlazing,
  pieces: readonly Piece[],
  showing: Showing,
  told: (amount: Money) => string = moneyText,
): SheetCost {
  if (!price) return { name, basis: `“${name}” has no price` };
  const count = pieces.reduce((sum, piece) => sum + piece.count, 0);
  const largest = largestOf(pieces);
  const at = `at ${told(price.amount)} per ${price.per}`;
  if (price.per !== 'sheet') {
    const amounts = pieces.map((piece) => areaPrice(price, boughtSize(piece))?.times(piece.count));
    const amount = amounts.every((one) => one !== undefined) ? sumOf(amounts) : undefined;
    return {
      name,
      ...(amount ? { amount } : {}),
      basis: `${count} of ${sizeText(largest, showing)} of “${name}” ${at}`,
    };
  }
  if (!size) return { name, basis: `“${name}” is sold by the sheet, and the shelf does not say how large one is` };
  const each = piecesPerSheet(largest, size);
  const sheet = sizeText(size, showing);
  if (each === 0)
    return { name, basis: `a sheet of “${name}” is ${sheet}, smaller than ${sizeText(largest, showing)}` };
  const sheets = Math.ceil(count / each);
  const basis = `${sheets} ${sheets === 1 ? 'sheet' : 'sheets'} of “${name}”, ${sheet}, each good for ${each} of this size, ${at}`;
  return { name, amount: price.amount.times(sheets), basis };
}

/** Side by side in decimals, so that no last bits of a double come into money. */
function areaPrice(price: Price, { width, height }: Size): Money | undefined {
  return priceOfArea({ ...price, amount: price.amount.times(width) }, height);
}

/** Glazing is ordered to size, boards are cut from what is there. */
function boughtSize({ kind, order, cut }: Piece): Size {
  return kind === 'glazing' ? order : cut;
}

function largestOf(pieces: readonly Piece[]): Size {
  const sizes = pieces.map(boughtSize);
  return {
    width: Math.max(...sizes.map(({ width }) => width)),
    height: Math.max(...sizes.map(({ height }) => height)),
  };
}
