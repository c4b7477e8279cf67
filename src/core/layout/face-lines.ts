/** Where the decorative lines round a window run: parallel curves of its edge on the face of the top layer. */
import { grow, type Box } from '../geometry/box';
import { parallelTo, type Parallel } from '../geometry/offset';
import { boxOutline, shiftOutline, type Outline } from '../geometry/outline';
import type { FaceLine } from '../job/job';
import { assert } from '../problem';
import type { Leaf } from './cells';
import type { LayerOpening, LayoutLayer, PlacedLine } from './layout';
import { largerEllipse, wayOf, type Way } from './shaped-openings';

/** What the curves of one window run beside. */
export interface Followed {
  /** Of the top layer. */
  readonly opening: LayerOpening;
  /** The opening of the bottom layer of a window that is no rectangle. */
  readonly outline?: Outline | undefined;
  readonly way: Way;
}

/** `openings` from the top layer down. */
export function followedBy(leaf: Leaf, window: Box, openings: readonly LayerOpening[]): Followed {
  const [opening] = openings;
  assert(opening, 'a window goes through the top layer');
  const corner = { x: window.left, y: window.bottom };
  return { opening, outline: leaf.outline && shiftOutline(leaf.outline, corner), way: wayOf(leaf) };
}

/** Those that can follow the window; the others are left out. */
export function placeLines(
  lines: readonly FaceLine[],
  followed: Followed,
  layers: readonly LayoutLayer[],
): readonly PlacedLine[] {
  return lines.flatMap((line) => placeLine(line, followed, layers) ?? []);
}

/** Undefined where the window's shape cannot be followed so far out. */
export function placeLine(line: FaceLine, followed: Followed, layers: readonly LayoutLayer[]): PlacedLine | undefined {
  const { distance, width } = line;
  const [inner, middle, outer] = [-width / 2, 0, width / 2].map((aside) =>
    besideFace(followed, layers, distance + aside),
  );
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

/** Of the bottom opening itself, as the layers' own edges are, so that no error adds up. */
function besideFace(
  { opening, outline, way }: Followed,
  layers: readonly LayoutLayer[],
  away: number,
): Parallel | undefined {
  if (!outline) return { outline: boxOutline(grow(opening.face, away)), vanished: [] };
  const reveals = layers.reduce((sum, { reveal }) => sum + reveal.left, 0);
  const [top] = layers;
  const run = top?.bevel.direction === 'standard' ? top.bevel.run : 0;
  if (way === 'axes') return parallelTo(largerEllipse(outline, reveals).outline, run + away);
  return parallelTo(outline, reveals + run + away);
}
