/** Where the decorative lines round a window run: parallel curves of its edge on the face of the top layer. */
import { grow } from '../geometry/box';
import { parallelTo, type Parallel } from '../geometry/offset';
import { boxOutline } from '../geometry/outline';
import type { FaceLine } from '../job/job';
import type { LayerOpening, PlacedLine } from './layout';

/** Those that can follow the window, of which `opening` is the top layer's; the others are left out. */
export function placeLines(lines: readonly FaceLine[], opening: LayerOpening | undefined): readonly PlacedLine[] {
  return opening ? lines.flatMap((line) => placeLine(line, opening) ?? []) : [];
}

/** Undefined where the window's shape cannot be followed so far out. */
export function placeLine(line: FaceLine, opening: LayerOpening): PlacedLine | undefined {
  const { distance, width } = line;
  const [inner, middle, outer] = [-width / 2, 0, width / 2].map((aside) => besideFace(opening, distance + aside));
  if (!inner || !middle || !outer) return undefined;
  return {
    line,
    middle: middle.outline,
    inner: inner.outline,
    outer: outer.outline,
    ...(line.kind === 'groove' ? { depth: grooveDepth(line) } : {}),
    vanished: outer.vanished.length,
  };
}

/** Two slopes from the edges of the mouth meet under its middle: `width / 2 / tan(angle)`. */
export function grooveDepth({
  width,
  angleDegrees,
}: {
  readonly width: number;
  readonly angleDegrees: number;
}): number {
  return width / 2 / Math.tan((angleDegrees * Math.PI) / 180);
}

/** Of the edge that is seen, tips of its corners included, so that no part of a line comes nearer to it than is said. */
function besideFace({ face, outlines }: LayerOpening, away: number): Parallel | undefined {
  return outlines ? parallelTo(outlines.face, away) : { outline: boxOutline(grow(face, away)), vanished: [] };
}
