/** Motions of a mat or of a part of it: a quarter turn, or turning over; each says where the sides come to. */
import type { PerSide, Side } from '../geometry/box';

export const MOTION_NAMES = ['left', 'right', 'left-right', 'top-bottom'] as const;
export type MotionName = (typeof MOTION_NAMES)[number];

export interface Motion {
  /** What is done, in words. */
  readonly words: string;
  /** Where each side comes to, seen from the front. */
  readonly to: PerSide<Side>;
  /** Degrees by which things turn; 0 where they are turned over instead. */
  readonly anticlockwise: 0 | 90 | 270;
}

export const MOTIONS: Readonly<Record<MotionName, Motion>> = {
  left: {
    words: 'Turn left',
    to: { left: 'bottom', bottom: 'right', right: 'top', top: 'left' },
    anticlockwise: 90,
  },
  right: {
    words: 'Turn right',
    to: { left: 'top', top: 'right', right: 'bottom', bottom: 'left' },
    anticlockwise: 270,
  },
  'left-right': {
    words: 'Mirror left for right',
    to: { left: 'right', right: 'left', top: 'top', bottom: 'bottom' },
    anticlockwise: 0,
  },
  'top-bottom': {
    words: 'Mirror top for bottom',
    to: { left: 'left', right: 'right', top: 'bottom', bottom: 'top' },
    anticlockwise: 0,
  },
};

/** True where width and height change places. */
export function isQuarterTurn({ anticlockwise }: Motion): boolean {
  return anticlockwise !== 0;
}

/** True where what stood from left to right (from the top down) then stands the other way along. */
export function isReversed({ to }: Motion, axis: 'across' | 'up'): boolean {
  const start = to[axis === 'across' ? 'left' : 'top'];
  return start === 'right' || start === 'bottom';
}

/** What is said of some sides, said of those they come to. */
export function movedSides<T>(sides: Partial<PerSide<T>>, { to }: Motion): Partial<PerSide<T>> {
  const moved = Object.entries(sides).map(([side, value]) => [to[side as Side], value] as const);
  return Object.fromEntries(moved);
}

/** Degrees brought to what is not a whole turn and more: 0, 90, 180 or 270. */
export function quarterOf(degrees: number): 0 | 90 | 180 | 270 {
  return (((degrees % 360) + 360) % 360) as 0 | 90 | 180 | 270;
}
