/** A weight that hangs by two wires: the pull in each, from the angles they make with the level. */

/** Pulls as parts of the weight that hangs. */
export interface Pulls {
  readonly left: number;
  readonly right: number;
}

/**
 * Level forces cancel and upright ones add up to the weight: `left cos a = right cos b`, `left sin a + right sin b = 1`.
 *
 * @param left angle of the left wire above the level, radians; with `right` more than 0 together and less than pi.
 */
export function pullOfTwo(left: number, right: number): Pulls {
  const both = Math.sin(left + right);
  return { left: Math.cos(right) / both, right: Math.cos(left) / both };
}

/** Pull in each of two wires that make one angle with the level, as a part of the weight: `1 / (2 sin angle)`. */
export function pullOfEach(angle: number): number {
  return 1 / (2 * Math.sin(angle));
}
