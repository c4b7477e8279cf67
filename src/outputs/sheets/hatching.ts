/** Hatching of waste: strokes that rise to the right, within a box. */
import { heightOf, widthOf, type Box, type Point } from '../../core/geometry/box';

/** @param apart about how far from one to the next, across or up. */
export function hatched(box: Box, apart: number): (readonly [Point, Point])[] {
  const [wide, high] = [widthOf(box), heightOf(box)];
  const count = Math.floor((wide + high) / apart);
  return Array.from({ length: count }, (_, index) => (index + 0.5) * ((wide + high) / Math.max(1, count))).map(
    (off) => {
      const [low, far] = [Math.max(0, off - high), Math.min(wide, off)];
      return [
        { x: box.left + low, y: box.top - (off - low) },
        { x: box.left + far, y: box.top - (off - far) },
      ];
    },
  );
}
