/** An item of the arrangement, with all that stands in it, turned by a quarter or turned over. */
import { type Problem } from '../problem';
import { isQuarterTurn, isReversed, quarterOf, type Motion } from './motion';
import { turnedSize } from './size-text';
import { movableAlign, movedAlign } from './turn-align';
import { movedGrid } from './turn-grid';
import { movedWindow } from './turn-window';
import type { WrittenColumn, WrittenNode, WrittenRing, WrittenRow, WrittenSpread, WrittenWindow } from './written';

/** @param say takes what can't be turned, and what is worth a look. */
export function movedItem(node: WrittenNode, at: string, motion: Motion, say: (problem: Problem) => void): WrittenNode {
  const inner = (item: WrittenNode, index: number) => movedItem(item, `${at}.items[${index}]`, motion, say);
  if (typeof node === 'string') return movedOne({ kind: 'window', picture: node }, at, motion, say);
  switch (node.kind) {
    case 'window':
      return movedOne(node, at, motion, say);
    case 'spread':
      return movedSpread(node, motion);
    case 'row':
      return movedLine({ ...node, ...alignOf(node, at, motion, say) }, inner, motion);
    case 'column':
      return movedLine(node, inner, motion);
    case 'grid':
      return movedGrid(node, at, inner, motion, say);
    case 'ring':
      return movedRing(node, inner, motion);
  }
}

/** What says no more than its picture is written as that picture's id, as people do. */
function movedOne(node: WrittenWindow, at: string, motion: Motion, say: (problem: Problem) => void): WrittenNode {
  const { window, isUpset } = movedWindow(node, motion);
  if (isUpset) say(upset(window, at));
  const { kind: _kind, picture, ...more } = window;
  return typeof picture === 'string' && Object.keys(more).length === 0 ? picture : window;
}

export function upset({ title, picture }: Pick<WrittenWindow, 'title' | 'picture'>, at: string): Problem {
  return {
    code: 'picture-turned-over',
    severity: 'note',
    at: `${at}.turned`,
    message: `The picture of ${title ? `"${title.slice(0, 40)}"` : `the window over picture ${picture ?? ''}`} now stands upside down: it is turned as one with its shape, which has to point the other way.`,
    remedy: 'choose a shape without a point, or leave this window out',
  };
}

/** A picture over several windows turns with them; turned over are only the windows. */
function movedSpread(node: WrittenSpread, motion: Motion): WrittenSpread {
  const along = node.along ?? 'row';
  const isBackwards = isReversed(motion, along === 'row' ? 'across' : 'up');
  const shares = node.shares && isBackwards ? { shares: node.shares.toReversed() } : {};
  if (!isQuarterTurn(motion)) return { ...node, ...shares };
  const { turned = 0, ...rest } = node;
  const quarter = quarterOf(turned + motion.anticlockwise);
  const spread = { ...rest, along: along === 'row' ? 'column' : 'row', ...shares } as const;
  return quarter === 0 ? spread : { ...spread, turned: quarter };
}

function alignOf({ align, items }: WrittenRow, at: string, motion: Motion, say: (problem: Problem) => void) {
  return align === undefined ? {} : { align: movableAlign(align, items, `${at}.align`, motion, say) };
}

type Inner = (item: WrittenNode, index: number) => WrittenNode;

function movedLine(node: WrittenRow | WrittenColumn, inner: Inner, motion: Motion): WrittenRow | WrittenColumn {
  const isRow = node.kind === 'row';
  const moved = node.items.map(inner);
  const items = isReversed(motion, isRow ? 'across' : 'up') ? moved.reverse() : moved;
  const kind = isRow !== isQuarterTurn(motion) ? 'row' : 'column';
  const align = node.align === undefined ? {} : { align: movedAlign(node.align, motion) };
  return { ...node, kind, ...align, items } as WrittenRow | WrittenColumn;
}

/** Turned over, a ring runs the other way round: its first window stays the first. */
function movedRing(node: WrittenRing, inner: Inner, motion: Motion): WrittenRing {
  const { start = 0, ...rest } = node;
  const moved = node.items.map(inner);
  if (isQuarterTurn(motion)) {
    const on = node.on === undefined ? {} : { on: turnedSize(node.on) };
    return { ...rest, ...on, ...startAt(start - motion.anticlockwise), items: moved };
  }
  const fixed = node.centre === 'none' ? 1 : 2;
  const items = [...moved.slice(0, fixed), ...moved.slice(fixed).reverse()];
  return { ...rest, ...startAt(motion.to.left === 'right' ? -start : 180 - start), items };
}

/** Degrees clockwise from the top, within half a turn either way; the top itself goes without saying. */
function startAt(degrees: number): Pick<WrittenRing, 'start'> {
  const whole = degrees % 360;
  const near = whole > 180 ? whole - 360 : whole <= -180 ? whole + 360 : whole;
  return near === 0 ? {} : { start: near };
}
