/** What steps cost, as far as the shelf has prices: boards and glazing for the blank; all else is not counted. */
import type { Size } from '../geometry/box';
import type { GlazingMaterial } from '../job/package';
import { NO_MONEY, priceOfArea, roundedText, type Money } from '../money';
import { ofKind, type ShelfBoard, type ShelfGlazing } from '../shelf/shelf';
import type { Cost } from './judgement';
import type { Subject } from './subject';

export const NOTHING_TO_PAY: Cost = { amount: NO_MONEY, words: 'nothing to pay' };

export function notCounted(why: string): Cost {
  return { words: `not counted: ${why}` };
}

const NO_SHELF = notCounted('no shelf is given to price it by');

/** The cheapest board that does, in place of the one of that name. @param present what the job calls the board it has. */
export function boardCost(
  { shelf, layout }: Subject,
  present: string | undefined,
  does: (board: ShelfBoard) => boolean,
): Cost {
  if (shelf.length === 0) return NO_SHELF;
  const boards = ofKind(shelf, 'board');
  const { blank } = layout.frame;
  const wanted = cheapest(boards.filter(does), blank);
  if (!wanted) return notCounted('no board on the shelf that is known to do has a price for this size');
  const old = boards.filter(({ name }) => present !== undefined && sameName(name, present));
  return inPlaceOf(wanted, cheapest(old, blank));
}

/** What the shelf's board of that name is; undefined where it has none. */
export function boardNamed({ shelf }: Subject, name: string): ShelfBoard | undefined {
  return ofKind(shelf, 'board').find((board) => sameName(board.name, name));
}

export interface WantedGlazing {
  readonly material: GlazingMaterial;
  readonly uvFilter: boolean;
}

/** The cheapest glazing of a kind in place of the cheapest of another; undefined: in place of none. */
export function glazingCost({ shelf, layout }: Subject, wanted: WantedGlazing, present?: WantedGlazing): Cost {
  if (shelf.length === 0) return NO_SHELF;
  const of = (kind: WantedGlazing) =>
    ofKind(shelf, 'glazing').filter(
      ({ material, uvFilter }) => material === kind.material && uvFilter === kind.uvFilter,
    );
  const { blank } = layout.frame;
  const found = cheapest(of(wanted), blank);
  if (!found) return notCounted('no such glazing on the shelf has a price for this size');
  return inPlaceOf(found, present && cheapest(of(present), blank), present !== undefined);
}

interface Priced {
  /** `a sheet of “Warm white”`, or its name alone where it is sold by area. */
  readonly name: string;
  readonly price: Money;
}

function cheapest(items: readonly (ShelfBoard | ShelfGlazing)[], blank: Size): Priced | undefined {
  return items
    .flatMap((item): Priced[] => {
      const price = priceFor(item, blank);
      const name = `${item.price?.per === 'sheet' ? 'a sheet of ' : ''}“${item.name}”`;
      return price ? [{ name, price }] : [];
    })
    .reduce<Priced | undefined>((best, one) => (best && best.price.lte(one.price) ? best : one), undefined);
}

/** Of one piece of the blank's size: its area's worth, or the sheet it is cut from; undefined where the sheet can't hold it. */
function priceFor({ price, size }: ShelfBoard | ShelfGlazing, blank: Size): Money | undefined {
  if (!price || (size && !holds(size, blank))) return undefined;
  return price.per === 'sheet' ? price.amount : priceOfArea(price, blank.width * blank.height);
}

function holds(sheet: Size, blank: Size): boolean {
  const upright = sheet.width >= blank.width && sheet.height >= blank.height;
  return upright || (sheet.width >= blank.height && sheet.height >= blank.width);
}

/** @param replaces false where there is nothing yet in its place. */
function inPlaceOf(wanted: Priced, old: Priced | undefined, replaces = true): Cost {
  if (!old) {
    const whole = replaces ? ' in all, since what it takes the place of has no price on the shelf' : '';
    return { amount: wanted.price, words: `${roundedText(wanted.price)} for ${wanted.name}${whole}` };
  }
  const amount = wanted.price.minus(old.price);
  const more = amount.isNegative() ? 'less' : 'more';
  return { amount, words: `${roundedText(amount.abs())} ${more}: ${wanted.name} in place of ${old.name}` };
}

function sameName(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}
