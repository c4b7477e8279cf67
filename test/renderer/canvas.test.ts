/** The canvas's plain parts: rulers, what lies under a point, snapping, gestures, and the drawing itself. */
import { describe, expect, it } from 'vitest';
import { setAll } from '../../src/core/job/edit';
import { readJob } from '../../src/core/job/read';
import type { WrittenJob } from '../../src/core/job/written';
import { layOut } from '../../src/core/layout/lay-out';
import { borderDimensions, gapDimensions } from '../../src/renderer/canvas/dimensions';
import { drawBack } from '../../src/renderer/canvas/draw-back';
import { drawFront } from '../../src/renderer/canvas/draw-front';
import { beginGesture } from '../../src/renderer/canvas/gesture';
import { detailAt } from '../../src/renderer/canvas/light';
import { hitAt } from '../../src/renderer/canvas/hit';
import { rulerMarks } from '../../src/renderer/canvas/rulers';
import { snapWindow } from '../../src/renderer/canvas/snap';

const showing = { unit: 'in', inchStep: 16, metricStep: 0.5 } as const;
const written: WrittenJob = {
  format: 'matwright-job',
  version: 1,
  pictures: [{ size: '5 x 7' }, { size: '5 x 7' }, { size: '5 x 7' }],
  frame: { size: '24 x 14' },
  mat: { layers: [{}, {}] },
  windows: { kind: 'row', items: ['1', '2', '3'], gap: '1 1/2' },
  free: [{ use: 'title', size: '4 x 1', at: { left: '10', bottom: '1 1/2' } }],
};

function lay(job: WrittenJob) {
  const read = readJob(job);
  if (!read.ok) throw new Error(read.problems[0]?.message);
  const layout = layOut(read.value.job);
  if (!layout.ok) throw new Error(layout.problems[0]?.message);
  return { job: read.value.job, layout: layout.value };
}

const { job, layout } = lay(written);
const ground = { written, job, layout, showing, reach: 2 };

describe('rulers', () => {
  it('number whole units from the corner of the blank, with marks between', () => {
    const marks = rulerMarks({ scale: 4, x: 100, y: 500 }, 'across', 700, 'in');
    const numbered = marks.filter((mark) => mark.rank === 0);
    expect(numbered.map((mark) => mark.text)).toEqual(['0', '1', '2', '3', '4', '5']);
    expect(numbered[1]?.at).toBeCloseTo(100 + 25.4 * 4, 6);
    expect(marks.length).toBeGreaterThan(60);
  });

  it('go up from the lower edge', () => {
    const marks = rulerMarks({ scale: 1, x: 0, y: 400 }, 'up', 500, 'mm').filter((mark) => mark.rank === 0);
    expect(marks.find((mark) => mark.text === '100')?.at).toBe(300);
    expect(marks.some((mark) => mark.text === '−100')).toBe(true);
  });
});

describe('what lies under a point', () => {
  const { content } = layout;
  const middle = (content.bottom + content.top) / 2;

  it('is a border line, the edge of a gap, a window or nothing', () => {
    expect(hitAt(layout, [], { x: content.left + 1, y: middle }, 2)).toEqual({ kind: 'border', side: 'left' });
    const gap = layout.gaps.find((each) => each.at === 'windows.gap');
    expect(hitAt(layout, [], { x: gap?.to ?? 0, y: middle }, 2)).toMatchObject({ kind: 'gap', end: 'to' });
    expect(hitAt(layout, [], { x: content.left + 30, y: middle }, 2)).toEqual({ kind: 'window', window: 0 });
    expect(hitAt(layout, [], { x: 2, y: 2 }, 2)).toBeUndefined();
  });
});

