/** Where the decorative lines round a window run: parallel curves of its edge on the face of the top layer. */
import { grow } from '../geometry/box';
import { nearest } from '../geometry/nearness';
import { parallelTo } from '../geometry/offset';
import { boxOutline, type Outline } from '../geometry/outline';
import { SAME } from '../geometry/tolerance';
import type { FaceLine } from '../job/job';
import type { LayerOpening, PlacedLine } from './layout';

/** Those that can follow the window, of which `opening` is the top layer's; the others are left out. */
export function placeLines(lines: readonly FaceLine[], opening: LayerOpening | undefined): readonly PlacedLine[] {
  return opening ? lines.flatMap((line) => placeLine(line, opening) ?? []) : [];
}

/**
 * Undefined where the window's shape cannot be followed so far out. Both edges run beside the middle and not beside the
 * window, so that a line is as wide everywhere as it is said to be, at corners that take another form on the way too.
 */
export function placeLine(line: FaceLine, { face, outlines }: LayerOpening): PlacedLine | undefined {
  const { distance, width } = line;
  const depth = line.kind === 'groove' ? { depth: grooveDepth(line) } : {};
  if (!outlines) {
    const [inner, middle, outer] = [-width / 2, 0, width / 2].map((aside) => boxOutline(grow(face, distance + aside)));
    return inner && middle && outer && { line, inner, middle, outer, ...depth, vanished: 0, blunted: 0 };
  }
  const middle = parallelTo(outlines.face, distance);
  const inner = middle && parallelTo(middle.outline, -width / 2);
  const outer = middle && parallelTo(middle.outline, width / 2);
  if (!inner || !outer || (middle.vanished.length > 0 && touches(inner.outline, outlines.face))) return undefined;
  const vanished = middle.vanished.length + outer.vanished.length;
  return {
    line,
    inner: inner.outline,
    middle: middle.outline,
    outer: outer.outline,
    ...depth,
    vanished,
    blunted: middle.blunted,
  };
}

/** Where bends have vanished the inner edge runs out into corners, which may reach back to the window. */
function touches(inner: Outline, face: Outline): boolean {
  return nearest(inner, face).distance < SAME;
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
