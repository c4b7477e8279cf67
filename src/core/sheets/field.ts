/** What the search works on: pieces each by itself and sheets, in grid units with the kerf added on both. */
import { trimOf, type SheetsAsk } from './ask';
import { Trees } from './cut-tree';
import { toGrid } from './grid';
import { keepingOf, USUAL_KEEP, type KeepRule } from './remnants';

export interface FieldPiece {
  /** Into the wanted pieces. */
  readonly wanted: number;
  readonly width: number;
  readonly height: number;
  /** False also of a square. */
  readonly mayTurn: boolean;
  /** In parts of the largest sheet. */
  readonly area: number;
}

export interface FieldStock {
  readonly width: number;
  readonly height: number;
  readonly cost: number;
  readonly count: number;
  /** Changes of direction that it took to have it in hand; 0 of a whole sheet. */
  readonly depth: number;
  /** Costs nothing, and is kept as it is where nothing is cut from it. */
  readonly isThere: boolean;
}

export interface Field {
  readonly pieces: readonly FieldPiece[];
  readonly stock: readonly FieldStock[];
  /** Into the stock, the cheapest for its area first. */
  readonly byPrice: readonly number[];
  readonly stages: number;
  /** Of a part with its kerf: no longer cut is made. */
  readonly longest: number;
  readonly trees: Trees;
  /** Width of a cut, which is added to every side. */
  readonly saw: number;
  /** What is worth keeping. */
  readonly keep: KeepRule;
  /** Area of the largest sheet, which areas are parts of. */
  readonly largest: number;
}

/**
 * A cut between two pieces takes one kerf, and none is taken at the far edges: every piece and every sheet a kerf larger
 * comes to the same. New sheets are trimmed all round, remnants and what falls out of windows are not.
 */
export function fieldOf(ask: SheetsAsk): Field {
  const { pieces, stock, kerf, stages, longestCut, aim, perSheet = 0, keep } = ask;
  const saw = toGrid(kerf);
  const sheets = stock.map((one): FieldStock => {
    const { width, height, cost, count, kind } = one;
    const off = 2 * toGrid(trimOf(one, ask));
    const box = { left: 0, bottom: 0, right: width, top: height };
    const isKept = kind !== 'fallout' || keepingOf(box, keep) !== 'waste';
    const price = aim === 'sheets' ? (kind === 'sheet' ? 1 : 0) : cost + (kind === 'sheet' ? perSheet : 0);
    return {
      width: toGrid(width) - off + saw,
      height: toGrid(height) - off + saw,
      cost: price,
      count: count ?? Infinity,
      depth: 0,
      isThere: price === 0 && count !== undefined && isKept,
    };
  });
  const largest = Math.max(1, ...sheets.map(({ width, height }) => width * height));
  const each = pieces.flatMap(({ width, height, count, mayTurn }, wanted) => {
    const [wide, high] = [toGrid(width) + saw, toGrid(height) + saw];
    const piece = {
      wanted,
      width: wide,
      height: high,
      mayTurn: mayTurn && wide !== high,
      area: (wide * high) / largest,
    };
    return Array.from({ length: count }, () => piece);
  });
  const least = Math.min(...each.map((piece) => Math.min(piece.width, piece.height)));
  // What no piece goes into is no stock.
  const useful = sheets.map((sheet) => (each.some((piece) => holds(sheet, piece)) ? sheet : { ...sheet, count: 0 }));
  const perArea = ({ cost, width, height }: FieldStock) => cost / (width * height);
  const byPrice = useful.flatMap(({ count }, index) => (count > 0 ? [index] : [])).sort((a, b) => perArea(sheets[a]!) - perArea(sheets[b]!) || a - b); // prettier-ignore
  return {
    pieces: each,
    stock: useful,
    byPrice,
    stages: stages ?? Infinity,
    longest: longestCut === undefined ? Infinity : toGrid(longestCut) + saw,
    trees: new Trees(largest, least),
    saw,
    keep: keep ?? USUAL_KEEP,
    largest,
  };
}

/** Whether a piece lies on a sheet, either way round where it may. */
export function holds({ width, height }: Pick<FieldStock, 'width' | 'height'>, piece: FieldPiece): boolean {
  return sidesOf(piece).some(([wide, high]) => wide <= width && high <= height);
}

/** Its ways round. */
export function sidesOf({ width, height, mayTurn }: FieldPiece): (readonly [number, number])[] {
  return mayTurn ? [[width, height], [height, width]] : [[width, height]]; // prettier-ignore
}
