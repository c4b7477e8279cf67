/** How large a piece is as it lies on its sheet. */
import type { Size } from '../geometry/box';
import type { WantedPiece } from './ask';

/** A turned piece lies as wide as it is high. */
export function sizeOnSheet({ width, height }: WantedPiece, turned: boolean): Size {
  return turned ? { width: height, height: width } : { width, height };
}
