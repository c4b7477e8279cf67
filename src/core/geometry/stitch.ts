/** Pieces of curves put together to closed loops. */
import type { Point } from './box';
import { directionOn, distance, type Edge } from './edge';
import { SAME } from './tolerance';

/** Makes points that are one by the tolerance the very same point: the first of them it was given. */
export function pointsAsOne(): (point: Point) => Point {
  const known = new Map<string, Point[]>();
  const cell = (x: number, y: number) => `${Math.round(x / CELL)} ${Math.round(y / CELL)}`;
  return (point) => {
    const cells = new Set([-NEAR, NEAR].flatMap((dx) => [-NEAR, NEAR].map((dy) => cell(point.x + dx, point.y + dy))));
    for (const each of cells) {
      const found = known.get(each)?.find((one) => distance(one, point) <= NEAR);
      if (found) return found;
    }
    const own = cell(point.x, point.y);
    known.set(own, [...(known.get(own) ?? []), point]);
    return point;
  };
}

/** Two points, each as far off as may be. */
const NEAR = 2 * SAME;
/** Points are kept by squares of this size, mm. */
const CELL = 1e-3;

/**
 * Loops of edges that begin in the very points where others end. Where several go on, the sharpest turn to the left keeps
 * to its own region; what doesn't close is left out.
 */
export function stitch<E extends Edge>(edges: readonly E[]): E[][] {
  const leaving = new Map<Point, E[]>();
  for (const edge of edges) leaving.set(edge.from, [...(leaving.get(edge.from) ?? []), edge]);
  const take = (edge: E) => {
    const rest = (leaving.get(edge.from) ?? []).filter((each) => each !== edge);
    leaving.set(edge.from, rest);
  };
  const loops: E[][] = [];
  for (const first of edges) {
    if (!leaving.get(first.from)?.includes(first)) continue;
    const loop: E[] = [];
    let next: E | undefined = first;
    while (next) {
      take(next);
      loop.push(next);
      if (next.to === first.from) break;
      next = leftmost(next, leaving.get(next.to) ?? []);
    }
    if (loop.at(-1)?.to === first.from) loops.push(loop);
  }
  return loops;
}

function leftmost<E extends Edge>(edge: E, followers: readonly E[]): E | undefined {
  const along = directionOn(edge, 1);
  const turn = (next: E) => {
    const way = directionOn(next, 0);
    return Math.atan2(along.x * way.y - along.y * way.x, along.x * way.x + along.y * way.y);
  };
  return followers.toSorted((a, b) => turn(b) - turn(a))[0];
}
