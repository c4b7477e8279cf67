/** How the items of a turned group line up. */
import type { Problem } from '../problem';
import type { Motion } from './motion';
import type { WrittenHorizontal, WrittenNode, WrittenVertical } from './written';

export function movedAlign<T extends WrittenHorizontal | WrittenVertical>(align: T, { to }: Motion): T {
  return (align === 'centre' || align === 'baseline' ? align : to[align as 'left' | 'top']) as T;
}

/** What a row lines up on before it is moved: a baseline stays below, or is the lower edge where single windows stand on it. */
export function movableAlign(
  align: WrittenVertical | undefined,
  items: readonly WrittenNode[],
  at: string,
  motion: Motion,
  say: (problem: Problem) => void,
): WrittenVertical | undefined {
  if (align !== 'baseline') return align;
  if (motion.to.bottom === 'bottom' ? items.every(keepsBaseline) : items.every(standsOnItsEdge))
    return motion.to.bottom === 'bottom' ? align : 'bottom';
  say({
    code: 'turn-of-baseline',
    severity: 'error',
    at,
    message:
      'What stands here lines up on the lower edges of its first windows, and moved so there would be no such line; line it up at the bottom, the middle or the top first.',
    value: 'baseline',
    remedy: '"bottom", "centre" or "top"',
    fix: { label: 'Line it up at the bottom', edits: [{ at, value: 'bottom' }] },
  });
  return align;
}

/** True where the baseline is the lower edge of the whole. */
function standsOnItsEdge(item: WrittenNode): boolean {
  if (typeof item === 'string' || item.kind === 'window' || item.kind === 'ring') return true;
  return item.kind === 'spread' && item.along !== 'column';
}

/** True where another window does not become the first one when left and right change places. */
function keepsBaseline(item: WrittenNode): boolean {
  if (typeof item === 'string' || !('items' in item) || item.kind === 'ring') return true;
  if (item.kind === 'column') return item.items.slice(0, 1).every(keepsBaseline);
  const first = item.kind === 'grid' ? item.items.slice(0, item.columns) : item.items;
  const isOnBaseline = (item.kind === 'grid' ? item.alignRows : item.align) === 'baseline';
  return (isOnBaseline || first.length === 1) && first.every(keepsBaseline);
}
