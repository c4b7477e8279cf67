/** How far a point lies from an outline, found by many samples and then halving steps round the best; apart from the program's own way. */
import type { Point } from '../../src/core/geometry/box';
import { pointOn } from '../../src/core/geometry/edge';
import type { Outline } from '../../src/core/geometry/outline';

/** mm. */
export function nearestOnOutline(outline: Outline, at: Point): number {
  let best = Infinity;
  for (const edge of outline) {
    const far = (part: number) => {
      const { x, y } = pointOn(edge, Math.min(1, Math.max(0, part)));
      return Math.hypot(x - at.x, y - at.y);
    };
    let [part, step] = [0, 1 / 64];
    for (let sample = 0; sample <= 64; sample += 1) if (far(sample / 64) < far(part)) part = sample / 64;
    for (; step > 1e-16; step /= 2) {
      if (far(part - step) < far(part)) part -= step;
      if (far(part + step) < far(part)) part += step;
    }
    best = Math.min(best, far(part));
  }
  return best;
}
