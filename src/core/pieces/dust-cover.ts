/** The paper over the back of a frame. */
import { lengthText, MM_PER_INCH, type Showing } from '../units';
import { orderSize } from './order-size';
import type { Piece } from './piece';
import type { FrameMoulding } from './moulding';

/** How far its edge stays inside the frame's outer edge, mm. Common practice, no source. */
const INSET = { in: MM_PER_INCH / 8, mm: 3, cm: 3 } as const;

/** Smaller than the outside on every side, and still on the wood all round. */
export function dustCoverPiece({ outside, section }: FrameMoulding, comesWithFrame: boolean, showing: Showing): Piece {
  const wood = section.width - section.lip;
  const inset = Math.min(INSET[showing.unit], wood / 2);
  const cut = { width: outside.width - 2 * inset, height: outside.height - 2 * inset };
  const area = cut.width * cut.height;
  return {
    kind: 'dust cover',
    name: 'Dust cover',
    material: 'paper',
    count: 1,
    cut,
    order: orderSize(outside, { width: Infinity, height: Infinity }, showing),
    area: { full: area, net: area },
    comesWithFrame,
    rule: `${lengthText(inset, showing)} inside the outside of the frame on every side; glue it on larger, as large as the outside, and trim it there`,
  };
}
