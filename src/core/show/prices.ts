/** What a picture in a frame costs, as far as the shelf's prices say: the frame, its boards and its glazing. */
import type { Size } from '../geometry/box';
import type { Job } from '../job/job';
import { layerSizes } from '../finding/cost';
import { pieceOf } from '../finding/piece-price';
import type { Money } from '../money';
import { ofKind, type Shelf, type ShelfBoard, type ShelfFrame, type ShelfGlazing } from '../shelf/shelf';
import { titled } from './words';

/** One thing that a framed picture needs. */
interface Part {
  /** In words: `board “White”`. */
  readonly name: string;
  /** How large a piece of it is in a frame of such a size. */
  readonly sizeIn?: (blank: Size) => Size;
  /** Where the frame brings it along. */
  readonly comesWith?: 'glazing' | 'mount board';
  /** What there is of it with a price; nothing: it is not counted. */
  readonly sheets: readonly (ShelfBoard | ShelfGlazing)[];
}

export interface Prices {
  /** What is counted beside the frame, and what the shelf says no price of. */
  readonly counted: readonly string[];
  readonly notCounted: readonly string[];
  /** For one picture; undefined, and why, where it can't be told. */
  of(frame: ShelfFrame): { readonly ok: true; readonly amount: Money } | { readonly ok: false; readonly why: string };
}

/**
 * Boards are found by their names, glazing by its material and UV filter; a piece costs what `pieceOf` says.
 */
export function pricesOf(shelf: Shelf, job: Job): Prices {
  const parts = partsOf(shelf, job);
  const priced = parts.filter(({ sheets }) => sheets.length > 0);
  return {
    counted: priced.map(({ name }) => name),
    notCounted: parts.filter((part) => !priced.includes(part)).map(({ name }) => name),
    of: (frame) => {
      if (!frame.price) return { ok: false, why: 'it has no price' };
      let amount = frame.price.amount;
      for (const part of priced) {
        if (part.comesWith && frame.comesWith.includes(part.comesWith)) continue;
        const least = cheapest(part.sheets, part.sizeIn?.(frame.size) ?? frame.size);
        if (!least) return { ok: false, why: `no sheet of ${part.name} is as large` };
        amount = amount.plus(least);
      }
      return { ok: true, amount };
    },
  };
}

function partsOf(shelf: Shelf, job: Job): Part[] {
  const boards = ofKind(shelf, 'board');
  const named = (board: string) => boards.filter(({ name }) => name.toLowerCase() === board.toLowerCase());
  const { glazing, mountBoard } = job.package;
  const layers = job.layers.map(({ board }, index) => ({
    name: `board ${titled(board)}`,
    sizeIn: (blank: Size) => layerSizes(job, blank)[index] ?? blank,
    sheets: priced(named(board)),
  }));
  return [
    ...layers,
    ...(mountBoard
      ? [
          {
            name: `mount board ${titled(mountBoard.board)}`,
            comesWith: 'mount board' as const,
            sheets: priced(named(mountBoard.board)),
          },
        ]
      : []),
    ...(glazing
      ? [
          {
            name: `${glazing.material}${glazing.uvFilter ? ' with UV filter' : ''}`,
            comesWith: 'glazing' as const,
            sheets: priced(
              ofKind(shelf, 'glazing').filter(
                ({ material, uvFilter }) => material === glazing.material && uvFilter === glazing.uvFilter,
              ),
            ),
          },
        ]
      : []),
  ];
}

/** What has no price, or is sold by a sheet whose size nobody knows, can't be counted. */
function priced<T extends ShelfBoard | ShelfGlazing>(sheets: readonly T[]): T[] {
  return sheets.filter(({ price, size }) => price && (price.per !== 'sheet' || size));
}

/** Undefined where every sheet is too small. */
function cheapest(sheets: Part['sheets'], piece: Size): Money | undefined {
  const amounts = sheets.flatMap((sheet) => {
    const price = pieceOf(sheet, piece);
    return 'amount' in price ? [price.amount] : [];
  });
  return amounts.length === 0 ? undefined : amounts.reduce((a, b) => (b.lessThan(a) ? b : a));
}
