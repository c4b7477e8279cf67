/** Rings of windows: true distances between outlines, by closed forms and by sampling. */
import { describe, expect, it } from 'vitest';
import { pointOn } from '../../../src/core/geometry/edge';
import { boxOutline, type Outline } from '../../../src/core/geometry/outline';
import type { PlacedWindow } from '../../../src/core/layout/layout';
import type { WrittenNode } from '../../../src/core/job/written';
import { solveLinear } from '../../../src/core/layout/solve-linear';
import { readLength } from '../../../src/core/units';
import { planned, problemOf, problemsOf, type Contents } from '../open';

const IN = 25.4;
const circle = (size: string): WrittenNode => ({ kind: 'window', size: `${size} x ${size} in`, shape: 'oval' });
const plain = (size: string): WrittenNode => ({ kind: 'window', size });

function ring(items: WrittenNode[], more: object = {}, contents: Contents = {}): readonly PlacedWindow[] {
  return planned({ frame: { size: '40 x 40 in' }, windows: { kind: 'ring', items, gap: '1 in', ...more }, ...contents })
    .layout.windows;
}

const outlineOf = ({ window, layers }: PlacedWindow): Outline => layers.at(-1)?.outlines?.opening ?? boxOutline(window);
const middleOf = ({ window }: PlacedWindow) => ({
  x: (window.left + window.right) / 2,
  y: (window.bottom + window.top) / 2,
});

/** The least distance of two outlines, from 400 points on each edge of both. */
function sampled(one: PlacedWindow | undefined, other: PlacedWindow | undefined): number {
  if (!one || !other) throw new Error('there are two windows');
  const points = (of: PlacedWindow) =>
    outlineOf(of).flatMap((edge) => Array.from({ length: 401 }, (_, index) => pointOn(edge, index / 400)));
  const others = points(other);
  return Math.min(...points(one).map((a) => Math.min(...others.map((b) => Math.hypot(a.x - b.x, a.y - b.y)))));
}

describe('round a circle', () => {
  it('circles lie with their middles on a circle: radius + gap + radius', () => {
    const [middle, ...around] = ring([circle('6'), ...Array.from({ length: 6 }, () => circle('3'))]);
    const centre = middleOf(middle!);
    expect(around).toHaveLength(6);
    for (const each of around) {
      const { x, y } = middleOf(each);
      expect(Math.hypot(x - centre.x, y - centre.y)).toBeCloseTo((3 + 1 + 1.5) * IN, 6);
    }
    // The first at the top, then clockwise by sixths.
    const [first, second] = around.map(middleOf);
    expect(first!.x).toBeCloseTo(centre.x, 6);
    expect(second!.x - centre.x).toBeCloseTo(5.5 * IN * Math.sin(Math.PI / 3), 6);
    expect(second!.y - centre.y).toBeCloseTo(5.5 * IN * Math.cos(Math.PI / 3), 6);
  });

  it('starts where it is told, clockwise from the top', () => {
    const [middle, first] = ring([circle('6'), circle('3'), circle('3')], { start: 90 });
    expect(middleOf(first!).x - middleOf(middle!).x).toBeCloseTo(5.5 * IN, 6);
    expect(middleOf(first!).y).toBeCloseTo(middleOf(middle!).y, 6);
  });
});

describe('equal gap is not equal offset of the middles', () => {
  it('a square beside another and one at its corner: 1 in from edge to edge, and from corner to corner', () => {
    const [middle, ...around] = ring([plain('4 x 4 in'), ...Array.from({ length: 8 }, () => plain('2 x 2 in'))], { spacing: 'equal angles' }); // prettier-ignore
    const centre = middleOf(middle!);
    const far = around.map((each) => Math.hypot(middleOf(each).x - centre.x, middleOf(each).y - centre.y) / IN);
    // At the top: 2 + 1 + 1. At 45 degrees corners face: the gap is the diagonal between them, 2 sqrt 2 + 1 + sqrt 2.
    expect(far[0]).toBeCloseTo(4, 6);
    expect(far[1]).toBeCloseTo(3 * Math.SQRT2 + 1, 6);
    for (const each of around) expect(sampled(middle, each)).toBeCloseTo(IN, 3);
  });

  it('shapes of many kinds keep the gap, and equal distances from one to the next', () => {
    const items: WrittenNode[] = [
      { kind: 'window', size: '8 x 5 in', shape: 'oval' },
      plain('3 x 2 in'),
      circle('2'),
      { kind: 'window', size: '2 x 3 in', shape: 'arch' },
      { kind: 'window', size: '3 x 3 in', shape: 'polygon' },
      plain('2 x 3 in'),
      { kind: 'window', size: '3 x 2 in', shape: { kind: 'cut-corners', cut: '1/2 in' } },
    ];
    const [middle, ...around] = ring(items);
    for (const each of around) expect(sampled(middle, each)).toBeCloseTo(IN, 2);
    const between = around.map((each, index) => sampled(each, around[(index + 1) % around.length]));
    for (const gap of between) expect(gap).toBeCloseTo(between[0]!, 1);
  });
});

