/** The gaps between neighbouring windows, with the bridges of board they leave. */
import type { Box } from '../geometry/box';
import { nearest } from '../geometry/nearness';
import type { GapRule } from '../job/job';
import type { Axis, Group, Leaf, Ring } from './cells';
import type { Gap, PlacedWindow } from './layout';
import { facingAcross, turned } from './neighbours';
import { openingOutline } from './shaped-openings';

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
    const common = commonGroup(leaves[first], leaves[second]);
    // Round a ring windows stand askew, and from box to box is not from window to window.
    if (common?.kind === 'ring') {
      if (standAcross(common, leaves[first], leaves[second])) return [];
      if (!facesSquarely(windows[first], windows[second], b.left - a.right)) return [];
    }
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
        ...governing(axis, leaves[first], leaves[second]),
      },
    ];
  });
}

/** True of two windows of a ring with others of it between them both ways round. */
function standAcross({ around }: Ring, one: Leaf | undefined, other: Leaf | undefined): boolean {
  const [here, there] = [one, other].map((leaf) => (leaf ? around.indexOf(leaf) : -1));
  if (here === undefined || there === undefined || here < 0 || there < 0) return false;
  const steps = Math.abs(here - there);
  return steps > 1 && steps < around.length - 1;
}

/** True where the straight way between two boxes is the shortest between their outlines. */
function facesSquarely(one: PlacedWindow | undefined, other: PlacedWindow | undefined, gap: number): boolean {
  const [a, b] = [one?.layers.at(-1), other?.layers.at(-1)];
  return a !== undefined && b !== undefined && isNear(nearest(openingOutline(a), openingOutline(b)).distance, gap);
}

function isNear(a: number, b: number): boolean {
  return Math.abs(a - b) < 1e-6;
}

/** The written gap that two windows are held apart by, and what it is. */
function governing(axis: Axis, one: Leaf | undefined, other: Leaf | undefined): Pick<Gap, 'at' | 'rule'> {
  const common = commonGroup(one, other);
  if (common?.kind === 'ring') {
    const [middle] = common.cells;
    const isFromMiddle = common.gap !== undefined && (one === middle || other === middle);
    return isFromMiddle ? { at: common.gapAt, rule: common.gap } : {};
  }
  const group = stringing(axis, one, other);
  return group ? { at: pathOf(group, axis), rule: ruleOf(group, axis) } : {};
}

/** Path of the gap of the innermost group that holds both windows, if it strings them along this axis. */
export function gapPath(axis: Axis, one: Leaf | undefined, other: Leaf | undefined): string | undefined {
  const group = commonGroup(one, other);
  // Round a ring the distance from one window to the next follows from the gap in the middle.
  if (group?.kind === 'ring') return group.gapAt;
  const strung = stringing(axis, one, other);
  return strung && pathOf(strung, axis);
}

function commonGroup(one: Leaf | undefined, other: Leaf | undefined): Group | undefined {
  return one?.groups.findLast((group) => other?.groups.includes(group));
}

/** Groups that string windows along an axis. */
type Stringing = Exclude<Group, { kind: 'ring' }>;

function pathOf(group: Stringing, axis: Axis): string {
  return group.kind === 'grid' ? group.gapAt[axis] : group.gapAt;
}

function ruleOf(group: Stringing, axis: Axis): GapRule {
  return group.kind === 'grid' ? group.gap[axis] : group.gap;
}

function stringing(axis: Axis, one: Leaf | undefined, other: Leaf | undefined): Stringing | undefined {
  const common = commonGroup(one, other);
  if (common?.kind === 'ring') return undefined;
  return common?.kind === 'grid' || common?.axis === axis ? common : undefined;
}

/** How a gap came about, in words. */
export function gapOrigin({ rule, axis }: Gap): string {
  const [start, end] = axis === 'across' ? ['left', 'right'] : ['top', 'bottom'];
  if (rule === 'with-borders') return `as wide as the border at the ${start}`;
  if (rule === 'between') return `what is left between ${start} and ${end}, in equal parts`;
  return rule === undefined ? 'from where the windows stand' : 'as given';
}
