/** What the pieces of a frame cost by the shelf's prices: each amount with what it is for; what has no price is not counted. */
import type { Size } from '../geometry/box';
import type { Job } from '../job/job';
import { moneyText, NO_MONEY, priceOfLength, sumOf, type Money } from '../money';
import { ofKind, type Moulding, type Shelf, type ShelfBoard, type ShelfGlazing } from '../shelf/shelf';
import { lengthText, type Showing } from '../units';
import type { FrameMoulding } from './moulding';
import { isBoard, type Piece } from './piece';
import { sheetCost } from './sheet-cost';

export interface CostLine {
  /** Such as `Glazing`, or several pieces of one board. */
  readonly what: string;
  /** Names of the pieces it is for; none of the frame itself. */
  readonly pieces: readonly string[];
  /** What it is called on the shelf; undefined: nothing of the shelf. */
  readonly name?: string;
  /** Undefined: not known, and so not counted. */
  readonly amount?: Money;
  /** What it is for, or what would have to be known. */
  readonly basis: string;
}

export interface Costs {
  readonly lines: readonly CostLine[];
  readonly counted: Money;
  /** What could not be counted, as the lines name it. */
  readonly notCounted: readonly string[];
}

/** How a price is written in a basis. */
export type PriceText = (amount: Money) => string;

/**
 * @param moulding of the shelf; undefined: none was chosen.
 * @param told how prices are written: with two decimals, unless another currency asks for others.
 */
export function costsOf(
  job: Job,
  shelf: Shelf,
  {
    pieces,
    frame,
    moulding,
  }: { readonly pieces: readonly Piece[]; readonly frame: FrameMoulding; readonly moulding?: Moulding },
  showing: Showing,
  told: PriceText = moneyText,
): Costs {
  const lines = [
    ...groups(pieces.filter(({ comesWithFrame }) => !comesWithFrame)).map((group) =>
      pieceCost(job, shelf, group, showing, told),
    ),
    frameCost(job, shelf, moulding) ?? mouldingCost(job, frame, moulding, showing, told),
  ];
  return {
    lines,
    counted: sumOf(lines.flatMap(({ amount }) => amount ?? [])),
    notCounted: lines.flatMap(({ what, amount }) => (amount ? [] : [what])),
  };
}

/** Pieces of one board are bought together. */
function groups(pieces: readonly Piece[]): Piece[][] {
  const found = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const key = isBoard(piece) ? `board ${piece.material.toLowerCase()}` : piece.kind;
    found.set(key, [...(found.get(key) ?? []), piece]);
  }
  return [...found.values()];
}

function pieceCost(job: Job, shelf: Shelf, group: readonly Piece[], showing: Showing, told: PriceText): CostLine {
  const [first] = group;
  const names = group.map(({ name }) => name);
  const what = first?.kind === 'spacer' ? 'Spacer' : names.join(', ');
  const lines = first ? sold(job, shelf, first).map((item) => sheetCost(item, group, showing, told)) : [];
  const [cheapest] = lines.toSorted((a, b) => dearness(a.amount).cmp(dearness(b.amount)));
  return { what, pieces: names, ...(cheapest ?? { basis: missing(first) }) };
}

function dearness(amount: Money | undefined): Money {
  return amount ?? NO_MONEY.plus(Infinity);
}

/** What of the shelf a piece can be cut from. */
export function sold(job: Job, shelf: Shelf, piece: Piece): (ShelfBoard | ShelfGlazing)[] {
  const { kind, material } = piece;
  if (kind === 'glazing') return ofKind(shelf, 'glazing').filter((item) => isSuch(item, job));
  const name = material.toLowerCase();
  return (kind === 'spacer' && !isBoard(piece)) || kind === 'dust cover'
    ? []
    : ofKind(shelf, 'board').filter((board) => board.name.toLowerCase() === name);
}

/** Of a size that was read in another unit, mm. */
const LAST_BITS = 1e-6;

/** Sheets of one nominal thickness differ by no more, mm. */
const ALIKE = 0.15;

function isSuch({ material, uvFilter, thickness }: ShelfGlazing, { package: { glazing } }: Job): boolean {
  if (!glazing || material !== glazing.material || uvFilter !== glazing.uvFilter) return false;
  const { least, greatest } = glazing.thickness;
  return thickness === undefined || (thickness >= least - ALIKE && thickness <= greatest + ALIKE);
}

function missing(piece: Piece | undefined): string {
  if (piece?.kind === 'glazing') return `no ${piece.material} of this thickness and kind is on the shelf`;
  if ((piece?.kind === 'spacer' && !isBoard(piece)) || piece?.kind === 'dust cover')
    return 'not among the things of a shelf';
  return `no board called “${piece?.material ?? ''}” is on the shelf`;
}

/** Of a frame that is bought ready-made; undefined where it is none of the shelf. */
function frameCost(
  { frame: { name, blank } }: Job,
  shelf: Shelf,
  moulding: Moulding | undefined,
): CostLine | undefined {
  if (name === undefined || moulding) return undefined;
  const bought = ofKind(shelf, 'frame').find((one) => one.name.toLowerCase() === name.trim().toLowerCase());
  if (!bought) return undefined;
  const what = { what: 'Frame', pieces: [], name: bought.name };
  if (!isOfSize(bought.size, blank)) return { ...what, basis: `“${bought.name}” is of another size` };
  if (!bought.price) return { ...what, basis: `“${bought.name}” has no price` };
  return { ...what, amount: bought.price.amount, basis: `“${bought.name}”, ready-made` };
}

/** Either way up. A frame that is made to fit has no size of its own. */
function isOfSize(size: Size, blank: Size | undefined): boolean {
  const isAlike = (one: number, other: number | undefined) => Math.abs(one - (other ?? NaN)) < LAST_BITS;
  return (
    (isAlike(size.width, blank?.width) && isAlike(size.height, blank?.height)) ||
    (isAlike(size.width, blank?.height) && isAlike(size.height, blank?.width))
  );
}

function mouldingCost(
  job: Job,
  { stick, section }: FrameMoulding,
  moulding: Moulding | undefined,
  showing: Showing,
  told: PriceText,
): CostLine {
  const what = { what: 'Moulding', pieces: [] };
  if (!moulding) return { ...what, basis: unknownFrame(job) };
  const amount = moulding.price && priceOfLength(moulding.price, stick);
  if (!moulding.price || !amount) return { ...what, basis: `“${section.name}” has no price` };
  const { amount: price, per } = moulding.price;
  return {
    ...what,
    amount,
    basis: `${lengthText(stick, showing)} of “${section.name}” at ${told(price)} per ${per}`,
  };
}

function unknownFrame({ frame: { name } }: Job): string {
  if (name === undefined) return 'the frame has no name; choose a frame or a moulding of the shelf';
  return `“${name}” is neither a frame nor a moulding of the shelf; add it to the shelf, or choose another`;
}
