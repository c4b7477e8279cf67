/** What is to be known of a piece on a sheet, in words: of which job, how large, with which windows, where it lies. */
import { widthOf, heightOf } from '../geometry/box';
import { listed } from '../phrases';
import { sizeText, type Showing } from '../units';
import type { PlacedPiece } from './plan';

export interface CardRow {
  readonly label: string;
  readonly value: string;
}

/** @param sheet counted from 1, as sheets are told. */
export function pieceCard({ piece, turned, number, pinned }: PlacedPiece, sheet: number, showing: Showing): CardRow[] {
  const { from } = piece;
  const windows = (from?.windows ?? []).map(({ name, title, box }) => {
    const size = sizeText({ width: widthOf(box), height: heightOf(box) }, showing);
    return `${name}${title === '' || title === name ? '' : ` “${title}”`}, ${size}`;
  });
  return [
    { label: 'Piece', value: `${number}, ${from?.name ?? piece.id}` },
    ...(from ? [{ label: 'Job', value: from.title }] : []),
    { label: 'Size', value: sizeText(piece, showing) },
    { label: 'Lies', value: `on sheet ${sheet}, ${turned ? 'turned, its top to the left' : 'as it hangs'}${pinned ? ', pinned' : ''}` }, // prettier-ignore
    ...(windows.length === 0
      ? []
      : [{ label: windows.length === 1 ? 'Window' : 'Windows', value: listed(windows, 8) }]),
  ];
}
