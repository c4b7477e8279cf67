/** Values that are one for all sides or one for each: telling which, and going from one to the other. */
import { SIDES, type Side } from '../../core/geometry/box';
import type { Edit } from '../../core/problem';

export const SIDE_WORDS: Readonly<Record<Side, string>> = {
  left: 'Left',
  top: 'Top',
  right: 'Right',
  bottom: 'Bottom',
};

export function isPerSide(value: unknown): value is Partial<Record<Side, string | number>> {
  return typeof value === 'object' && value !== null;
}

/** Writes the one value at every side. */
export function spreadToSides(at: string, value: string | number | undefined, usual: string): Edit {
  const each = value ?? usual;
  return { at, value: Object.fromEntries(SIDES.map((side) => [side, each])) };
}

/** Keeps the first side's value for all. */
export function gatherSides(at: string, value: Partial<Record<Side, string | number>>): Edit {
  return { at, value: SIDES.map((side) => value[side]).find((each) => each !== undefined) };
}
