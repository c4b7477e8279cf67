/** The strip between two parallel outlines, in pieces that face nearly one way: what a bevel shows of its slope. */
import type { Point } from './box';
import { directionOn, distance, line, partOf, reversed, type Edge } from './edge';
import type { Outline } from './outline';
import { SAME } from './tolerance';

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
 * undefined where some have vanished on the way from one to the other, or corners were rounded.
 */
export function stripBetween(inner: Outline, outer: Outline): readonly StripPiece[] | undefined {
  if (inner.length !== outer.length || !inner.every((edge, index) => runsBeside(edge, outer[index]))) return undefined;
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

/** True of an edge and the same edge moved square to itself. */
function runsBeside(edge: Edge, other: Edge | undefined): boolean {
  if (edge.kind === 'line') {
    if (other?.kind !== 'line') return false;
    const [a, b] = [directionOn(edge, 0), directionOn(other, 0)];
    return Math.hypot(a.x - b.x, a.y - b.y) < SAME;
  }
  return other?.kind === edge.kind && distance(edge.centre, other.centre) < SAME && edge.sweep * other.sweep > 0;
}
