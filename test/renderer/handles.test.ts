/** Handles of shapes: they lie on the outline they change, and go with the pointer. */
import { describe, expect, it } from 'vitest';
import { nearestOnOutline } from '../helpers/on-outline';
import { setAll } from '../../src/core/job/edit';
import { readJob } from '../../src/core/job/read';
import type { WrittenJob } from '../../src/core/job/written';
import { layOut } from '../../src/core/layout/lay-out';
import { beginGesture } from '../../src/renderer/canvas/gesture';
import { handlesOf } from '../../src/renderer/canvas/handles';
import { hitAt } from '../../src/renderer/canvas/hit';
import { spellOut } from '../../src/renderer/edits/spell-out';

const SHOWING = { unit: 'in', inchStep: 16, metricStep: 0.5 } as const;

function laid(written: WrittenJob) {
  const read = readJob(written);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const outcome = layOut(read.value.job);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return { job: read.value.job, layout: outcome.value };
}

const window = (more: object): WrittenJob =>
  ({
    format: 'matwright-job',
    version: 1,
    frame: { size: '20 x 24 in' },
    windows: { kind: 'window', size: '8 x 9 in', ...more },
  }) as WrittenJob;

const MEASURED = ['rounded', 'arch', 'pointed', 'cut-corners', 'stepped', 'scooped'] as const;

describe.each(MEASURED)('the handle of %s', (shape) => {
  it.each([undefined, 90, 180, 270] as const)(
    'lies on the outline and goes with the pointer, turned by %s',
    (turned) => {
      for (const measuredAt of ['opening', 'face'] as const) {
        const written: WrittenJob = { ...window({ shape, turned, mirrored: true }), mat: { measuredAt } };
        const { job, layout } = laid(written);
        const [handle] = handlesOf(job, layout, 'windows');
        if (!handle) throw new Error('no handle');
        const edges = layout.windows[0]?.layers.at(-1)?.outlines;
        const outline = measuredAt === 'face' ? edges?.face : edges?.opening;
        expect(nearestOnOutline(outline ?? [], handle.point)).toBeLessThan(1e-9);
        expect(hitAt(layout, [handle], handle.point, 1)).toEqual({ kind: 'handle', handle });
        const ground = { written, job, layout, showing: SHOWING, reach: 1 };
        // By a whole step, so that nothing is rounded; less of the measure always fits.
        const change = -25.4 / 16;
        const by = { x: handle.along.x * change, y: handle.along.y * change };
        const pointed = shape === 'pointed';
        const far = pointed ? { x: -by.x, y: -by.y } : by;
        const edits = beginGesture(ground, { kind: 'handle', handle })?.move(far).edits ?? [];
        const after = laid(setAll(spellOut(written, edits), edits));
        const [moved] = handlesOf(after.job, after.layout, 'windows');
        const step = pointed ? 25.4 / 16 : 25.4 / 16 / 2;
        expect(Math.abs((moved?.value ?? 0) - (handle.value + (pointed ? -change : change)))).toBeLessThanOrEqual(step);
        expect(moved?.value).not.toBe(handle.value);
      }
    },
  );
});

it('stops where the shape has no more room, and gives the exact value there', () => {
  const written = window({ shape: 'rounded' });
  const ground = { written, ...laid(written), showing: SHOWING, reach: 1 };
  const [handle] = handlesOf(ground.job, ground.layout, 'windows');
  if (!handle) throw new Error('no handle');
  const moved = beginGesture(ground, { kind: 'handle', handle })?.move({ x: 1000, y: 0 });
  expect(moved?.edits).toEqual([{ at: 'windows.shape.radius', value: '4' }]);
});

it('moves a joined opening by the side it is held by, turned and turned over with its window', () => {
  for (const turned of [undefined, 90, 180, 270] as const) {
    const joined = [{ size: '3 x 2 in', at: { bottom: '-1 in', left: '1 in' } }];
    const written = window({ shape: 'rounded', turned, mirrored: true, joined });
    const ground = { written, ...laid(written), showing: SHOWING, reach: 1 };
    const handles = handlesOf(ground.job, ground.layout, 'windows');
    const outline = ground.layout.windows[0]?.layers.at(-1)?.outlines?.opening ?? [];
    expect(handles.map(({ label }) => label)).toEqual([
      'Radius of the corners',
      'Joined opening 1 from the left',
      'Joined opening 1 from the bottom',
    ]);
    const [radius, , bottom] = handles;
    if (!radius || !bottom) throw new Error('no handle');
    expect(nearestOnOutline(outline, radius.point)).toBeLessThan(1e-9);
    expect(nearestOnOutline(outline, bottom.point)).toBeLessThan(1e-9);
    const by = { x: bottom.along.x * -12.7, y: bottom.along.y * -12.7 };
    expect(beginGesture(ground, { kind: 'handle', handle: bottom })?.move(by).edits).toEqual([
      { at: 'windows.joined[0].at.bottom', value: '-1 1/2' },
    ]);
  }
});

it('has no handle for a rectangle, an oval, a polygon or a row', () => {
  for (const shape of ['rectangle', 'oval', 'polygon'] as const) {
    const { job, layout } = laid(window({ shape }));
    expect(handlesOf(job, layout, 'windows')).toEqual([]);
  }
});

it('has the ends of both axes of the ellipse a ring stands on, with a window in the middle or without', () => {
  for (const centre of ['first', 'none'] as const) {
    const items = Array.from({ length: 5 }, () => ({ kind: 'window', size: '2 x 2 in' }));
    const written = {
      format: 'matwright-job',
      version: 1,
      frame: { size: '24 x 24 in' },
      windows: { kind: 'ring', centre, on: '12 x 10 in', items },
    } as WrittenJob;
    const { job, layout } = laid(written);
    const [right, top] = handlesOf(job, layout, 'windows');
    expect([right?.value, top?.value]).toEqual([304.8, 254]);
    // As wide as the ellipse is, its ends lie so far apart from the middle.
    expect((right?.point.x ?? 0) - (top?.point.x ?? 0)).toBeCloseTo(152.4, 9);
    expect((top?.point.y ?? 0) - (right?.point.y ?? 0)).toBeCloseTo(127, 9);
    expect(right?.edits('13')).toEqual([{ at: 'windows.on', value: '13 x 10' }]);
  }
});
