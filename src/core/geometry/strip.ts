/** The strip between two parallel outlines, in pieces that face nearly one way: what a bevel shows of its slope. */
import type { Point } from './box';
import { directionOn, line, partOf, reversed, type Edge } from './edge';
import type { Outline } from './outline';

export interface StripPiece {
  /** Closed. */
  readonly edges: readonly Edge[];
  /** Outward from the inner outline, in the middle of the piece; a unit vector. */
  readonly normal: Point;
}

/** A piece of a curve turns by no more than this, radians. */
const TURN = Math.PI / 15;

/**
 * Pieces anticlockwise. Both outlines must have the same edges, moved apart, as an outline and its parallel curve have;
 * undefined where some have vanished on the way from one to the other.
 */
export function stripBetween(inner: Outline, outer: Outline): readonly StripPiece[] | undefined {
  if (inner.length !== outer.length) return undefined;
  return inner.flatMap((edge, index) => {
    const beside = outer[index] ?? edge;
    const count = edge.kind === 'line' ? 1 : Math.max(1, Math.ceil(Math.abs(edge.sweep) / TURN));
    return Array.from({ length: count }, (_, piece): StripPiece => {
      const [from, to] = [piece / count, (piece + 1) / count];
      const [near, far] = [partOf(edge, from, to), partOf(beside, from, to)];
      const { x, y } = directionOn(edge, (from + to) / 2);
      return {
        edges: [far, line(far.to, near.to), reversed(near), line(near.from, far.from)],
        normal: { x: y, y: 0 - x },
      };
    });
  });
}
