/** Where the dimension line of each border runs: from the outer edge to the windows, past whatever else stands there. */
import { SIDES, type Box, type Point, type Side } from '../../core/geometry/box';

export type BorderLines = Readonly<Record<Side, readonly [Point, Point]>>;

/** Places along a side that are tried in turn, the middle first. */
const SHARES = [0.5, 0.25, 0.75, 0.1, 0.9] as const;

/** Lines between an outer and an inner box, clear of `others` where one of the places tried is. */
export function borderLines(outer: Box, inner: Box, others: readonly Box[]): BorderLines {
  const lines = SIDES.map((side) => [side, lineOf(side, outer, inner, others)] as const);
  return Object.fromEntries(lines) as BorderLines;
}

function lineOf(side: Side, outer: Box, inner: Box, others: readonly Box[]): readonly [Point, Point] {
  const tried = SHARES.map((share) => lineAt(side, outer, inner, share));
  const clear = tried.find((line) => !others.some((box) => meets(line, box)));
  return clear ?? lineAt(side, outer, inner, 0.5);
}

/** From left to right or from the bottom up. */
function lineAt(side: Side, outer: Box, inner: Box, share: number): readonly [Point, Point] {
  const x = inner.left + (inner.right - inner.left) * share;
  const y = inner.bottom + (inner.top - inner.bottom) * share;
  switch (side) {
    case 'left':
      return [{ x: outer.left, y }, { x: inner.left, y }]; // prettier-ignore
    case 'right':
      return [{ x: inner.right, y }, { x: outer.right, y }]; // prettier-ignore
    case 'top':
      return [{ x, y: inner.top }, { x, y: outer.top }]; // prettier-ignore
    case 'bottom':
      return [{ x, y: outer.bottom }, { x, y: inner.bottom }]; // prettier-ignore
  }
}

function meets([from, to]: readonly [Point, Point], box: Box): boolean {
  return from.x <= box.right && to.x >= box.left && from.y <= box.top && to.y >= box.bottom;
}
