/** Where points, boxes and outlines of a mat come to when it is turned or turned over: plain geometry, to hold the program against. */
import { expect } from 'vitest';
import {
  insets,
  SIDES,
  type Box,
  type PerSide,
  type Point,
  type Side,
  type Size,
} from '../../../src/core/geometry/box';
import { pointOn, type Edge } from '../../../src/core/geometry/edge';
import { lengthOf } from '../../../src/core/geometry/outline';
import { nearestOnOutline } from '../../helpers/on-outline';
import { openingOutline } from '../../../src/core/layout/shaped-openings';
import type { Layout, PlacedWindow } from '../../../src/core/layout/layout';
import { MOTION_NAMES, MOTIONS, type MotionName } from '../../../src/core/job/motion';
import { turnJob } from '../../../src/core/layout/turn-job';
import type { WrittenJob, WrittenNode } from '../../../src/core/job/written';
import { isError, type Result } from '../../../src/core/problem';
import { tryPlan, type Planned } from '../open';

export { MOTION_NAMES as WAYS };
export type Way = MotionName;

/** Of a blank of this size, from its lower left corner, in front view. */
export function movedPoint({ x, y }: Point, { width, height }: Size, way: Way): Point {
  switch (way) {
    case 'left':
      return { x: height - y, y: x };
    case 'right':
      return { x: y, y: width - x };
    case 'left-right':
      return { x: width - x, y };
    case 'top-bottom':
      return { x, y: height - y };
  }
}

/** The same in back view, which shows the blank turned over about its upright axis. */
export function movedBackPoint(point: Point, blank: Size, way: Way): Point {
  const other = { left: 'right', right: 'left', 'left-right': 'left-right', 'top-bottom': 'top-bottom' } as const;
  return movedPoint(point, blank, other[way]);
}

export function movedBox({ left, bottom, right, top }: Box, blank: Size, way: Way): Box {
  const [a, b] = [movedPoint({ x: left, y: bottom }, blank, way), movedPoint({ x: right, y: top }, blank, way)];
  return { left: Math.min(a.x, b.x), right: Math.max(a.x, b.x), bottom: Math.min(a.y, b.y), top: Math.max(a.y, b.y) };
}

/** Sides as they lie afterwards, seen by which way each faces. */
export function movedPerSide(sides: PerSide, way: Way): PerSide {
  const faces: Readonly<Record<Side, Point>> = {
    left: { x: -1, y: 0 },
    right: { x: 1, y: 0 },
    bottom: { x: 0, y: -1 },
    top: { x: 0, y: 1 },
  };
  const found = SIDES.map((side) => {
    const { x, y } = movedPoint(faces[side], { width: 0, height: 0 }, way);
    const now = SIDES.find((other) => Math.abs(faces[other].x - x) + Math.abs(faces[other].y - y) < 0.5)!;
    return [now, sides[side]] as const;
  });
  return Object.fromEntries(found) as PerSide;
}

export function turned(planned: Planned, way: Way): Result<WrittenJob> {
  const { written, job, layout } = planned;
  return turnJob({ written, job }, layout, MOTIONS[way]);
}

/** The job after a motion, planned; what the motion can't do, or what can't be cut then, throws. */
export function plannedAfter(planned: Planned, way: Way): Planned {
  const moved = turned(planned, way);
  if (!moved.ok) throw new Error(moved.problems.map(({ message }) => message).join('\n'));
  const after = tryPlan(moved.value);
  if (!after.planned)
    throw new Error(
      after.problems
        .filter(isError)
        .map(({ at, message }) => `${at}: ${message}`)
        .join('\n'),
    );
  return after.planned;
}

/** Nothing in it lines up on a baseline, and every grid is full. */
export function movable(node: WrittenNode): WrittenNode {
  if (typeof node === 'string' || !('items' in node)) return node;
  const items = node.items.map(movable);
  if (node.kind === 'row') return { ...node, items, align: node.align === 'baseline' ? 'bottom' : node.align };
  if (node.kind === 'column' || node.kind === 'ring') return { ...node, items };
  const columns = Math.min(node.columns, items.length);
  return {
    ...node,
    columns,
    items: items.slice(0, items.length - (items.length % columns)),
    alignRows: node.alignRows === 'baseline' ? 'bottom' : node.alignRows,
  };
}

export function expectNear(one: Box | PerSide, other: Box | PerSide | undefined, near: number): void {
  for (const side of SIDES) expect(Math.abs(one[side] - (other?.[side] ?? NaN))).toBeLessThan(near);
}

