/** Lines of the boards: by the sheets used, by area or by united inches, as the shop charges them. */
import type { Size } from '../geometry/box';
import { counted } from '../phrases';
import { money, NO_MONEY, roundedTo, sumOf, type Money } from '../money';
import { costsOf } from '../pieces/cost';
import type { Piece } from '../pieces/piece';
import { ofKind, type ShelfBoard } from '../shelf/shelf';
import { sizeText } from '../units';
import type { BoardUsed, UsedSheets } from './boards-used';
import type { LinesAsk } from './cost-ask';
import type { PricedLine } from './line';
import type { BoardPrice } from './price-list';
import { areaIn, exactMm, numberText, percentText, priceText, unitedText } from './price-text';
import { shareOut } from './share-out';

type Line = Omit<PricedLine, 'group' | 'slot' | 'what' | 'quantity'> & { readonly quantity?: string };

/** A line for each board, however many pieces are cut from it. */
export function boardLines(ask: LinesAsk, pieces: readonly Piece[]): Omit<PricedLine, 'group'>[] {
  return groups(pieces).map((group) => {
    const count = group.reduce((sum, piece) => sum + piece.count, 0);
    const what = group.map(({ name }) => name).join(', ');
    return { slot: 'boards', what, quantity: counted(count, 'piece'), ...CHARGES[ask.prices.board.charge](ask, group) };
  });
}

function groups(pieces: readonly Piece[]): Piece[][] {
  const found = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const key = piece.material.toLowerCase();
    found.set(key, [...(found.get(key) ?? []), piece]);
  }
  return [...found.values()];
}

type Charge = (ask: LinesAsk, group: readonly Piece[]) => Line;

const CHARGES: Readonly<Record<LinesAsk['prices']['board']['charge'], Charge>> = {
  'by sheet used': bySheet,
  'by area': byArea,
  'by united inches': byUnited,
};

function byArea(ask: LinesAsk, group: readonly Piece[]): Line {
  const price = priceFor(ask, group);
  const name = nameOf(group);
  if (!price || price.per === 'united in')
    return {
      basis: `no price by area of “${name}”, neither in the price list nor on the shelf`,
      lacks: { in: 'prices', what: 'board', name },
    };
  const area = areaOf(group);
  return {
    quantity: areaIn(area, price.per),
    basis: `${sizesText(ask, group)} of “${name}” at ${priceText(price.amount, ask.prices.currency)} per ${price.per}`,
    amount: price.amount.times(area).div(price.per === 'm2' ? '1000000' : '92903.04'),
  };
}

function byUnited(ask: LinesAsk, group: readonly Piece[]): Line {
  const price = priceFor(ask, group);
  const name = nameOf(group);
  if (price?.per !== 'united in') {
    return {
      basis: `no price by united inches of “${name}” in the price list`,
      lacks: { in: 'prices', what: 'board', name },
    };
  }
  const united = sumOf(group.map(({ cut, count }) => exactMm(cut.width).plus(exactMm(cut.height)).times(count)));
  return {
    quantity: unitedText(united),
    basis: `width + height of ${sizesText(ask, group)} of “${name}” at ${priceText(price.amount, ask.prices.currency)} per united in`,
    amount: price.amount.times(united).div('25.4'),
  };
}

/** Of this board by name, else of every board, else by area from the shelf. */
function priceFor({ prices, shelf }: LinesAsk, group: readonly Piece[]): BoardPrice | undefined {
  const name = nameOf(group).toLowerCase();
  const listed = prices.board.prices.get(name) ?? prices.board.prices.get('');
  if (listed) return listed;
  const price = onShelf(shelf, name)?.price;
  return price && (price.per === 'm2' || price.per === 'sq ft') ? { amount: price.amount, per: price.per } : undefined;
}

