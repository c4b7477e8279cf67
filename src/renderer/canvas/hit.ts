/** What lies under a point of the mat: a border line, the edge of a gap, or a window. */
import type { Box, Point, Side } from '../../core/geometry/box';
import { SIDES } from '../../core/geometry/box';
import { isInside } from '../../core/geometry/nearness';
import type { Layout, PlacedWindow } from '../../core/layout/layout';
import type { Handle } from './handles';

export type Hit =
  | { readonly kind: 'handle'; readonly handle: Handle }
  | { readonly kind: 'border'; readonly side: Side }
  | { readonly kind: 'gap'; readonly gap: number; readonly end: 'from' | 'to' }
  | { readonly kind: 'window'; readonly window: number };

/** `reach`: how near a line the point must be, mm; a handle is drawn larger and may be a little further off. */
export function hitAt(layout: Layout, handles: readonly Handle[], point: Point, reach: number): Hit | undefined {
  // Without a mat the picture has its one place in the frame.
  if (layout.layers.length === 0) return windowHit(layout, point);
  return (
    handleHit(handles, point, reach * 1.5) ??
    freeWindowHit(layout, point) ??
    borderHit(layout.content, layout, point, reach) ??
    gapHit(layout, point, reach) ??
    windowHit(layout, point)
  );
}

function handleHit(handles: readonly Handle[], { x, y }: Point, reach: number): Hit | undefined {
  const handle = handles.find(({ point }) => Math.hypot(point.x - x, point.y - y) <= reach);
  return handle && { kind: 'handle', handle };
}

/** A freely placed window lies over everything and is moved as a whole. */
function freeWindowHit(layout: Layout, point: Point): Hit | undefined {
  const window = layout.windows.findLastIndex((each) => each.at.startsWith('free') && inWindow(each, point));
  return window < 0 ? undefined : { kind: 'window', window };
}

function borderHit(content: Box, layout: Layout, point: Point, reach: number): Hit | undefined {
  if (!layout.windows.some((window) => window.at.startsWith('windows')) || !within(content, point, reach))
    return undefined;
  const side = SIDES.find((each) => {
    const along = each === 'left' || each === 'right' ? point.x : point.y;
    return Math.abs(along - content[each]) <= reach;
  });
  return side && { kind: 'border', side };
}

function gapHit(layout: Layout, point: Point, reach: number): Hit | undefined {
  for (const [index, gap] of layout.gaps.entries()) {
    if (gap.at === undefined) continue;
    const along = gap.axis === 'across' ? point.x : point.y;
    const beside = gap.axis === 'across' ? point.y : point.x;
    const spans = gap.between.map((place) => layout.windows[place]?.window).filter((box) => box !== undefined);
    const beyond = spans.every((box) =>
      gap.axis === 'across' ? beside < box.bottom || beside > box.top : beside < box.left || beside > box.right,
    );
    if (beyond) continue;
    if (Math.abs(along - gap.from) <= reach) return { kind: 'gap', gap: index, end: 'from' };
    if (Math.abs(along - gap.to) <= reach) return { kind: 'gap', gap: index, end: 'to' };
  }
  return undefined;
}

function windowHit(layout: Layout, point: Point): Hit | undefined {
  const window = layout.windows.findLastIndex((each) => inWindow(each, point));
  return window < 0 ? undefined : { kind: 'window', window };
}

/** Inside the opening itself: beside an oval lies the board. */
function inWindow({ window, layers }: PlacedWindow, point: Point): boolean {
  const outline = layers.at(-1)?.outlines?.opening;
  return within(window, point, 0) && (outline === undefined || isInside(outline, point));
}

function within(box: Box, point: Point, by: number): boolean {
  return point.x >= box.left - by && point.x <= box.right + by && point.y >= box.bottom - by && point.y <= box.top + by;
}

/** The path a hit lights up, in the panel as on the canvas. */
export function pathOfHit(layout: Layout, hit: Hit): string | undefined {
  if (hit.kind === 'handle') return hit.handle.at;
  if (hit.kind === 'border') return `borders.${hit.side}`;
  if (hit.kind === 'gap') return layout.gaps[hit.gap]?.at;
  return layout.windows[hit.window]?.at;
}
