/** Windows of a piece where they come to lie on its sheet. */
import { quarterTurnedBox, shift, type Box } from '../geometry/box';
import type { PlacedPiece } from './plan';

export interface WindowOnSheet {
  readonly name: string;
  /** mm from the sheet's lower left corner; of a shape the box that lies round it. */
  readonly box: Box;
  readonly isRectangle: boolean;
}

export function windowsOnSheet({ piece, box, turned }: PlacedPiece): WindowOnSheet[] {
  return (piece.from?.windows ?? []).map((window) => {
    const lying = turned ? quarterTurnedBox(window.box, piece.height) : window.box;
    return { ...window, box: shift(lying, { x: box.left, y: box.bottom }) };
  });
}
