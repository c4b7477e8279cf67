/** A job turned or turned over has its cut plan and its machine paths turned or turned over: every line, in both views. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CutLine, LayerPlan, View } from '../../../src/core/cutting/plan';
import { planToolPaths, type Corner, type LayerPaths } from '../../../src/core/cutting/tool-paths';
import type { Point } from '../../../src/core/geometry/box';
import { contents } from '../arbitrary-jobs';
import {
  expectSameEdges,
  movable,
  movedBackPoint,
  movedPoint,
  plannedAfter,
  turned,
  WAYS,
  type Way,
} from '../layout/turn';
import { tryPlan, written, type Planned } from '../open';
import { TURNED_JOBS } from '../turned-jobs';

/** mm; what is held by hand is written to a millionth. */
const NEAR = 1e-5;
const VIEWS = ['front', 'back'] as const satisfies readonly View[];

const isQuarter = (way: Way) => way === 'left' || way === 'right';
const near = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y) < NEAR;
const mover = (layer: LayerPlan, view: View, way: Way) => (point: Point) =>
  (view === 'front' ? movedPoint : movedBackPoint)(point, layer.blank, way);

function expectMovedPlan(before: Planned, after: Planned, way: Way): void {
  before.plan.layers.forEach((layer, index) => {
    const other = after.plan.layers[index]!;
    for (const view of VIEWS) {
      const lines = (of: LayerPlan) => of.windows.flatMap(({ cuts }) => cuts[view]);
      const straight = (of: LayerPlan) => lines(of).filter(({ curve }) => !curve);
      const curved = (of: LayerPlan) => lines(of).flatMap(({ curve }) => curve ?? []);
      const move = mover(layer, view, way);
      expect(lines(other)).toHaveLength(lines(layer).length);
      for (const line of straight(layer)) expectMovedLine(line, straight(other), move, way);
      if (curved(layer).length > 0) expectSameEdges(curved(layer), curved(other), move, NEAR);
    }
    const moves = (of: LayerPlan) => of.order.back.filter(({ moveGuide }) => moveGuide).length;
    if (isQuarter(way)) expect(moves(other)).toBe(moves(layer));
  });
}

/** Turned it runs the same way; turned over it begins where it ended, since the waste stays on its side of the blade. */
function expectMovedLine(line: CutLine, others: readonly CutLine[], move: (point: Point) => Point, way: Way): void {
  const ends = [line.start, line.end].map(move) as [Point, Point];
  const blade = [line.bladeStart, line.bladeEnd].map(move) as [Point, Point];
  if (!isQuarter(way)) [ends, blade].forEach((pair) => pair.reverse());
  const found = others.find(({ start, end }) => near(start, ends[0]) && near(end, ends[1]));
  expect(found, `cut from ${ends[0].x}, ${ends[0].y}`).toBeDefined();
  expect(near(found!.bladeStart, blade[0]) && near(found!.bladeEnd, blade[1])).toBe(true);
  expect(found).toMatchObject({ bevelSide: line.bevelSide, slopesTo: line.slopesTo });
  expect(found!.guideSetting === undefined).toBe(line.guideSetting === undefined);
  if (line.guideSetting !== undefined) expect(Math.abs(found!.guideSetting! - line.guideSetting)).toBeLessThan(NEAR);
}

/** The corner that the lower left one of a view comes to. */
const CORNERS: Readonly<Record<View, Readonly<Record<Way, Corner>>>> = {
  front: { left: 'lower-right', right: 'upper-left', 'left-right': 'lower-right', 'top-bottom': 'upper-left' },
  back: { left: 'upper-left', right: 'lower-right', 'left-right': 'lower-right', 'top-bottom': 'upper-left' },
};

function expectMovedPaths(before: Planned, after: Planned, way: Way): void {
  for (const view of VIEWS) {
    const one = planToolPaths(before.plan, { view, corner: 'lower-left' });
    const other = planToolPaths(after.plan, { view, corner: CORNERS[view][way] });
    expect(Math.abs(one.cutLength - other.cutLength)).toBeLessThan(NEAR * 100);
    one.layers.forEach((layer, index) =>
      expectMovedStrokes(layer, other.layers[index]!, mover(layer.layer, view, way), way),
    );
  }
}

function expectMovedStrokes(one: LayerPaths, other: LayerPaths, move: (point: Point) => Point, way: Way): void {
  const onBoard = ({ lowerLeft }: LayerPaths, { x, y }: Point): Point => ({ x: x - lowerLeft.x, y: y - lowerLeft.y });
  expect(other.paths).toHaveLength(one.paths.length);
  const rings = (of: LayerPaths) => of.paths.filter(({ closed }) => closed).map(({ length }) => length).sort((a, b) => a - b);
  rings(one).forEach((length, index) => expect(Math.abs(length - (rings(other)[index] ?? NaN))).toBeLessThan(NEAR * 10));
  for (const path of one.paths.filter(({ closed }) => !closed)) {
    const ends = [path.from, path.to].map((point) => move(onBoard(one, point))) as [Point, Point];
    if (!isQuarter(way)) ends.reverse();
    const found = other.paths.find(
      ({ from, to, length }) =>
        near(onBoard(other, from), ends[0]) && near(onBoard(other, to), ends[1]) && Math.abs(length - path.length) < NEAR * 10,
    );
    expect(found, `stroke ${path.number} of window ${path.window}`).toMatchObject({ bevelSide: path.bevelSide });
  }
} // prettier-ignore

describe.each(TURNED_JOBS)('%s', (_, before) => {
  it.each(WAYS)('moved: %s', (way) => {
    if (!turned(before, way).ok) return;
    const after = plannedAfter(before, way);
    expectMovedPlan(before, after, way);
    expectMovedPaths(before, after, way);
  });

  it('in four rotations', () => {
    if (!turned(before, 'left').ok) return;
    let now = before;
    for (let turn = 0; turn < 4; turn += 1) {
      const next = plannedAfter(now, 'left');
      expectMovedPlan(now, next, 'left');
      expectMovedPaths(now, next, 'left');
      now = next;
    }
  });
});

it('any job', () => {
  const jobs = fc.constantFrom('made to fit' as const, 'given' as const).chain(contents);
  fc.assert(
    fc.property(jobs, fc.constantFrom('left' as const, 'right' as const), (job, way) => {
      const before = tryPlan(written({ ...job, windows: job.windows && movable(job.windows) })).planned;
      fc.pre(before !== undefined);
      const after = plannedAfter(before, way);
      expectMovedPlan(before, after, way);
      expectMovedPaths(before, after, way);
    }),
    { numRuns: 50, maxSkipsPerRun: 3, endOnFailure: true },
  );
});
