/** One edge of the raw parallel curve of an outline: which edge it follows, or what else it is there for. */
import { line, type Edge } from './edge';
import type { Point } from './box';

export interface Strand {
  readonly edge: Edge;
  /** The index of the edge it follows; none of what joins two at a corner. */
  readonly follows?: number;
  /** True of what only closes the raw curve and lies nearer to the outline than its parallel curve does. */
  readonly within: boolean;
}

/** Lines through points, which close the raw curve and are never part of the parallel one. */
export function linesWithin(points: readonly Point[]): Strand[] {
  return points.slice(1).map((to, index) => ({ edge: line(points[index] ?? to, to), within: true }));
}
