/** Puts pieces into sheets one after another, each where it leaves the most worth: the one way in which pieces get placed. */
import type { Field, FieldPiece } from './field';
import type { Mix } from './mixes';
import { OpenSheet, type Placing } from './open-sheet';
import type { Random } from './random';

export interface Insertion {
  readonly field: Field;
  readonly random: Random;
  /** Part of the places that is passed over unseen, so that no two tries are alike. */
  readonly blink: number;
  /** What all sheets together may cost. */
  readonly budget: number;
  /** Of each of the stock so many at most. */
  readonly mix?: Mix;
  /** Which of the stock is opened for a piece that has no place: one of those given, cheapest for its area first. */
  readonly choose: (open: readonly number[]) => number;
}

/** Sheets of one try: those that were taken over from another are copied before another tree is put in them. */
export class Sheets {
  readonly #own = new Set<OpenSheet>();
  cost: number;

  constructor(
    readonly list: OpenSheet[],
    private readonly field: Field,
  ) {
    this.cost = list.reduce((sum, { stock }) => sum + field.stock[stock]!.cost, 0);
  }

  /** The sheet at an index, to be changed. */
  own(index: number): OpenSheet {
    const sheet = this.list[index]!;
    if (this.#own.has(sheet)) return sheet;
    const copy = sheet.copy();
    this.#own.add(copy);
    this.list[index] = copy;
    return copy;
  }

  open(stock: number): number {
    const { width, height, cost, depth } = this.field.stock[stock]!;
    const sheet = new OpenSheet(stock, this.field.trees.free(width, height), depth);
    this.#own.add(sheet);
    this.cost += cost;
    return this.list.push(sheet) - 1;
  }

  /** Takes a sheet back. */
  shut(index: number): void {
    this.cost -= this.field.stock[this.list[index]!.stock]!.cost;
    this.list.splice(index, 1);
  }

  /** Puts sheets with nothing in them back. */
  dropEmpty(): void {
    for (let index = this.list.length - 1; index >= 0; index--) {
      if (this.list[index]!.isEmpty) this.shut(index);
    }
  }

  used(stock: number): number {
    let count = 0;
    for (const sheet of this.list) if (sheet.stock === stock) count++;
    return count;
  }
}

/** Where a piece goes, and how. */
interface Place {
  readonly sheet: number;
  readonly spot: number;
  readonly turned: boolean;
  readonly uprightFirst: boolean;
}

/** Those that found no place. Places them in the order given. */
export function insertAll(sheets: Sheets, pieces: readonly number[], insertion: Insertion): number[] {
  const left: number[] = [];
  for (const index of pieces) {
    const piece = insertion.field.pieces[index]!;
    const place = bestPlace(sheets.list, 0, piece, insertion) ?? openFor(sheets, piece, insertion);
    if (!place) {
      left.push(index);
      continue;
    }
    const sheet = sheets.own(place.sheet);
    sheet.place(sheet.spots[place.spot]!, placingOf(piece, index, place), insertion.field.trees);
  }
  return left;
}

function placingOf({ width, height }: FieldPiece, piece: number, { turned, uprightFirst }: Place): Placing {
  return { piece, width: turned ? height : width, height: turned ? width : height, turned, uprightFirst };
}

/** The place that leaves the most worth, in the sheets from one on. All of the search's time is spent here. */
function bestPlace(
  sheets: readonly OpenSheet[],
  from: number,
  piece: FieldPiece,
  { field, blink, random }: Insertion,
): Place | undefined {
  const { trees, stages, longest } = field;
  const longer = Math.max(piece.width, piece.height);
  const shorter = Math.min(piece.width, piece.height);
  let most = -Infinity;
  let [bestSheet, bestSpot, bestTurned, bestUpright] = [-1, -1, false, true];
  for (let at = from; at < sheets.length; at++) {
    const sheet = sheets[at]!;
    if (!sheet.mayTake(longer, shorter)) continue;
    const { spots } = sheet;
    for (let index = 0; index < spots.length; index++) {
      const { free, parent, depth } = spots[index]!;
      for (let way = 0; way < (piece.mayTurn ? 2 : 1); way++) {
        const width = way === 0 ? piece.width : piece.height;
        const height = way === 0 ? piece.height : piece.width;
        const beside = free.width - width;
        const above = free.height - height;
        if (beside < 0 || above < 0) continue;
        // A cut the way of the one that the spot lies in is one of its own, and no further stage.
        const upright = depth + (parent?.way === 0 ? 0 : 1);
        const lying = depth + (parent?.way === 1 ? 0 : 1);
        const nested = beside > 0 && above > 0 ? 1 : 0;
        if (
          (beside > 0 || above === 0) &&
          (beside === 0 || (upright + nested <= stages && free.height <= longest)) &&
          (above === 0 || width <= longest) &&
          (blink === 0 || random() >= blink)
        ) {
          const gain = trees.worth(beside, free.height) + trees.worth(width, above) - free.worth;
          if (gain > most) {
            most = gain;
            [bestSheet, bestSpot, bestTurned, bestUpright] = [at, index, way === 1, true];
          }
        }
        if (
          above > 0 &&
          lying + nested <= stages &&
          free.width <= longest &&
          (beside === 0 || height <= longest) &&
          (blink === 0 || random() >= blink)
        ) {
          const gain = trees.worth(free.width, above) + trees.worth(beside, height) - free.worth;
          if (gain > most) {
            most = gain;
            [bestSheet, bestSpot, bestTurned, bestUpright] = [at, index, way === 1, false];
          }
        }
      }
    }
  }
  if (bestSheet < 0) return undefined;
  return { sheet: bestSheet, spot: bestSpot, turned: bestTurned, uprightFirst: bestUpright };
}

/** A new sheet for a piece, if there is one that it fits and the budget allows. */
function openFor(sheets: Sheets, piece: FieldPiece, insertion: Insertion): Place | undefined {
  const { field, budget, choose, mix } = insertion;
  const open = field.byPrice.filter((index) => {
    const { width, height, cost, count } = field.stock[index]!;
    const most = Math.min(count, mix?.[index] ?? Infinity);
    const fits = (wide: number, high: number) => wide <= width && high <= height;
    return (
      sheets.cost + cost <= budget &&
      (fits(piece.width, piece.height) || (piece.mayTurn && fits(piece.height, piece.width))) &&
      (most === Infinity || sheets.used(index) < most)
    );
  });
  if (open.length === 0) return undefined;
  const sheet = sheets.open(choose(open));
  const place = bestPlace(sheets.list, sheet, piece, { ...insertion, blink: 0 });
  // With too few stages for it the sheet stays shut.
  if (!place) sheets.shut(sheet);
  return place;
}
