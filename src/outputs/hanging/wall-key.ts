/** Shapes of the wall template: the crosses of nails and seats, and frames as the small drawing has them. */
import type { Box, Point } from '../../core/geometry/box';
import { shared } from '../template/view-geometry';
import type { WallArea, WallMark } from './wall-area';

/** Arms of the crosses from end to end, mm; those of registration are 8. */
export const NAIL_CROSS = 10;
export const SEAT_CROSS = 6;

/** A cross; of a seat with a nail above it a lying stroke and half an upright one, like the hook itself. */
export function markLines(mark: WallMark, { x, y }: Point): readonly (readonly [Point, Point])[] {
  const arm = (mark.isMain ? NAIL_CROSS : SEAT_CROSS) / 2;
  return [
    [{ x: x - arm, y }, { x: x + arm, y }],
    [{ x, y: y - arm }, { x, y: y + arm }],
  ]; // prettier-ignore
}

/** What of the frames lies in the area. */
export function frameOutlines({ outlines, size }: WallArea): { readonly opening: Box }[] {
  const all = { left: 0, bottom: 0, right: size.width, top: size.height };
  return outlines.flatMap(({ box }) => {
    const opening = shared(box, all);
    return opening ? [{ opening }] : [];
  });
}