/** Every edge of one list, moved, is an edge of the other, whichever way it runs, or at least lies on the other all along. */
export function expectSameEdges(
  one: readonly Edge[],
  other: readonly Edge[],
  move: (point: Point) => Point,
  near: number,
): void {
  expect(Math.abs(lengthOf(one) - lengthOf(other))).toBeLessThan(near * 100);
  const close = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y) < near;
  for (const edge of one) {
    const [from, middle, to] = [0, 0.5, 1].map((part) => move(pointOn(edge, part))) as [Point, Point, Point];
    const isThere = other.some(
      (each) =>
        each.kind === edge.kind &&
        close(pointOn(each, 0.5), middle) &&
        ((close(each.from, from) && close(each.to, to)) || (close(each.from, to) && close(each.to, from))),
    );
    if (isThere) continue;
    // Joined openings may be parted elsewhere on the same curve.
    for (const part of [0, 0.3, 0.5, 0.8, 1])
      expect(nearestOnOutline(other, move(pointOn(edge, part)))).toBeLessThan(near * 100);
  }
}

/** Two layouts are one mat before and after a motion: every opening of every layer, border and picture. */
export function expectMoved(before: Layout, after: Layout, way: Way, near: number): void {
  const { blank } = before.frame;
  const isQuarter = way === 'left' || way === 'right';
  expect(Math.abs(after.frame.blank.width - (isQuarter ? blank.height : blank.width))).toBeLessThan(near);
  expect(Math.abs(after.frame.blank.height - (isQuarter ? blank.width : blank.height))).toBeLessThan(near);
  expectNear(movedPerSide(before.borders.cut, way), after.borders.cut, near);
  expectNear(movedPerSide(before.topBorders.seen, way), after.topBorders.seen, near);
  expect(after.windows).toHaveLength(before.windows.length);
  for (const window of before.windows) {
    const place = movedBox(window.window, blank, way);
    const found = after.windows.find(({ window: box }) =>
      SIDES.every((side) => Math.abs(box[side] - place[side]) < near),
    );
    expect(found, `window ${window.name}`).toBeDefined();
    expectSameWindow(window, found!, blank, way, near);
  }
}

function expectSameWindow(one: PlacedWindow, other: PlacedWindow, blank: Size, way: Way, near: number): void {
  expect(other).toMatchObject({
    title: one.picture?.part ? (expect.anything() as string) : one.title,
    use: one.use,
    shape: one.shape,
  });
  const box = (of: Box) => movedBox(of, blank, way);
  one.layers.forEach((layer, index) => {
    const there = other.layers[index]!;
    expectNear(box(layer.opening), there.opening, near);
    expectNear(box(layer.face), there.face, near);
    expectNear(box(layer.back), there.back, near);
    const move = (point: Point) => movedPoint(point, blank, way);
    expectSameEdges(openingOutline(layer), openingOutline(there), move, near);
  });
  one.parts?.forEach((part, index) => expectNear(box(part.box), other.parts?.[index]?.box, near));
  if (one.main) expectNear(box(one.main), other.main, near);
  if (one.picture) expectSamePicture(one, other, blank, way, near);
}

/** Turned with its window; turned over it can't be, so that it lies as it did in its window, or stands on its head. */
function expectSamePicture(before: PlacedWindow, after: PlacedWindow, blank: Size, way: Way, near: number): void {
  const [one, other] = [before.picture!, after.picture!];
  expect(other.index).toBe(one.index);
  const more = ((other.turned ?? 0) - (one.turned ?? 0) + 360) % 360;
  if (way === 'left' || way === 'right') {
    expect(more).toBe(way === 'left' ? 90 : 270);
    expectNear(movedBox(one.image, blank, way), other.image, near);
    expectNear(movedBox(one.sheet, blank, way), other.sheet, near);
  } else if (!one.part) {
    const headDown = ({ left, top, right, bottom }: PerSide) => ({
      left: right,
      top: bottom,
      right: left,
      bottom: top,
    });
    const lie = (of: PlacedWindow, what: 'image' | 'sheet') => insets(of.picture![what], of.main ?? of.window);
    expect([0, 180]).toContain(more);
    for (const what of ['image', 'sheet'] as const) {
      const was = lie(before, what);
      expectNear(more === 180 ? headDown(was) : was, lie(after, what), near);
    }
  }
}
