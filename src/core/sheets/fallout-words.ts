/** What falls out of windows, in words: what has to be cut before such a part is there, and what of a mat is cut further. */
import type { Point, Size } from '../geometry/box';
import { counted, listed } from '../phrases';
import { lengthText, sizeText, type Showing } from '../units';
import type { Stock } from './ask';
import type { PlannedBoard } from './planned-board';
import { USUAL_KEEP, type KeepRule } from './remnants';
import { unusedFallouts } from './unused-fallouts';

type Planned = Pick<PlannedBoard, 'ask' | 'plan'>;

/** A sheet that falls out of a window of a piece. */
interface Fallout {
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
  const fallouts = falloutsIn(board).filter(({ place }) => places.includes(place));
  const [first] = fallouts;
  if (!first) return '';
  const pieces = fallouts.length === 1 ? `piece ${first.number}` : `pieces ${listed(fallouts.map(({ number }) => `${number}`))}`; // prettier-ignore
  const cutting = `Cut window ${first.window} of ${pieces} (${first.name}) first`;
  const { stock } = first;
  if (stock.window?.within) return `${cutting}. ${squaringWords(stock, stock.window.within, fallouts.length, showing)}`;
  const parts = fallouts.length === 1 ? 'is this part' : `are these ${counted(fallouts.length, 'part')}`;
  return `${cutting}; what falls out ${parts}.`;
}

/** How a shape that falls out is made a rectangle. */
function squaringWords(size: Size, { x, y }: Point, count: number, showing: Showing): string {
  const each = count === 1 ? 'what falls out' : 'each that falls out';
  const [left, bottom] = [x, y].map((far) => lengthText(far, showing));
  return `Out of ${each} cut a rectangle of ${sizeText(size, showing)}: seen from the front it begins ${left} from the furthest left of it and ${bottom} from its lowest point.`;
}

/** Which windows of a sheet's mats give later sheets: `Keep what falls out of window A of piece 3 (sheet 5).` */
export function keepFalloutWords(board: Planned, places: readonly number[]): string {
  const numbers = new Set(
    places.flatMap((place) => board.plan.sheets[place]?.pieces.map(({ number }) => number) ?? []),
  );
  const fallouts = falloutsIn(board).filter(({ number }) => numbers.has(number));
  const told = fallouts.map(({ window, number, place }) => `window ${window} of piece ${number} (sheet ${place + 1})`); // prettier-ignore
  return told.length === 0 ? '' : `Keep what falls out of ${listed(told)}.`;
}

/** Each by the copy of its mat that it falls out of: the first such sheet out of the first copy that is cut. */
function falloutsIn({ ask, plan: { sheets } }: Planned): Fallout[] {
  const pieces = sheets.flatMap((sheet) => sheet.pieces);
  const taken = new Map<string, number>();
  return sheets.flatMap(({ stock }, place): Fallout[] => {
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

/** Windows whose fallouts are of one size; how many more there are is said. */
const MOST_NAMED = 3;

/**
 * Such as `Falls out of windows and is kept: 2 of 12 x 16 in (window A of Mat layer 1 and window B of Mat layer 1).` Empty where nothing so large
 * does; what is of one size is told together.
 */
export function falloutWords(planned: Planned, showing: Showing, rule: KeepRule = USUAL_KEEP): string {
  const groups = new Map<string, { count: number; readonly from: string[] }>();
  for (const { stock, count, keeping } of unusedFallouts(planned, rule)) {
    if (keeping === 'waste') continue;
    const size = sizeText(stock, showing);
    const group = groups.get(size) ?? { count: 0, from: [] };
    group.count += count;
    group.from.push(`${inShape(stock)}${stock.id}`);
    groups.set(size, group);
  }
  if (groups.size === 0) return '';
  const told = [...groups].map(([size, { count, from }]) => `${count === 1 ? '' : `${count} of `}${size} (${listed(from, MOST_NAMED)})`); // prettier-ignore
  return `Falls out of windows and is kept: ${told.join('; ')}.`;
}

/** Said before what falls out of a window that is no rectangle. */
export function inShape({ window }: Stock): string {
  return window?.within ? 'a rectangle in ' : '';
}
