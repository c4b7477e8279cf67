/** Scales of the small drawings: 1 to a whole number, so that a rule can be laid on them. */
import type { Box, Point, Size } from '../../core/geometry/box';
import { heightOf, widthOf } from '../../core/geometry/box';

export interface Scaled {
  /** 1 : this. */
  readonly ratio: number;
  /** Where a point of what is drawn, from its lower left corner, lies on the page. */
  readonly at: (point: Point) => Point;
}

/** As large as it fits in the middle of a room. */
export function scaleInto(room: Box, size: Size): Scaled {
  const ratio = Math.max(1, Math.ceil(Math.max(size.width / widthOf(room), size.height / heightOf(room)) - 1e-9));
  const left = (room.left + room.right - size.width / ratio) / 2;
  const bottom = (room.bottom + room.top - size.height / ratio) / 2;
  return { ratio, at: ({ x, y }) => ({ x: left + x / ratio, y: bottom + y / ratio }) };
}

export function boxAtScale({ at }: Scaled, box: Box): Box {
  const low = at({ x: box.left, y: box.bottom });
  const high = at({ x: box.right, y: box.top });
  return { left: low.x, bottom: low.y, right: high.x, top: high.y };
}
