/** Which edges of many come near enough to one another to meet, found by a sweep across their boxes. */
import type { Edge } from './edge';
import { boxesMeet } from './meetings';
import { boundsOf } from './outline';
import { SAME } from './tolerance';

/** Calls back with the indices of every two edges whose boxes meet, the lower index first. */
export function eachPair(edges: readonly Edge[], tell: (lower: number, higher: number) => void): void {
  const boxes = edges.map((edge, index) => ({ box: boundsOf([edge]), index }));
  const sorted = boxes.toSorted((a, b) => a.box.left - b.box.left);
  let open: typeof boxes = [];
  for (const next of sorted) {
    open = open.filter(({ box }) => box.right + SAME >= next.box.left);
    for (const { box, index } of open)
      if (boxesMeet(box, next.box)) tell(Math.min(index, next.index), Math.max(index, next.index));
    open.push(next);
  }
}