describe('gestures', () => {
  it('drag a border to the step, and change nothing when they come back', () => {
    const gesture = beginGesture(ground, { kind: 'border', side: 'left' });
    const { edits } = gesture?.move({ x: 13, y: 0 }) ?? { edits: [] };
    const after = lay(setAll(written, edits)).layout;
    const steps = after.borders.cut.left / (25.4 / 16);
    expect(steps).toBeCloseTo(Math.round(steps), 6);
    expect(after.borders.cut.left - layout.borders.cut.left).toBeGreaterThan(11);
    expect(gesture?.move({ x: 0.2, y: 0 }).edits).toEqual([]);
  });

  it('drag a gap so that its edge stays under the pointer', () => {
    const index = layout.gaps.findIndex((each) => each.at === 'windows.gap');
    const gesture = beginGesture(ground, { kind: 'gap', gap: index, end: 'from' });
    const after = lay(setAll(written, gesture?.move({ x: -12.7, y: 0 }).edits ?? [])).layout;
    expect((after.gaps[index]?.from ?? 0) - (layout.gaps[index]?.from ?? 0)).toBeCloseTo(-12.7, 6);
  });

  it('move a free window by its coordinates', () => {
    const index = layout.windows.findIndex((window) => window.at === 'free[0]');
    const gesture = beginGesture(ground, { kind: 'window', window: index });
    const moved = gesture?.move({ x: 25.4, y: 12.7 });
    expect(moved?.edits).toEqual([
      { at: 'free[0].at.left', value: '11' },
      { at: 'free[0].at.bottom', value: '2' },
    ]);
    expect(moved?.guides.filter((guide) => guide.kind === 'distance')).toHaveLength(2);
  });

  it('leave arranged windows where their group puts them', () => {
    expect(beginGesture(ground, { kind: 'window', window: 0 })).toBeUndefined();
  });
});

it('a window snaps to the middle of the blank when it comes near', () => {
  const index = layout.windows.findIndex((window) => window.at === 'free[0]');
  const wanted = (layout.frame.blank.width - 4 * 25.4) / 2;
  const { corner, guides } = snapWindow(layout, index, { x: wanted + 1.3, y: 40 }, 25.4 / 16, 2);
  expect(corner.x).toBeCloseTo(wanted, 9);
  expect(guides).toContainEqual({ kind: 'line', axis: 'across', at: layout.frame.blank.width / 2 });
});

describe('numbers on the picture', () => {
  it('add up to the blank as shown', () => {
    const dimensions = borderDimensions(job, layout, showing);
    const value = (side: string) => dimensions.find((each) => each.side === side)?.shown.value ?? NaN;
    const { blank } = layout.frame;
    const content = layout.content.right - layout.content.left;
    expect(value('left') + Math.round(content / (25.4 / 16)) * (25.4 / 16) + value('right')).toBeCloseTo(
      blank.width,
      6,
    );
  });

  it('name every gap of the row and what governs it', () => {
    const gaps = gapDimensions(layout, showing).filter((each) => each.at === 'windows.gap');
    expect(gaps.map((each) => each.shown.text)).toEqual(['1 1/2', '1 1/2']);
  });
});

describe('the drawing', () => {
  it('lays the layers over the pictures from the bottom up, under the frame', () => {
    const keys = drawFront(layout, new Map(), detailAt(2)).map((shape) => shape.key);
    expect(new Set(keys).size).toBe(keys.length);
    const place = (key: string) => keys.indexOf(key);
    expect(place('cards 0')).toBeGreaterThan(-1);
    expect(place('cards 0')).toBeLessThan(place('layer 2'));
    expect(place('layer 2')).toBeLessThan(place('layer 1'));
    expect(place('layer 1 bevel left')).toBeLessThan(place('frame flat left'));
  });

  it('lights the bevels that face up and left least where they face away', () => {
    const shapes = drawFront(layout, new Map(), detailAt(2));
    const brightness = (side: string) => {
      const fill = shapes.find((shape) => shape.key === `layer 1 bevel ${side}`);
      return fill?.kind === 'area' ? Number.parseInt(fill.fill.slice(1, 3), 16) : NaN;
    };
    expect(brightness('bottom')).toBeGreaterThanOrEqual(brightness('right'));
    expect(brightness('right')).toBeGreaterThan(brightness('left'));
    expect(brightness('left')).toBeGreaterThan(brightness('top'));
  });

  it('shows from the back the openings of one layer', () => {
    const board = drawBack(layout, 2).find((shape) => shape.key === 'back of the board');
    expect(board?.kind === 'area' ? board.rings.length : 0).toBe(1 + layout.windows.length);
  });
});