it.each([
  [25, 20, 348],
  [30, 20, 348],
  [30, 50, 71],
])(
  'round a square, with one of %s x %s mm among squares, corners do not keep the distances from coming out equal',
  (width, height, start) => {
    const items = [
      '40 x 40 mm',
      ...Array.from({ length: 5 }, (_, index) => (index === 2 ? `${width} x ${height} mm` : '20 x 20 mm')),
    ];
    const [, ...around] = ring(items.map(plain), { gap: '20 mm', start });
    const between = around.map(({ window }, index) => {
      const next = around[(index + 1) % around.length]!.window;
      const across = Math.max(0, next.left - window.right, window.left - next.right);
      const up = Math.max(0, next.bottom - window.top, window.bottom - next.top);
      return Math.hypot(across, up);
    });
    for (const gap of between) expect(gap).toBeCloseTo(between[0]!, 6);
  },
);

describe('on an ellipse', () => {
  it('the middles lie on it, and the gaps from one window to the next are equal', () => {
    const around = ring(
      Array.from({ length: 8 }, () => circle('3')),
      { centre: 'none', on: '20 x 14 in' },
    );
    expect(around).toHaveLength(8);
    const points = around.map(middleOf);
    const centre = { x: (points[0]!.x + points[4]!.x) / 2, y: (points[0]!.y + points[4]!.y) / 2 };
    for (const { x, y } of points)
      expect(((x - centre.x) / (10 * IN)) ** 2 + ((y - centre.y) / (7 * IN)) ** 2).toBeCloseTo(1, 6);
    const chords = points.map(({ x, y }, index) =>
      Math.hypot(x - points[(index + 1) % 8]!.x, y - points[(index + 1) % 8]!.y),
    );
    for (const chord of chords) expect(chord).toBeCloseTo(chords[0]!, 5);
  });
});

describe('what cannot be', () => {
  it('a ring without a middle and without an ellipse', () => {
    const contents: Contents = { windows: { kind: 'ring', centre: 'none', items: [circle('2')] } };
    expect(problemOf(contents, 'ring-without-middle')).toMatchObject({ at: 'windows', severity: 'error' });
  });

  it('a group in a ring', () => {
    const contents: Contents = {
      windows: { kind: 'ring', items: [circle('2'), { kind: 'row', items: [circle('2')] }] },
    };
    expect(problemOf(contents, 'ring-of-groups').at).toBe('windows.items[1]');
  });

  it('more windows than there is room for collide, and the gap is named', () => {
    const items = [circle('2'), ...Array.from({ length: 12 }, () => circle('3'))];
    const contents: Contents = { frame: { size: '40 x 40 in' }, windows: { kind: 'ring', items, gap: '1 in' } };
    expect(problemOf(contents, 'windows-collide').at).toBe('windows.gap');
  });
});

