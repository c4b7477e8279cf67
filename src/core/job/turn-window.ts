/** A written window turned by a quarter or turned over, as little of it said anew as the motion asks for. */
import { DEFAULT_POLYGON_SIDES } from './defaults';
import { isQuarterTurn, MOTIONS, movedSides, quarterOf, type Motion, type MotionName } from './motion';
import { turnedSize } from './size-text';
import type { WrittenWindow } from './written';
import type { WrittenJoined } from './written-joined';
import type { WrittenShape } from './written-shape';

export type WindowFields = Omit<WrittenWindow, 'kind'>;

interface Moved<W> {
  readonly window: W;
  /** True where its picture had to be turned upside down, since it is turned as one with the shape. */
  readonly isUpset: boolean;
}

export function movedWindow<W extends WindowFields>(window: W, motion: Motion): Moved<W> {
  return isQuarterTurn(motion) ? { window: turned(window, motion), isUpset: false } : mirrored(window, motion);
}

function turned<W extends WindowFields>(window: W, motion: Motion): W {
  const sized = window.size === undefined ? window : { ...window, size: turnedSize(window.size) };
  const isShownBySize =
    window.picture === undefined && !window.joined?.length && symmetryOf(window.shape) === 'quarter';
  return isShownBySize ? sized : withTurn(sized, (window.turned ?? 0) + motion.anticlockwise);
}

/**
 * A sheet of paper can't be turned over, so a picture stays as it is and only the opening is mirrored: what is joined to it
 * changes sides, a shape that points up has to point down, and only one that is not alike on its left and right, such as a
 * drawing of one's own, has to be said to be turned over itself, together with what is joined to it.
 */
function mirrored<W extends WindowFields>(window: W, motion: Motion): Moved<W> {
  const { joined, picture, turned: degrees = 0 } = window;
  const symmetry = symmetryOf(window.shape);
  const isAcross = (motion.to.left === 'right') !== (degrees % 180 !== 0);
  const isEven = symmetry === 'quarter' || symmetry === 'half';
  const way = isAcross || !isEven ? 'left-right' : 'top-bottom';
  const over =
    symmetry === 'none'
      ? turnedOver(window)
      : joined
        ? { ...window, joined: joined.map((part) => mirroredPart(part, way)) }
        : window;
  return isAcross || isEven
    ? { window: over, isUpset: false }
    : { window: withTurn(over, degrees + 180), isUpset: picture !== undefined };
}

function mirroredPart(part: WrittenJoined, way: MotionName): WrittenJoined {
  const placed = part.at === undefined ? part : { ...part, at: movedSides(part.at, MOTIONS[way]) };
  const symmetry = symmetryOf(part.shape);
  if (symmetry === 'quarter' || symmetry === 'half') return placed;
  const degrees = part.turned ?? 0;
  const over = symmetry === 'none' ? turnedOver(placed) : placed;
  return withTurn(over, way === 'left-right' ? -degrees : 180 - degrees);
}

function turnedOver<T extends { readonly mirrored?: boolean | undefined }>(of: T): T {
  const { mirrored, ...rest } = of;
  return mirrored ? (rest as T) : { ...of, mirrored: true };
}

/** Every other key stays in its place. */
function withTurn<T extends { readonly turned?: 90 | 180 | 270 | undefined }>(of: T, degrees: number): T {
  const quarter = quarterOf(degrees);
  if (quarter !== 0) return { ...of, turned: quarter };
  const { turned: _upright, ...rest } = of;
  return rest as T;
}

/** What leaves a shape as it is: a quarter turn in a box turned with it, a half turn, being turned over left for right, or nothing. */
function symmetryOf(shape: WrittenShape | undefined): 'quarter' | 'half' | 'upright' | 'none' {
  const { kind, sides } = { sides: undefined, ...(typeof shape === 'object' ? shape : { kind: shape ?? 'rectangle' }) };
  if (kind === 'outline') return 'none';
  if (kind === 'arch' || kind === 'pointed') return 'upright';
  if (kind !== 'polygon') return 'quarter';
  const count = sides ?? DEFAULT_POLYGON_SIDES;
  return count % 4 === 0 ? 'quarter' : count % 2 === 0 ? 'half' : 'upright';
}
