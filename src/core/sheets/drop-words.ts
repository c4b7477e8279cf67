/** What falls out of windows, in words: what has to be cut before such a part is there, and what of a mat is cut further. */
import type { Point, Size } from '../geometry/box';
import { counted, listed } from '../phrases';
import { lengthText, sizeText, type Showing } from '../units';
import type { Stock } from './ask';
import type { PlannedBoard } from './planned-board';

type Planned = Pick<PlannedBoard, 'ask' | 'plan'>;

/** A sheet that falls out of a window of a piece. */
interface Drop {
  /** Place in the plan, from 0. */
  readonly place: number;
  readonly window: string;
  /** The mat's own number and name. */
  readonly number: number;
  readonly name: string;
  readonly stock: Stock;
}

/**
 * What is done before a sheet is there: `Cut window A of piece 3 (Mat layer 1) first; what falls out is this part.` Of a
 * shape, also what is cut out of that. Empty of what is fetched.
 *
 * @param places of sheets that are told together, from 0.
 */
export function cutFirstWords(board: Planned, places: readonly number[], showing: Showing): string {
  const drops = dropsOf(board).filter(({ place }) => places.includes(place));
  const [first] = drops;
  if (!first) return '';
  const pieces = drops.length === 1 ? `piece ${first.number}` : `pieces ${listed(drops.map(({ number }) => `${number}`))}`; // prettier-ignore
  const cutting = `Cut window ${first.window} of ${pieces} (${first.name}) first`;
  const { stock } = first;
  if (stock.window?.within) return `${cutting}. ${squaringWords(stock, stock.window.within, drops.length, showing)}`;
  const parts = drops.length === 1 ? 'is this part' : `are these ${counted(drops.length, 'part')}`;
  return `${cutting}; what falls out ${parts}.`;
}

/** How a shape that falls out is made a rectangle. */
function squaringWords(size: Size, { x, y }: Point, count: number, showing: Showing): string {
  const each = count === 1 ? 'what falls out' : 'each that falls out';
  const [left, bottom] = [x, y].map((far) => lengthText(far, showing));
  return `Out of ${each} cut a rectangle of ${sizeText(size, showing)}: seen from the front it begins ${left} from the furthest left of it and ${bottom} from its lowest point.`;
}

/** Which windows of a sheet's mats give later sheets: `Keep what falls out of window A of piece 3: it is sheet 5.` */
export function keepDropWords(board: Planned, places: readonly number[]): string {
  const numbers = new Set(
    places.flatMap((place) => board.plan.sheets[place]?.pieces.map(({ number }) => number) ?? []),
  );
  const drops = dropsOf(board).filter(({ number }) => numbers.has(number));
  const told = drops.map(({ window, number, place }) => `window ${window} of piece ${number}, which is sheet ${place + 1}`); // prettier-ignore
  return told.length === 0 ? '' : `Keep what falls out of ${listed(told)}.`;
}

/** Each by the copy of its mat that it falls out of: the first such sheet out of the first copy that is cut. */
function dropsOf({ ask, plan: { sheets } }: Planned): Drop[] {
  const pieces = sheets.flatMap((sheet) => sheet.pieces);
  const taken = new Map<string, number>();
  return sheets.flatMap(({ stock }, place): Drop[] => {
    const { id, window } = stock;
    const mat = window && ask.pieces[window.piece];
    if (!mat) return [];
    const nth = taken.get(id) ?? 0;
    taken.set(id, nth + 1);
    // By what it is called, since a plan that was sent elsewhere holds copies of what was asked.
    const copy = pieces.filter(({ piece }) => piece.id === mat.id)[nth];
    return copy ? [{ place, window: window.name, number: copy.number, name: mat.id, stock }] : [];
  });
}
