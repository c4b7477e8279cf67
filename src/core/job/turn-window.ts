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
 * A sheet of paper can't be turned over, so a picture stays as it is and only the opening is mirrored. Every shape is
 * alike on its left and right, which leaves the joined openings to move, and a shape that points up to point down.
 */
function mirrored<W extends WindowFields>(window: W, motion: Motion): Moved<W> {
  const { joined, picture } = window;
  const isLying = (window.turned ?? 0) % 180 !== 0;
  const isAcross = (motion.to.left === 'right') !== isLying;
  const isPointed = !isAcross && symmetryOf(window.shape) === 'upright';
  const within = isAcross || isPointed ? 'left-right' : 'top-bottom';
  const over = joined ? { ...window, joined: joined.map((part) => mirroredPart(part, within)) } : window;
  return isPointed
    ? { window: withTurn(over, (window.turned ?? 0) + 180), isUpset: picture !== undefined }
    : { window: over, isUpset: false };
}

function mirroredPart(part: WrittenJoined, way: MotionName): WrittenJoined {
  const placed = part.at === undefined ? part : { ...part, at: movedSides(part.at, MOTIONS[way]) };
  if (symmetryOf(part.shape) !== 'upright') return placed;
  const degrees = part.turned ?? 0;
  return withTurn(placed, way === 'left-right' ? -degrees : 180 - degrees);
}

/** Every other key stays in its place. */
function withTurn<T extends { readonly turned?: 90 | 180 | 270 | undefined }>(of: T, degrees: number): T {
  const quarter = quarterOf(degrees);
  if (quarter !== 0) return { ...of, turned: quarter };
  const { turned: _upright, ...rest } = of;
  return rest as T;
}

/** What turns and mirrors leave a shape as it is: a quarter (in a box turned with it), a half, or only left for right. */
function symmetryOf(shape: WrittenShape | undefined): 'quarter' | 'half' | 'upright' {
  const { kind, sides } = { sides: undefined, ...(typeof shape === 'object' ? shape : { kind: shape ?? 'rectangle' }) };
  if (kind === 'arch' || kind === 'pointed') return 'upright';
  if (kind !== 'polygon') return 'quarter';
  const count = sides ?? DEFAULT_POLYGON_SIDES;
  return count % 4 === 0 ? 'quarter' : count % 2 === 0 ? 'half' : 'upright';
}
