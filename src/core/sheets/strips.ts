/**
 * Pieces in strips as thick as the first of each: the plain way to cut many pieces of few sizes, and best where they fill
 * a sheet without a rest, which a search by worth passes over.
 */
import type { Field, FieldPiece } from './field';
import { Sheets } from './insert';
import type { OpenSheet, Spot } from './open-sheet';

/** How pieces lie in strips. */
export interface StripManner {
  /** 1: strips lie one above another; 0: they stand side by side. */
  readonly way: 0 | 1;
  /** Which side of a piece that may turn lies across its strip. */
  readonly across: 'as it is' | 'shorter' | 'longer';
  /** Of the stock, where a piece fits it. */
  readonly stock: number;
}

interface Laid {
  readonly width: number;
  readonly height: number;
  readonly turned: boolean;
  /** Across the strip. */
  readonly thickness: number;
}

/** Undefined where a piece finds no place. The thickest strips first, each piece where it leaves the least across. */
export function inStrips(field: Field, manner: StripManner): Sheets | undefined {
  const laid = field.pieces.map((piece) => layOf(piece, manner));
  const along = (index: number) => laid[index]!.width + laid[index]!.height - laid[index]!.thickness;
  const order = laid
    .map((_, index) => index)
    .sort((a, b) => laid[b]!.thickness - laid[a]!.thickness || along(b) - along(a) || a - b);
  const sheets = new Sheets([], field);
  for (const index of order) if (!place(sheets, index, laid[index]!, field, manner)) return undefined;
  return sheets;
}

function layOf({ width, height, mayTurn }: FieldPiece, { way, across }: StripManner): Laid {
  const thickness = way === 1 ? height : width;
  const other = way === 1 ? width : height;
  const turned = mayTurn && (across === 'shorter' ? thickness > other : across === 'longer' && thickness < other);
  return turned
    ? { width: height, height: width, turned, thickness: other }
    : { width, height, turned: false, thickness };
}

function place(sheets: Sheets, piece: number, laid: Laid, field: Field, { way, stock }: StripManner): boolean {
  let best: { readonly sheet: OpenSheet; readonly spot: Spot } | undefined;
  let least = Infinity;
  for (const sheet of sheets.list) {
    for (const spot of sheet.spots) {
      const { width, height } = spot.free;
      const rest = (way === 1 ? height : width) - laid.thickness;
      if (width < laid.width || height < laid.height || rest >= least || mayNotBe(spot, laid, field, way)) continue;
      best = { sheet, spot };
      least = rest;
    }
  }
  if (!best) {
    const opened = openFor(sheets, laid, field, stock);
    const spot = opened?.spots[0];
    if (!opened || !spot || mayNotBe(spot, laid, field, way)) return false;
    best = { sheet: opened, spot };
  }
  best.sheet.place(best.spot, { piece, ...laid, uprightFirst: uprightFirst(best.spot, way) }, field.trees);
  return true;
}

/** In what is left of a stack of strips a strip is cut off first, in what is left of a strip a piece. */
function uprightFirst({ parent }: Spot, way: 0 | 1): boolean {
  const isStack = !parent || parent.way === way;
  return way === 1 ? !isStack : isStack;
}

/** With too few stages left, or by a longer cut than the cutter makes. */
function mayNotBe(
  { free, parent, depth }: Spot,
  { width, height }: Laid,
  { stages, longest }: Field,
  way: 0 | 1,
): boolean {
  const [beside, above] = [free.width > width, free.height > height];
  if (!beside && !above) return false;
  const upright = beside && (!above || uprightFirst({ free, parent, depth }, way));
  if ((upright ? free.height : free.width) > longest) return true;
  if (beside && above && (upright ? width : height) > longest) return true;
  // A cut the way of the one that the spot lies in is one of its own, and no further stage.
  return depth + (parent?.way === (upright ? 0 : 1) ? 0 : 1) + (beside && above ? 1 : 0) > stages;
}

/** The kind asked for, else the cheapest for its area that there is one more of. */
function openFor(sheets: Sheets, { width, height }: Laid, field: Field, wanted: number): OpenSheet | undefined {
  const stock = [wanted, ...field.byPrice].find((index) => {
    const kind = field.stock[index]!;
    return width <= kind.width && height <= kind.height && sheets.used(index) < kind.count;
  });
  return stock === undefined ? undefined : sheets.list[sheets.open(stock)];
}
