/** A picture without a mat on the canvas: what is drawn of it from both sides, and that nothing of it can be dragged. */
import { describe, expect, it } from 'vitest';
import { setAll } from '../../src/core/job/edit';
import { readJob } from '../../src/core/job/read';
import type { WrittenJob } from '../../src/core/job/written';
import { layOut } from '../../src/core/layout/lay-out';
import { drawBareBack } from '../../src/renderer/canvas/draw-bare';
import { drawFront } from '../../src/renderer/canvas/draw-front';
import type { Ring, Shape } from '../../src/renderer/canvas/drawing';
import { beginGesture } from '../../src/renderer/canvas/gesture';
import { handlesOf } from '../../src/renderer/canvas/handles';
import { hitAt } from '../../src/renderer/canvas/hit';
import { detailAt } from '../../src/renderer/canvas/light';
import { GIVE_MAT, TAKE_MAT_AWAY } from '../../src/renderer/edits/layers';
import { spellOut } from '../../src/renderer/edits/spell-out';

const showing = { unit: 'in', inchStep: 16, metricStep: 0.5 } as const;
const plain: WrittenJob = {
  format: 'matwright-job',
  version: 1,
  pictures: [{ kind: 'painting on canvas', size: '16 x 20' }],
  frame: { size: '16 x 20', mouldingWidth: '3/4', lip: '1/4', allowance: '1/8' },
  mat: { layers: [] },
};
const float: WrittenJob = { ...plain, frame: { size: '16 x 20', mouldingWidth: '3/4', build: 'float' } };

function lay(written: WrittenJob) {
  const read = readJob(written);
  if (!read.ok) throw new Error(read.problems[0]?.message);
  const laid = layOut(read.value.job);
  const layout = laid.ok ? laid.value : laid.sketch;
  if (!layout) throw new Error(laid.problems[0]?.message);
  return { job: read.value.job, layout };
}

/** Left, bottom, right and top of the first ring of a shape, in inches. */
function boxOf(shapes: readonly Shape[], key: string): number[] {
  const found = shapes.find((shape) => shape.key === key);
  const ring: Ring = found?.kind === 'area' ? (found.rings[0] ?? []) : [];
  const [xs, ys] = [ring.map(({ x }) => x / 25.4), ring.map(({ y }) => y / 25.4)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

const near = (...numbers: number[]) => numbers.map((each) => expect.closeTo(each, 9) as number);
const front = (written: WrittenJob) => drawFront(lay(written).layout, new Map(), detailAt(2));

describe('the front', () => {
  it('shows the picture up to the lip, in its frame, and no board', () => {
    const shapes = front(plain);
    expect(boxOf(shapes, 'cards 0')).toEqual(near(3 / 16, 3 / 16, 16 - 3 / 16, 20 - 3 / 16));
    expect(boxOf(shapes, 'frame flat top')[3]).toBeCloseTo(20 + 9 / 16, 9);
    expect(shapes.filter(({ key }) => key.startsWith('layer'))).toEqual([]);
  });

  it('of a float frame shows the whole face and the gap round it', () => {
    const shapes = front(float);
    expect(boxOf(shapes, 'cards 0')).toEqual(near(0, 0, 16, 20));
    expect(boxOf(shapes, 'gap')).toEqual(near(-1 / 4, -1 / 4, 16 + 1 / 4, 20 + 1 / 4));
    expect(boxOf(shapes, 'frame flat left')[0]).toBeCloseTo(-1, 9);
  });

  it('shows what lies beside a picture that falls through', () => {
    const shapes = front({ ...plain, pictures: [{ size: '14 x 18' }] });
    expect(boxOf(shapes, 'cards 0')).toEqual(near(1, 1, 15, 19));
    expect(boxOf(shapes, 'gap')).toEqual(near(3 / 16, 3 / 16, 16 - 3 / 16, 20 - 3 / 16));
  });
});

describe('the back', () => {
  it('shows the picture in the rabbet, a canvas on its bars', () => {
    const { layout } = lay(plain);
    const shapes = drawBareBack(layout, 'painting on canvas');
    expect(boxOf(shapes, 'back of the picture')).toEqual(near(0, 0, 16, 20));
    expect(boxOf(shapes, 'rabbet')).toEqual(near(-1 / 16, -1 / 16, 16 + 1 / 16, 20 + 1 / 16));
    expect(shapes.some(({ key }) => key === 'stretcher left')).toBe(true);
    expect(drawBareBack(layout, 'painting on panel').some(({ key }) => key.startsWith('stretcher'))).toBe(false);
  });

  it('of a float frame is closed all round by its ledge', () => {
    const shapes = drawBareBack(lay(float).layout, 'painting on canvas');
    expect(boxOf(shapes, 'frame back left')[2]).toBeGreaterThan(0);
  });
});

describe('nothing can be dragged', () => {
  const written: WrittenJob = {
    ...plain,
    free: [{ picture: 1, at: { left: '1', bottom: '1' }, shape: { kind: 'rounded', radius: '1' } }],
  };
  const { job, layout } = lay(written);
  const ground = { written, job, layout, showing, reach: 2 };

  it.each([
    ['at an edge of what is seen', { x: (3 / 16) * 25.4, y: 200 }],
    ['in the middle', { x: 200, y: 250 }],
  ])('%s', (_, point) => {
    const hit = hitAt(layout, [], point, 2);
    expect(hit).toEqual({ kind: 'window', window: 0 });
    expect(beginGesture(ground, hit!)).toBeUndefined();
  });

  it('nor has a kept shape a handle', () => expect(handlesOf(job, layout, 'free[0]')).toEqual([]));
});

describe('the mat', () => {
  it('is taken away and given back', () => {
    const { mat: _mat, ...usual } = plain;
    const bare = setAll(usual as WrittenJob, TAKE_MAT_AWAY);
    expect(bare).toEqual(plain);
    expect(setAll(bare, GIVE_MAT).mat).toEqual({ layers: [{}] });
  });

  it('is spelled out where the job says nothing of it', () => {
    const { mat: _mat, ...usual } = plain;
    const edits = [{ at: 'mat.layers[0].board', value: 'Warm white' }];
    expect(setAll(spellOut(usual as WrittenJob, edits), edits).mat).toEqual({ layers: [{ board: 'Warm white' }] });
  });
});
