/** The gaps between neighbouring windows, with the bridges of board they leave. */
import type { Box } from '../geometry/box';
import type { GapRule } from '../job/job';
import type { Axis, Group, Leaf } from './cells';
import type { Gap, PlacedWindow } from './layout';
import { facingAcross, turned } from './neighbours';

/** Every gap across and up. `leaves` names the groups of each window; freely placed ones have none. */
export function gapsOf(windows: readonly PlacedWindow[], leaves: readonly Leaf[]): Gap[] {
  const boxes = windows.map((window) => window.window);
  return [...gapsAlong('across', boxes, windows, leaves), ...gapsAlong('up', turned(boxes), windows, leaves)];
}

function gapsAlong(
  axis: Axis,
  boxes: readonly Box[],
  windows: readonly PlacedWindow[],
  leaves: readonly Leaf[],
): Gap[] {
  return facingAcross(boxes).flatMap(([first, second]) => {
    const a = boxes[first];
    const b = boxes[second];
    const top = windows[first]?.layers[0];
    const other = windows[second]?.layers[0];
    if (!a || !b || !top || !other) return [];
    const at = gapPath(axis, leaves[first], leaves[second]);
    const measure = (one: Box, two: Box) => (axis === 'across' ? two.left - one.right : two.bottom - one.top);
    return [
      {
        axis,
        from: a.right,
        to: b.left,
        beside: (Math.max(a.bottom, b.bottom) + Math.min(a.top, b.top)) / 2,
        between: [first, second] as const,
        gap: b.left - a.right,
        bridge: measure(top.opening, other.opening),
        faceBridge: measure(top.face, other.face),
        ...(at === undefined ? {} : { at }),
      },
    ];
  });
}

/** Path of the gap of the innermost group that holds both windows, if it strings them along this axis. */
export function gapPath(axis: Axis, one: Leaf | undefined, other: Leaf | undefined): string | undefined {
  const group = stringing(axis, one, other);
  return group?.kind === 'grid' ? group.gapAt[axis] : group?.gapAt;
}

/** The rule of that gap. */
export function gapRule(axis: Axis, one: Leaf | undefined, other: Leaf | undefined): GapRule | undefined {
  const group = stringing(axis, one, other);
  return group?.kind === 'grid' ? group.gap[axis] : group?.gap;
}

function stringing(axis: Axis, one: Leaf | undefined, other: Leaf | undefined): Group | undefined {
  const common = one?.groups.findLast((group) => other?.groups.includes(group));
  return common?.kind === 'grid' || common?.axis === axis ? common : undefined;
}
