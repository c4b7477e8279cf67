/** What is to be known of a piece on a sheet, in words: of which job, how large, with which windows, where it lies. */
import { widthOf, heightOf } from '../geometry/box';
import { listed } from '../phrases';
import { sizeText, type Showing } from '../units';
import type { WindowInPiece } from './piece-source';
import type { PlacedPiece } from './plan';

export interface CardRow {
  readonly label: string;
  readonly value: string;
}

/** @param sheet counted from 1, as sheets are told. */
export function pieceCard({ piece, turned, number, pinned }: PlacedPiece, sheet: number, showing: Showing): CardRow[] {
  const { from } = piece;
  const windows = windowWords(from?.windows ?? [], showing);
  return [
    { label: 'Piece', value: `${number}, ${from?.name ?? piece.id}` },
    ...(from ? [{ label: 'Job', value: from.title }] : []),
    { label: 'Size', value: sizeText(piece, showing) },
    { label: 'Lies', value: `on sheet ${sheet}, ${turned ? 'turned, its top to the left' : 'as it hangs'}${pinned ? ', pinned' : ''}` }, // prettier-ignore
    ...(windows === '' ? [] : [{ label: from?.windows.length === 1 ? 'Window' : 'Windows', value: windows }]),
  ];
}

/** Such as `A “Heron”, B “Owl”: 4 x 6 in; C: 8 x 10 in`; of many the first by name. */
function windowWords(windows: readonly WindowInPiece[], showing: Showing): string {
  const bySize = new Map<string, string[]>();
  for (const { name, title, box } of windows) {
    const size = sizeText({ width: widthOf(box), height: heightOf(box) }, showing);
    bySize.set(size, [...(bySize.get(size) ?? []), title === '' || title === name ? name : `${name} “${title}”`]);
  }
  return [...bySize].map(([size, names]) => `${listed(names, MOST_NAMED)}: ${size}`).join('; ');
}

const MOST_NAMED = 6;