describe('too little board in a ring', () => {
  const frame = { size: '40 x 40 in' };
  const codes = (contents: Contents) =>
    problemsOf(contents)
      .filter(({ at }) => /(gap|on)$/.test(at))
      .map(({ code, severity }) => `${severity} ${code}`);
  it('the least gap that works is told, and that which holds well is a click away', () => {
    const ringOf = (gap: string): Contents => ({
      frame,
      windows: { kind: 'ring', gap, items: [circle('2'), ...Array.from({ length: 12 }, () => circle('3'))] },
    });
    const { remedy, fix } = problemOf(ringOf('1 in'), 'windows-collide');
    // Chords of 2 R sin 15 degrees less 3 in, with R = 1 + gap + 1 1/2: for 3/8 in a gap of 4.020, for 3/4 in of 4.745.
    expect(remedy).toBe('a gap of at least 4 1/16 in, better 4 3/4 in');
    expect(fix?.edits).toEqual([{ at: 'windows.gap', value: '4 3/4 in' }]);
    expect(codes(ringOf('4 in'))).toEqual(['error bridge-narrow']);
    expect(codes(ringOf('4 1/16 in'))).toEqual(['warning bridge-narrow']);
    expect(codes(ringOf('4 11/16 in'))).toEqual(['warning bridge-narrow']);
    expect(codes(ringOf('4 3/4 in'))).toEqual([]);
    expect(problemOf(ringOf('4 1/16 in'), 'bridge-narrow').remedy).toBe('a gap of 4 3/4 in or more');
  });

  it('so is the least ellipse of the same proportions', () => {
    const eight = Array.from({ length: 8 }, () => circle('3'));
    const ringOn = (on: string): Contents => ({ frame, windows: { kind: 'ring', centre: 'none', on, items: eight } });
    const { remedy, fix } = problemOf(ringOn('6 x 6 in'), 'windows-collide');
    // D sin 22.5 degrees less 3 in: for 3/8 in a D of 8.819, for 3/4 in of 9.799.
    expect(remedy).toBe('an ellipse of at least 8 7/8 x 8 7/8 in, better 9 13/16 x 9 13/16 in');
    expect(fix?.edits).toEqual([{ at: 'windows.on', value: '9 13/16 x 9 13/16 in' }]);
    expect(codes(ringOn('8 13/16 x 8 13/16 in'))).toEqual(['error bridge-narrow']);
    expect(codes(ringOn('8 7/8 x 8 7/8 in'))).toEqual(['warning bridge-narrow']);
    expect(codes(ringOn('9 13/16 x 9 13/16 in'))).toEqual([]);
  });

  it('counts what reveals take, with windows of many kinds', () => {
    const items = [plain('4 x 6 in'), plain('4 x 3 in'), ...Array.from({ length: 5 }, () => circle('3'))];
    const mat = { layers: [{}, { reveal: '1/2 in' }] };
    const ringOf = (gap: string): Contents => ({ frame, mat, windows: { kind: 'ring', gap, items } });
    const { fix } = problemOf(ringOf('1/2 in'), 'windows-collide');
    const right = String(fix?.edits[0]?.value);
    expect(codes(ringOf(right))).toEqual([]);
    const inches = readLength(right, 'in');
    if (!inches.ok) throw new Error('a length');
    expect(codes(ringOf(`${inches.mm - IN / 16} mm`))).toEqual(['warning bridge-narrow']);
  });
});

it('a ring stands in a row like one window', () => {
  const layout = planned({
    frame: { size: '40 x 20 in' },
    windows: { kind: 'row', gap: '2 in', items: [plain('4 x 4 in'), { kind: 'ring', items: [circle('4'), circle('2'), circle('2')], gap: '1 in' }] },
  }).layout; // prettier-ignore
  const [first, middle, top, bottom] = layout.windows;
  expect(middle!.window.left - first!.window.right).toBeCloseTo(2 * IN, 9);
  expect(top!.window.bottom - middle!.window.top).toBeCloseTo(IN, 6);
  expect(middle!.window.bottom - bottom!.window.top).toBeCloseTo(IN, 6);
});

it('measures gaps only where windows face one another squarely, and knows which of them the written gap governs', () => {
  const items = [circle('6'), ...Array.from({ length: 6 }, () => circle('3'))];
  const { gaps } = planned({ frame: { size: '40 x 40 in' }, windows: { kind: 'ring', items, gap: '1 in' } }).layout;
  const told = gaps.map(({ between, gap, at, rule }) => [between.toSorted((a, b) => a - b).join(), gap / IN, at, rule]);
  // Middles on a circle of 5.5 in, 60 degrees apart: 5.5 - 3 in from edge to edge of those that stand above one another.
  expect(told.toSorted()).toEqual([
    ['0,1', expect.closeTo(1, 6), 'windows.gap', IN],
    ['0,4', expect.closeTo(1, 6), 'windows.gap', IN],
    ['2,3', expect.closeTo(2.5, 6), undefined, undefined],
    ['5,6', expect.closeTo(2.5, 6), undefined, undefined],
  ]);
});

it('measures no gap across a ring, to a window that others stand before', () => {
  const items = Array.from({ length: 4 }, () => plain('3 x 3 in'));
  const windows: WrittenNode = { kind: 'ring', centre: 'none', on: '12 x 12 in', items };
  const { gaps } = planned({ frame: { size: '40 x 40 in' }, windows }).layout;
  expect(gaps).toEqual([]);
});

it('linear equations: a system solved by hand, and one without an answer', () => {
  expect(solveLinear([[0, 2, 1], [1, 1, 1], [2, 0, -1]], [7, 6, -1])).toEqual([1, 2, 3].map((value) => expect.closeTo(value, 12) as number)); // prettier-ignore
  expect(solveLinear([[1, 1], [2, 2]], [1, 2])).toBeUndefined(); // prettier-ignore
});