function bySheet(ask: LinesAsk, group: readonly Piece[]): Line {
  const { shelf, prices, boards } = ask;
  const name = nameOf(group);
  const used = boards?.used.find(({ board }) => board.toLowerCase() === name.toLowerCase());
  if (boards && used?.sheets.every(({ price }) => price)) return bySheetsPlanned(ask, used, boards.job);
  const board = onShelf(shelf, name);
  if (prices.board.sharesWaste || board?.price?.per !== 'sheet' || !board.size) return byWholeSheets(ask, group);
  const area = areaOf(group);
  const sheet = areaOfSize(board.size);
  return {
    basis: `${sizesText(ask, group)}, ${shareText(area, sheet)} of a sheet of “${name}”, ${sizeText(board.size, ask.showing)}, at ${priceText(board.price.amount, prices.currency)}; the waste is not charged`,
    amount: board.price.amount.times(area).div(sheet),
  };
}

/** With all that is left over of the sheets that this job takes. */
function byWholeSheets({ job, shelf, made, showing, prices }: LinesAsk, group: readonly Piece[]): Line {
  const told = (amount: Money) => priceText(amount, prices.currency);
  const [line] = costsOf(job, shelf, { pieces: group, frame: made.moulding }, showing, told).lines;
  return { basis: line?.basis ?? '', ...(line?.amount ? { amount: line.amount } : {}) };
}

/** Of sheets that several jobs share; each of them has a price. Where the waste is shared, what all pay is what the sheets cost. */
function bySheetsPlanned(ask: LinesAsk, { board, sheets, areas }: BoardUsed, job: number): Line {
  const { prices, showing } = ask;
  const parts = areas.map(squareMm);
  const own = parts[job] ?? NO_MONEY;
  const told = ({ size, count, isRemnant, price = NO_MONEY }: UsedSheets) => {
    const sheet = `${counted(count, isRemnant ? 'remnant' : 'sheet')} of “${board}”, ${sizeText(size, showing)}`;
    if (isRemnant) return `${sheet}, that ${count === 1 ? 'is' : 'are'} paid for already`;
    return `${sheet}, at ${priceText(price, prices.currency)}`;
  };
  const whole = sumOf(sheets.map(({ price = NO_MONEY, count }) => price.times(count)));
  const list = sheets.map(told).join(', ');
  if (!prices.board.sharesWaste) {
    const of = sumOf(sheets.map(({ size, count }) => areaOfSize(size).times(count)));
    return {
      basis: `${list}: ${shareText(own, of)} of that by area; the waste is not charged`,
      amount: of.isZero() ? NO_MONEY : whole.times(own).div(of),
    };
  }
  const of = sumOf(parts);
  const { places } = prices.currency;
  const amount = shareOut(whole, parts, places)[job] ?? NO_MONEY;
  const exact = of.isZero() ? NO_MONEY : whole.times(own).div(of);
  const moved = amount.eq(roundedTo(exact, places)) ? '' : `; rounded ${amount.lt(exact) ? 'down' : 'up'}, so that all shares make the whole`; // prettier-ignore
  return {
    basis: `${list}: ${shareText(own, of)} by area of all pieces cut from that, waste shared${moved}`,
    amount,
  };
}

function nameOf([first]: readonly Piece[]): string {
  return first?.material ?? '';
}

function onShelf(shelf: LinesAsk['shelf'], name: string): ShelfBoard | undefined {
  return ofKind(shelf, 'board').find((board) => board.name.toLowerCase() === name.toLowerCase());
}

function areaOf(group: readonly Piece[]): Money {
  return sumOf(group.map(({ cut, count }) => areaOfSize(cut).times(count)));
}

function areaOfSize({ width, height }: Size): Money {
  return exactMm(width).times(exactMm(height));
}

function squareMm(area: number): Money {
  return money(area.toFixed(6));
}

function shareText(part: Money, whole: Money): string {
  return percentText(part.times(100).div(whole));
}

/** `2 of 16 x 20 in, 1 of 15 3/4 x 19 3/4 in`. */
function sizesText({ showing }: LinesAsk, group: readonly Piece[]): string {
  const alike = new Map<string, number>();
  for (const { cut, count } of group) {
    const size = sizeText(cut, showing);
    alike.set(size, (alike.get(size) ?? 0) + count);
  }
  return [...alike].map(([size, count]) => `${numberText(money(count), 0)} of ${size}`).join(', ');
}
