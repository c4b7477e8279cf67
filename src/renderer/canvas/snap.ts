/** Snapping of a moved window: to the shown step and to the lines of its neighbours, with the guides that say so. */
import { heightOf, widthOf, type Box, type Point } from '../../core/geometry/box';
import type { Layout } from '../../core/layout/layout';

/** A line shown while something is moved: where it lines up, or how far it is from an edge. */
export type Guide =
  | { readonly kind: 'line'; readonly axis: 'across' | 'up'; readonly at: number }
  | { readonly kind: 'distance'; readonly from: Point; readonly to: Point; readonly mm: number };

/** The nearest multiple of the step, mm. */
export function toStep(mm: number, step: number): number {
  return Math.round(mm / step) * step;
}

/** Where a window of a size goes when its lower left corner is dragged to a point. `reach`: how near a line pulls, mm. */
export function snapWindow(
  layout: Layout,
  moved: number,
  corner: Point,
  step: number,
  reach: number,
): { corner: Point; guides: Guide[] } {
  const own = layout.windows[moved]?.window;
  if (own === undefined) return { corner, guides: [] };
  const others = layout.windows.filter((_, index) => index !== moved).map((window) => window.window);
  const { width, height } = layout.frame.blank;
  const blank: Box = { left: 0, bottom: 0, right: width, top: height };
  const across = pull(corner.x, widthOf(own), lines(others, blank, 'across'), step, reach, width);
  const up = pull(corner.y, heightOf(own), lines(others, blank, 'up'), step, reach, height);
  const at = { x: across.start, y: up.start };
  const box = { left: at.x, bottom: at.y, right: at.x + widthOf(own), top: at.y + heightOf(own) };
  return {
    corner: at,
    guides: [
      ...(across.line === undefined ? [] : [{ kind: 'line', axis: 'across', at: across.line } as const]),
      ...(up.line === undefined ? [] : [{ kind: 'line', axis: 'up', at: up.line } as const]),
      ...distances(box, blank),
    ],
  };
}

/** Starts, middles and ends of the other windows, and the middle of the blank. */
function lines(others: readonly Box[], blank: Box, axis: 'across' | 'up'): number[] {
  const ends = (box: Box): [number, number] => (axis === 'across' ? [box.left, box.right] : [box.bottom, box.top]);
  const middle = ([a, b]: [number, number]) => (a + b) / 2;
  return [...others.flatMap((box) => [...ends(box), middle(ends(box))]), middle(ends(blank))];
}

function pull(
  start: number,
  length: number,
  targets: readonly number[],
  step: number,
  reach: number,
  whole: number,
): { start: number; line?: number } {
  const own = [0, length / 2, length];
  const pulls = targets.flatMap((target) => own.map((offset) => ({ start: target - offset, line: target })));
  const best = pulls.reduce<{ start: number; line: number } | undefined>(
    (nearest, each) => (Math.abs(each.start - start) < Math.abs((nearest?.start ?? Infinity) - start) ? each : nearest),
    undefined,
  );
  if (best && Math.abs(best.start - start) <= reach) return best;
  // On the step from whichever edge of the blank is nearer.
  const end = whole - start - length;
  return { start: start <= end ? toStep(start, step) : whole - length - toStep(end, step) };
}

/** How far a window is from the nearer edge of the blank, across and up. */
function distances(box: Box, blank: Box): Guide[] {
  const middle = { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 };
  const left = box.left <= blank.right - box.right;
  const low = box.bottom <= blank.top - box.top;
  const across = left ? [blank.left, box.left] : [box.right, blank.right];
  const up = low ? [blank.bottom, box.bottom] : [box.top, blank.top];
  const distance = (from: Point, to: Point, mm: number): Guide => ({ kind: 'distance', from, to, mm });
  return [
    distance(
      { x: across[0] ?? 0, y: middle.y },
      { x: across[1] ?? 0, y: middle.y },
      (across[1] ?? 0) - (across[0] ?? 0),
    ),
    distance({ x: middle.x, y: up[0] ?? 0 }, { x: middle.x, y: up[1] ?? 0 }, (up[1] ?? 0) - (up[0] ?? 0)),
  ];
}
