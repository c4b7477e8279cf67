/** How the proof lies: from the front view's coordinates, y up, to the drawing's, y down; both in mm. */
import type { Point } from '../../core/geometry/box';

export type Place = (point: Point) => Point;

/** Decimals of path data, a hundredth of what anyone can cut. */
export const FINE = { digits: 4 };
