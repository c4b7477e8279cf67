/** A layer as the template draws it in one view: its lines, corners and openings, mm from the blank's lower left corner. */
import type { CutLine, LayerPlan, LinePlan, View, WindowPlan } from '../../core/cutting/plan';
import { mirrorBox, type Box, type Point, type Size } from '../../core/geometry/box';
import { mirrorOutline, type Outline } from '../../core/geometry/outline';

export interface ViewWindow {
  readonly name: string;
  readonly title: string;
  readonly opening: Box;
  /** The box round the cut lines, which is the opening or the edge on the side that faces the cutter. */
  readonly cut: Box;
  /** Of a window that is no rectangle: its opening in this layer. */
  readonly outline?: Outline;
  readonly lines: readonly CutLine[];
}

/** A groove or ruled line as it lies in the view; it is made on the face. */
export interface ViewLine {
  readonly line: LinePlan;
  readonly inner: Outline;
  readonly middle: Outline;
  readonly outer: Outline;
}

export interface ViewLayer {
  readonly plan: LayerPlan;
  readonly view: View;
  readonly blank: Size;
  readonly windows: readonly ViewWindow[];
  readonly lines: readonly ViewLine[];
}

export function viewLayer(plan: LayerPlan, view: View): ViewLayer {
  const { blank } = plan;
  const windows = plan.windows.map((window) => viewWindow(window, plan, view));
  return { plan, view, blank, windows, lines: plan.lines.map((line) => viewLine(line, plan, view)) };
}

function viewLine(line: LinePlan, { blank }: LayerPlan, view: View): ViewLine {
  const seen = (outline: Outline) => (view === 'back' ? mirrorOutline(outline, blank.width) : outline);
  return { line, inner: seen(line.inner), middle: seen(line.middle), outer: seen(line.outer) };
}

function viewWindow(window: WindowPlan, plan: LayerPlan, view: View): ViewWindow {
  const { outlines } = window;
  const cut = view === 'back' ? mirrorBox(window.back, plan.blank.width) : window.face;
  const seen = view === 'back' ? outlines && mirrorOutline(outlines.opening, plan.blank.width) : outlines?.opening;
  return {
    name: window.name,
    title: window.title,
    opening: view === 'back' ? mirrorBox(window.opening, plan.blank.width) : window.opening,
    cut,
    ...(seen ? { outline: seen } : {}),
    lines: window.cuts[view],
  };
}

/** The four corners of a box, anticlockwise from the lower left. */
export function cornersOf(box: Box): readonly Point[] {
  return [
    { x: box.left, y: box.bottom },
    { x: box.right, y: box.bottom },
    { x: box.right, y: box.top },
    { x: box.left, y: box.top },
  ];
}

/** The part of a straight line inside a box; undefined when they do not meet. */
export function clipLine(from: Point, to: Point, box: Box): readonly [Point, Point] | undefined {
  const run = { x: to.x - from.x, y: to.y - from.y };
  let enter = 0;
  let leave = 1;
  // Liang and Barsky: each edge of the box cuts off a part of the line's parameter.
  for (const [towards, room] of [
    [-run.x, from.x - box.left],
    [run.x, box.right - from.x],
    [-run.y, from.y - box.bottom],
    [run.y, box.top - from.y],
  ] as const) {
    if (towards === 0 && room < 0) return undefined;
    if (towards < 0) enter = Math.max(enter, room / towards);
    if (towards > 0) leave = Math.min(leave, room / towards);
  }
  if (enter > leave) return undefined;
  const at = (part: number): Point =>
    part === 0 ? from : part === 1 ? to : { x: from.x + part * run.x, y: from.y + part * run.y };
  return [at(enter), at(leave)];
}

export function contains(box: Box, point: Point): boolean {
  return point.x >= box.left && point.x <= box.right && point.y >= box.bottom && point.y <= box.top;
}

/** The part two boxes share; undefined when they share no area. */
export function shared(a: Box, b: Box): Box | undefined {
  const box = {
    left: Math.max(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.min(a.right, b.right),
    top: Math.min(a.top, b.top),
  };
  return box.right > box.left && box.top > box.bottom ? box : undefined;
}
