/** What falls out of windows, in words: what has to be cut before such a part is there, and what of a mat is cut further. */
import { counted, listed } from '../phrases';
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
}

/**
 * What is done before a sheet is there: `Cut window A of piece 3 (Mat layer 1) first; what falls out is this part.` Empty
 * of what is fetched.
 *
 * @param places of sheets that are told together, from 0.
 */
export function cutFirstWords(board: Planned, places: readonly number[]): string {
  const drops = dropsOf(board).filter(({ place }) => places.includes(place));
  const [first] = drops;
  if (!first) return '';
  const pieces = drops.length === 1 ? `piece ${first.number}` : `pieces ${listed(drops.map(({ number }) => `${number}`))}`; // prettier-ignore
  const parts = drops.length === 1 ? 'is this part' : `are these ${counted(drops.length, 'part')}`;
  return `Cut window ${first.window} of ${pieces} (${first.name}) first; what falls out ${parts}.`;
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
  return sheets.flatMap(({ stock: { id, window } }, place): Drop[] => {
    const mat = window && ask.pieces[window.piece];
    if (!mat) return [];
    const nth = taken.get(id) ?? 0;
    taken.set(id, nth + 1);
    // By what it is called, since a plan that was sent elsewhere holds copies of what was asked.
    const copy = pieces.filter(({ piece }) => piece.id === mat.id)[nth];
    return copy ? [{ place, window: window.name, number: copy.number, name: mat.id }] : [];
  });
}
