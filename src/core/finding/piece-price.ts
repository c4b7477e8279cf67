/** What a piece of board or glazing costs: one reckoning, whether one picture is framed or a whole show. */
import type { Size } from '../geometry/box';
import { priceOfArea, type Money } from '../money';
import type { ShelfBoard, ShelfGlazing } from '../shelf/shelf';

/** In words, for whoever wonders why a list of pieces says another sum. */
export const RECKONED =
  'Reckoned of boards and glazing is each piece’s share of a sheet that is cut into such pieces, or its area where they are sold so; no whole sheets.';

export const TOO_SMALL = 'its sheets are too small';

/** Of a sheet each piece costs the same part: as many count as lie on it all one way. What is sold by area counts by its own. */
export function pieceOf(
  { price, size }: ShelfBoard | ShelfGlazing,
  piece: Size,
): { readonly amount: Money } | { readonly why: string } {
  if (!price) return { why: 'no price on the shelf' };
  const count = size && Math.max(countOn(size, piece), countOn(size, { width: piece.height, height: piece.width }));
  if (count === 0) return { why: TOO_SMALL };
  if (price.per === 'sheet') {
    return count === undefined ? { why: 'a price by the sheet, and no size of a sheet' } : { amount: price.amount.div(count) }; // prettier-ignore
  }
  const amount = priceOfArea(price, piece.width * piece.height);
  return amount ? { amount } : { why: 'a price that is not by area' };
}

/** What doubles lose on their way, mm: a sheet of its own size holds one. */
const LAST_BITS = 1e-6;

function countOn(sheet: Size, { width, height }: Size): number {
  return Math.floor((sheet.width + LAST_BITS) / width) * Math.floor((sheet.height + LAST_BITS) / height);
}
