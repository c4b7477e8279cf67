/** Gaps that are as wide as the border they begin at, held by their length where that border comes to their end. */
import { isReversed, type Motion } from '../job/motion';
import { GAP_BETWEEN, GAP_WITH_BORDERS, type WrittenLength, type WrittenNode } from '../job/written';
import type { Axis } from './cells';

const START = { across: 'left', up: 'top' } as const;
const END = { across: 'right', up: 'bottom' } as const;

interface Borders {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Borders that differ by less are the same, mm. */
const SAME = 1e-6;

/** The axes along which a motion would have the gaps follow another border than they do. */
export function axesToHold(node: WrittenNode, borders: Borders, motion: Motion): Axis[] {
  return (['across', 'up'] as const).filter(
    (axis) =>
      isReversed(motion, axis) &&
      Math.abs(borders[START[axis]] - borders[END[axis]]) > SAME &&
      someGap(node, (along, gap) => along === axis && gap === GAP_WITH_BORDERS),
  );
}

/** True where a gap takes what is left between the borders. */
export function takesWhatIsLeft(node: WrittenNode): boolean {
  return someGap(node, (_, gap) => gap === GAP_BETWEEN);
}

function someGap(node: WrittenNode, is: (axis: Axis, gap: WrittenLength | undefined) => boolean): boolean {
  if (typeof node === 'string' || !('items' in node) || node.kind === 'ring') return false;
  const own =
    node.kind === 'grid'
      ? is('across', node.columnGap ?? node.gap) || is('up', node.rowGap ?? node.gap)
      : is(node.kind === 'row' ? 'across' : 'up', node.gap);
  return own || node.items.some((item) => someGap(item, is));
}

/** The same arrangement with such gaps along an axis written out. */
export function withHeldGaps(node: WrittenNode, axis: Axis, text: string): WrittenNode {
  if (typeof node === 'string' || !('items' in node) || node.kind === 'ring') return node;
  const items = node.items.map((item) => withHeldGaps(item, axis, text));
  if (node.kind !== 'grid') {
    const isHeld = (node.kind === 'row') === (axis === 'across') && node.gap === GAP_WITH_BORDERS;
    return { ...node, ...(isHeld ? { gap: text } : {}), items };
  }
  const key = axis === 'across' ? 'columnGap' : 'rowGap';
  return { ...node, ...((node[key] ?? node.gap) === GAP_WITH_BORDERS ? { [key]: text } : {}), items };
}
