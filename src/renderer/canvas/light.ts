/** Light from the upper left: how bright each slope is, and the soft shadow an edge throws on what lies below it. */
import { grow, type Box, type Side } from '../../core/geometry/box';
import type { AreaShape, Ring } from './drawing';
import { shiftedPair } from './shape-rings';

/** Brightness of the slopes that fall towards an opening: those at the left and top face away from the light. */
export const SLOPE_LIGHT: Readonly<Record<Side, number>> = { left: -0.17, top: -0.26, right: 0.32, bottom: 0.5 };

/** Brightness of the faces of a frame that rise towards its inner edge. */
export const MOULDING_LIGHT: Readonly<Record<Side, number>> = { left: 0.1, top: 0.16, right: -0.14, bottom: -0.2 };

const SOFT_STEPS = 12;

/** How much of an edge is drawn: with many windows, what is finer than a pixel costs time and cannot be seen. */
export interface Detail {
  /** Strips that make the shadow of a layer's edge look soft. */
  readonly shadows: number;
  /** Whether a bevel is drawn as four slopes, or as one in the light and one in the shade. */
  readonly fourSlopes: boolean;
}

const COARSE: Detail = { shadows: 0, fourSlopes: false };
const MEDIUM: Detail = { shadows: 2, fourSlopes: true };
const FINE: Detail = { shadows: 5, fourSlopes: true };
const FINEST: Detail = { shadows: 16, fourSlopes: true };

/** What can be seen at so many pixels a millimetre; while much is moving, less. */
export function detailAt(scale: number, muchMoves = false): Detail {
  if (muchMoves && scale < 1.4) return COARSE;
  if (scale >= 5) return FINEST;
  if (scale >= 1.4) return FINE;
  return scale >= 0.6 ? MEDIUM : COARSE;
}

/** The shadow inside openings, boxes or rings, along their left and top edges: `count` nested strips that add up to a soft one, `depth` mm wide. */
export function shadowInside(
  key: string,
  openings: readonly (Box | Ring)[],
  depth: number,
  strength: number,
  count: number,
): AreaShape[] {
  return steps(key, count, strength, (share) =>
    openings.flatMap((opening) =>
      'left' in opening ? [shadowStrip(opening, depth * share)] : shiftedPair(opening, depth * share),
    ),
  );
}

/** The shadow of a board or a frame on the wall, thrown down and to the right; `depth` mm wide. */
export function shadowOutside(key: string, box: Box, depth: number, strength: number): AreaShape[] {
  // Only what lies beyond the board is filled: large see-through areas are what costs time.
  return steps(key, SOFT_STEPS, strength, (share) => [
    ringAround(box),
    ringAround(grow(box, { left: 0, top: 0, right: depth * share, bottom: depth * share * 1.2 })),
  ]);
}

function steps(key: string, count: number, strength: number, rings: (share: number) => Ring[]): AreaShape[] {
  return Array.from({ length: count }, (_, step) => ({
    kind: 'area' as const,
    key: `${key}/${step}`,
    rings: rings((step + 1) / count),
    fill: `rgba(20, 14, 6, ${strength / count})`,
  }));
}

/** An L along the left and top edges of a box. */
function shadowStrip(box: Box, width: number): Ring {
  const across = Math.min(width, (box.right - box.left) / 2);
  const up = Math.min(width, (box.top - box.bottom) / 2);
  return [
    { x: box.left, y: box.bottom },
    { x: box.left, y: box.top },
    { x: box.right, y: box.top },
    { x: box.right, y: box.top - up },
    { x: box.left + across, y: box.top - up },
    { x: box.left + across, y: box.bottom },
  ];
}

function ringAround(box: Box): Ring {
  return [
    { x: box.left, y: box.bottom },
    { x: box.right, y: box.bottom },
    { x: box.right, y: box.top },
    { x: box.left, y: box.top },
  ];
}
