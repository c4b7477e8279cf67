/** Pieces pinned to places on sheets, told by what they are rather than by their place in a list, so that pins outlast changes of jobs and stock. */
import type { Pin, SheetsAsk, Stock, WantedPiece } from '../../core/sheets/ask';
import type { BoardAsk } from '../../core/sheets/board-asks';
import { checkPins } from '../../core/sheets/check-pins';
import type { PlacedPiece, PlannedSheet } from '../../core/sheets/plan';
import type { Showing } from '../../core/units';

export interface HeldPin {
  /** In small letters. */
  readonly board: string;
  /** See `pieceKey` and `stockKey`. */
  readonly piece: string;
  readonly stock: string;
  /** Pins of one board with one number lie on one sheet. */
  readonly sheet: number;
  readonly turned: boolean;
  /** Lower left corner on the sheet, mm. */
  readonly left: number;
  readonly bottom: number;
}

/** Of which job a piece is, which of its pieces, and how large: of another size it is another piece. */
export function pieceKey(piece: WantedPiece): string {
  const { from, id, width, height } = piece;
  return [from ? `${from.job} ${from.name}` : id, width.toFixed(3), height.toFixed(3)].join(' | ');
}

export function stockKey({ kind, id, width, height, listed }: Stock): string {
  return listed ?? [kind, kind === 'fallout' ? id : '', width.toFixed(3), height.toFixed(3)].join(' | ');
}

export interface PinnedAsks {
  readonly asks: readonly BoardAsk[];
  /** Pins whose piece or sheet is not there now; they hold again once it is. */
  readonly waiting: readonly HeldPin[];
}

export function withPins(asks: readonly BoardAsk[], held: readonly HeldPin[]): PinnedAsks {
  const waiting = new Set(held);
  const pinned = asks.map((one) => {
    const own = held.filter(({ board }) => board === one.board.toLowerCase());
    // What is asked may have been asked with other pins before.
    const { pins: _, ...ask } = one.ask;
    const pins: Pin[] = [];
    for (const pin of own) {
      const found = foundPin(pin, ask, pins);
      if (!found) continue;
      pins.push(found);
      waiting.delete(pin);
    }
    return { ...one, ask: pins.length === 0 ? ask : { ...ask, pins } };
  });
  return { asks: pinned, waiting: [...waiting] };
}

/** Where only whether all is well is wanted. */
const UNSAID: Showing = { unit: 'mm', inchStep: 16, metricStep: 0.5 };

/** Undefined where its piece or its sheet is not there, or it can't stay with the others. */
function foundPin(held: HeldPin, ask: SheetsAsk, others: readonly Pin[]): Pin | undefined {
  const found = pinIn(ask, held);
  return checkPins({ ...ask, pins: [...others, found] }, UNSAID).length === 0 ? found : undefined;
}

function pinIn(ask: SheetsAsk, { piece, stock, sheet, turned, left, bottom }: HeldPin): Pin {
  return {
    sheet,
    stock: ask.stock.findIndex((one) => stockKey(one) === stock),
    piece: ask.pieces.findIndex((one) => pieceKey(one) === piece),
    turned,
    left,
    bottom,
  };
}

/** Placed pieces by the pins that hold them. */
export type PinnedPieces = ReadonlyMap<PlacedPiece, HeldPin>;

/** Which pin holds which piece of a board's sheets: a sheet's pins are told by all that is pinned on it, since copies may lie alike on several. */
export function pinnedPieces(sheets: readonly PlannedSheet[], board: string, held: readonly HeldPin[]): PinnedPieces {
  const found = new Map<PlacedPiece, HeldPin>();
  const own = held.filter((pin) => pin.board === board.toLowerCase());
  const groups = new Map(own.map(({ sheet }) => [sheet, own.filter((pin) => pin.sheet === sheet)]));
  const taken = sheets
    .map(({ stock, pieces }) => ({ stock, pieces: pieces.filter(({ pinned }) => pinned) }))
    .filter(({ pieces }) => pieces.length > 0)
    .sort((a, b) => b.pieces.length - a.pieces.length);
  for (const { stock, pieces } of taken) {
    const pinFor = (piece: PlacedPiece, pins: readonly HeldPin[]) => pins.find((pin) => isHeldBy(piece, stock, pin));
    // Of a sheet some pins may wait.
    const [group] = [...groups]
      .filter(([, pins]) => pieces.every((piece) => pinFor(piece, pins)))
      .sort(([, a], [, b]) => a.length - b.length);
    if (!group) continue;
    const [sheet, pins] = group;
    groups.delete(sheet);
    for (const piece of pieces) found.set(piece, pinFor(piece, pins)!);
  }
  return found;
}

function isHeldBy({ piece, box, turned }: PlacedPiece, stock: Stock, pin: HeldPin): boolean {
  return (
    pin.piece === pieceKey(piece) &&
    pin.stock === stockKey(stock) &&
    pin.turned === turned &&
    Math.abs(pin.left - box.left) < PLACE &&
    Math.abs(pin.bottom - box.bottom) < PLACE
  );
}

/** Places that are nearer than this are one, mm: planned are whole millionths. */
const PLACE = 1e-4;

export interface Putting {
  readonly piece: PlacedPiece;
  readonly stock: Stock;
  /** What lies on the sheet it is put on. */
  readonly onSheet: readonly PlacedPiece[];
  readonly turned: boolean;
  readonly left: number;
  readonly bottom: number;
}

export type Put = { readonly held: readonly HeldPin[] } | { readonly wrong: string };

/** The pins with a piece put somewhere, in the place of its own pin if it had one; or why it can't stay there. */
export function putPin(
  { board, ask }: BoardAsk,
  held: readonly HeldPin[],
  { piece, stock, onSheet, turned, left, bottom }: Putting,
  pinned: PinnedPieces,
  showing: Showing,
): Put {
  const own = pinned.get(piece);
  const others = held.filter((pin) => pin !== own);
  // Its own pin says which sheet it is on as long as it stays there.
  const there = onSheet.map((one) => pinned.get(one)).find((pin) => pin !== undefined);
  const sheet = there?.sheet ?? Math.max(-1, ...held.map((pin) => pin.sheet)) + 1;
  const put: HeldPin = { board: board.toLowerCase(), piece: pieceKey(piece.piece), stock: stockKey(stock), sheet, turned, left, bottom }; // prettier-ignore
  const [asked] = withPins([{ board, isPriced: false, ask }], others).asks;
  const [wrong] = checkPins({ ...ask, pins: [...(asked?.ask.pins ?? []), pinIn(ask, put)] }, showing);
  return wrong ? { wrong: wrong.message } : { held: [...others, put] };
}
