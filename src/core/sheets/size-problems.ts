/** What is wrong with the sizes of sheets and pieces before any plan is made, and which sheet would do. */
import type { Size } from '../geometry/box';
import type { Problem } from '../problem';
import { lengthText, sizeText, type Showing } from '../units';
import { trimOf, type SheetsAsk, type Stock, type WantedPiece } from './ask';
import { usualSheet } from './board-stock';
import { grainUp, type StockSheet } from './stock-sheet';

export function sizeTaken(board: string, showing: Showing): Problem {
  const size = sizeText(usualSheet(showing.unit), showing);
  return {
    code: 'sheet-size-taken',
    severity: 'note',
    at: 'stock',
    message: `How large the sheets of “${board.slice(0, 60)}” are, is not said; ${size} is taken (common practice). List them in the stock, or say it on the shelf.`,
    value: size,
    remedy: 'a list of stock, or a shelf',
  };
}

/** Says which side misses, which sheet of the whole list would do, and that two halves can be joined. */
export function tooLarge(
  board: string,
  ask: SheetsAsk,
  { stock: all }: { readonly stock: readonly StockSheet[] },
  showing: Showing,
): Problem[] {
  const sheets = ask.stock.filter(({ kind }) => kind !== 'fallout');
  return ask.pieces.flatMap((piece): Problem[] => {
    if (sheets.some((sheet) => fitOf(piece, roomOf(sheet, ask), ask) === 'fits')) return [];
    const size = sizeText(piece, showing);
    const uncut = sheets.find((sheet) => fitOf(piece, roomOf(sheet, ask), ask) === 'not cut');
    if (uncut) return [beyondCutter(piece, uncut, ask, showing)];
    const largest = sheets.reduce((a, b) => (b.width * b.height > a.width * a.height ? b : a));
    const limit = sizeText(largest, showing);
    const others = all.filter((one) => one.board.toLowerCase() !== board.toLowerCase() && fitOf(piece, grainUp(one), ask) === 'fits'); // prettier-ignore
    return [
      {
        code: 'piece-larger-than-sheets',
        severity: 'error',
        at: 'stock',
        message: `“${piece.id}”, ${size}, comes from no sheet of “${board}”: the largest is ${limit}${whyNot(piece, largest, ask, showing)}. ${whatWould(others, showing)}${trimOf(largest, ask) > 0 ? ', trim less' : ''}, or make it of two parts and join them where the joint does not show.`,
        value: size,
        limit,
        remedy: 'a larger sheet',
      },
    ];
  });
}

/** What trimming leaves of a sheet. */
function roomOf(stock: Stock, ask: SheetsAsk): Size {
  const { width, height } = stock;
  const off = 2 * trimOf(stock, ask);
  return { width: width - off, height: height - off };
}

/** Of lengths that were read in another unit, mm. */
const LAST_BITS = 1e-6;

/** Whether a piece lies on a sheet, and whether the cutter can get it out of there. */
function fitOf(
  { width, height, mayTurn }: WantedPiece,
  room: Size,
  { longestCut }: SheetsAsk,
): 'fits' | 'not cut' | 'no' {
  const ways = mayTurn ? [{ width, height }, { width: height, height: width }] : [{ width, height }]; // prettier-ignore
  const lying = ways.filter((way) => way.width <= room.width + LAST_BITS && way.height <= room.height + LAST_BITS);
  if (lying.length === 0) return 'no';
  const longest = (longestCut ?? Infinity) + LAST_BITS;
  const canBeCut = lying.some((way) => {
    const beside = room.width - way.width > LAST_BITS;
    const above = room.height - way.height > LAST_BITS;
    const uprightFirst = (!beside || room.height <= longest) && (!above || way.width <= longest);
    const lyingFirst = (!above || room.width <= longest) && (!beside || way.height <= longest);
    return uprightFirst || lyingFirst;
  });
  return canBeCut ? 'fits' : 'not cut';
}

/** `, of which trimming 3 1/2 in all round leaves 9 x 13 in, and 16 in is more than 9 in`: what is trimmed off is named. */
function whyNot(piece: WantedPiece, sheet: Stock, ask: SheetsAsk, showing: Showing): string {
  const room = roomOf(sheet, ask);
  if (room.width === sheet.width) return whichSide(piece, room, showing);
  const leaves = `, of which trimming ${lengthText(trimOf(sheet, ask), showing)} all round leaves`;
  if (room.width <= 0 || room.height <= 0) return `${leaves} nothing`;
  return `${leaves} ${sizeText(room, showing)}${whichSide(piece, room, showing)}`;
}

/** `, and 50 in is more than 48 in`: the side that misses whichever way round it lies. */
function whichSide(piece: WantedPiece, room: Size, showing: Showing): string {
  const short = (one: Size) => Math.min(one.width, one.height);
  const long = (one: Size) => Math.max(one.width, one.height);
  const told = (size: number) => lengthText(size, showing);
  if (piece.mayTurn) {
    if (short(piece) > short(room) + LAST_BITS) return `, and ${told(short(piece))} is more than ${told(short(room))}`;
    return `, and ${told(long(piece))} is more than ${told(long(room))}`;
  }
  const side =
    piece.width > room.width + LAST_BITS
      ? `${told(piece.width)} across is more than ${told(room.width)}`
      : `${told(piece.height)} up is more than ${told(room.height)}`;
  return `, and ${side}, since grain or pattern keeps it from being turned`;
}

function whatWould(sheets: readonly StockSheet[], showing: Showing): string {
  const [least] = sheets.toSorted((a, b) => a.width * a.height - b.width * b.height);
  if (!least) return 'List a larger one';
  return `List a larger one (the list has ${sizeText(grainUp(least), showing)} of another board, “${least.board}”)`;
}

function beyondCutter(piece: WantedPiece, sheet: Stock, { longestCut = 0 }: SheetsAsk, showing: Showing): Problem {
  const limit = lengthText(longestCut, showing);
  const size = sizeText(piece, showing);
  return {
    code: 'cut-longer-than-cutter',
    severity: 'error',
    at: 'cutting',
    message: `“${piece.id}”, ${size}, can’t be cut out of ${sizeText(sheet, showing)} with cuts of ${limit} at the most. Have the sheet cut where it is bought, or give the cutter’s true length.`,
    value: size,
    limit,
    remedy: 'a longer cutter, or a sheet cut to size',
  };
}
