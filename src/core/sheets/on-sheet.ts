/** A piece as it lies on its sheet: its size there, and where its windows are. */
import type { Box, Size } from '../geometry/box';
import type { WantedPiece } from './ask';
import type { PlacedPiece } from './plan';

/** A turned piece lies as wide as it is high. */
export function sizeOnSheet({ width, height }: WantedPiece, turned: boolean): Size {
  return turned ? { width: height, height: width } : { width, height };
}

/** On the sheet, mm; a turned piece has its top at the left. */
export function windowOnSheet({ piece, box, turned }: PlacedPiece, window: Box): Box {
  const { left, bottom, right, top } = turned
    ? { left: piece.height - window.top, right: piece.height - window.bottom, bottom: window.left, top: window.right }
    : window;
  return { left: box.left + left, right: box.left + right, bottom: box.bottom + bottom, top: box.bottom + top };
}
