/** How many windows fit a blank: counted again by brute force, by closed forms, and by true distances between ovals. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxAt, heightOf, widthOf, type Box, type Size } from '../../../src/core/geometry/box';
import { nearest } from '../../../src/core/geometry/nearness';
import { shiftOutline } from '../../../src/core/geometry/outline';
import { outlineOf } from '../../../src/core/geometry/shapes';
import { rowPitch } from '../../../src/core/layout/fit-staggered';
import { howMany, placesOf, type HowMany } from '../../../src/core/layout/how-many';
import { readHowMany, type HowManyAsk } from '../../../src/core/layout/how-many-ask';
import { howManyWords } from '../../../src/core/layout/how-many-words';

const INCHES = { unit: 'in', inchStep: 16, metricStep: 0.5 } as const;

function asked(size: string, on: string, gap: string, border: string, shape: 'rectangle' | 'oval' = 'rectangle') {
  const read = readHowMany({ size, on, gap, border, shape }, 'in');
  if (!read.ok) throw new Error(read.problems[0]?.message);
  return howMany(read.value);
}

/** Lengths in whole numbers, so that counting by hand is exact. */
const whole = fc.record({
  size: fc.record({ width: fc.integer({ min: 1, max: 6 }), height: fc.integer({ min: 1, max: 6 }) }),
  blank: fc.record({ width: fc.integer({ min: 6, max: 24 }), height: fc.integer({ min: 6, max: 24 }) }),
  gap: fc.integer({ min: 1, max: 3 }),
  border: fc.record({
    left: fc.integer({ min: 0, max: 2 }),
    top: fc.integer({ min: 0, max: 2 }),
    right: fc.integer({ min: 0, max: 2 }),
    bottom: fc.integer({ min: 0, max: 3 }),
  }),
  shape: fc.constant('rectangle' as const),
});

/** Windows set down one by one until the next would pass the end. */
function along(room: number, length: number, gap: number): number {
  let count = 0;
  for (let end = length; end <= room; end += gap + length) count += 1;
  return count;
}

/** The most over every straight cut of the room at a whole number, upright on either side of it and turned on the other. */
function byBruteForce({ size, blank, gap, border }: HowManyAsk): number {
  const room = { width: blank.width - border.left - border.right, height: blank.height - border.top - border.bottom };
  const filled = (width: number, height: number, one: Size) =>
    along(width, one.width, gap) * along(height, one.height, gap);
  const turned = { width: size.height, height: size.width };
  let most = Math.max(filled(room.width, room.height, size), filled(room.width, room.height, turned));
  for (let cut = 0; cut <= room.width; cut += 1)
    most = Math.max(most, filled(cut, room.height, size) + filled(room.width - cut - gap, room.height, turned));
  for (let cut = 0; cut <= room.height; cut += 1)
    most = Math.max(most, filled(room.width, cut, size) + filled(room.width, room.height - cut - gap, turned));
  return most;
}

function apart(one: Box, other: Box): number {
  const across = Math.max(one.left - other.right, other.left - one.right);
  const up = Math.max(one.bottom - other.top, other.bottom - one.top);
  return Math.max(across, up);
}

function expectInPlace(answer: HowMany): void {
  const { ask, best, borders } = answer;
  const places = placesOf(answer);
  expect(places).toHaveLength(best.count);
  const boxes = places.map(({ box }) => box);
  for (const { box, turned } of places) {
    expect(widthOf(box)).toBeCloseTo(turned ? ask.size.height : ask.size.width, 9);
    expect(heightOf(box)).toBeCloseTo(turned ? ask.size.width : ask.size.height, 9);
  }
  if (boxes.length === 0) return;
  const { blank, border } = ask;
  const resulting = {
    left: Math.min(...boxes.map(({ left }) => left)),
    right: blank.width - Math.max(...boxes.map(({ right }) => right)),
    bottom: Math.min(...boxes.map(({ bottom }) => bottom)),
    top: blank.height - Math.max(...boxes.map(({ top }) => top)),
  };
  for (const side of ['left', 'right', 'top', 'bottom'] as const) {
    expect(resulting[side]).toBeCloseTo(borders[side], 9);
    expect(resulting[side]).toBeGreaterThan(border[side] - 1e-9);
  }
  expect(resulting.left - border.left).toBeCloseTo(resulting.right - border.right, 9);
  expect(resulting.top - border.top).toBeCloseTo(resulting.bottom - border.bottom, 9);
}

describe('rectangles', () => {
  it('as many as brute force finds, in their places', () => {
    fc.assert(
      fc.property(whole, (ask) => {
        const answer = howMany(ask);
        expect(answer.best.count).toBe(byBruteForce(ask));
        expectInPlace(answer);
        const boxes = placesOf(answer).map(({ box }) => box);
        boxes.forEach((box, index) => {
          for (const other of boxes.slice(index + 1)) expect(apart(box, other)).toBeGreaterThan(ask.gap - 1e-9);
        });
      }),
      { numRuns: 400 },
    );
  });

  it('what fits to the last bit, fits', () => {
    // 16 - 2 x 1.7 = 12.6 = 3 x 4 + 2 x 0.3, which doubles do not reach exactly.
    expect(asked('4 x 4 in', '16 x 7.4 in', '0.3 in', '1.7 in').best.count).toBe(3);
    expect(asked('4 x 4 in', '15.999 x 7.4 in', '0.3 in', '1.7 in').best.count).toBe(2);
  });

  it('the best turn, alone or mixed', () => {
    expect(asked('4 x 6 in', '14 x 20 in', '1/2 in', '2 in').best).toMatchObject({ way: 'upright', count: 4 });
    expect(asked('6 x 4 in', '14 x 20 in', '1/2 in', '2 in').best).toMatchObject({ way: 'turned', count: 4 });
    // Room 12 x 16 in: 4 + 1/2 + 6 wide; two upright are 12 1/2 high, three turned 13.
    const mixed = asked('4 x 6 in', '16 x 20 in', '1/2 in', '2 in');
    expect(mixed.best).toMatchObject({ way: 'mixed', along: 'across', count: 5 });
    expect(mixed.plain).toMatchObject([{ count: 4 }, { way: 'turned', count: 3 }]);
    expectInPlace(mixed);
  });
});

describe('a little less', () => {
  it('gap or border holds more, and a hair more of it does not', () => {
    let seen = 0;
    fc.assert(
      fc.property(whole, (ask) => {
        const { best, smallerGap, smallerBorder } = howMany(ask);
        if (smallerGap) {
          seen += 1;
          expect(smallerGap.gap).toBeLessThan(ask.gap);
          expect(howMany({ ...ask, gap: smallerGap.gap }).best.count).toBeGreaterThan(best.count);
          expect(howMany({ ...ask, gap: smallerGap.gap + 1e-6 }).best.count).toBe(best.count);
        }
        if (!smallerBorder) return;
        const less = (by: number) => {
          const { left, top, right, bottom } = ask.border;
          return { ...ask, border: { left: left - by, top: top - by, right: right - by, bottom: bottom - by } };
        };
        expect(howMany(less(smallerBorder.by)).best.count).toBe(smallerBorder.count);
        expect(howMany(less(smallerBorder.by - 1e-6)).best.count).toBe(best.count);
      }),
      { numRuns: 300 },
    );
    expect(seen).toBeGreaterThan(10);
  });

  it('is said with lengths that work when typed', () => {
    const words = howManyWords(asked('4 x 6 in', '16 x 20 in', '1/2 in', '2 in'), INCHES);
    expect(words).toEqual([
      '5 fit: 1 column x 2 rows upright beside 1 column x 3 rows turned on their side.',
      'Borders then: 2 3/4 in left and right, 3 1/2 in top and bottom.',
      'All upright 4, all turned 3.',
      '6 would fit with borders of at most 1 3/4 in.',
    ]);
    expect(asked('4 x 6 in', '16 x 20 in', '1/2 in', '1 3/4 in').best.count).toBe(6);
  });
});

describe('ovals', () => {
  it('of circles the pitch from row to row is that of equal triangles', () => {
    for (const gap of [1, 7, 25.4])
      expect(rowPitch({ width: 60, height: 60 }, gap)).toBeCloseTo((60 + gap) * Math.sqrt(0.75), 9);
  });

  it('stand a gap apart at their nearest, from row to row', () => {
    const sizes = fc.record({ width: fc.integer({ min: 20, max: 200 }), height: fc.integer({ min: 20, max: 200 }) });
    fc.assert(
      fc.property(sizes, fc.integer({ min: 1, max: 30 }), (size, gap) => {
        const pitch = rowPitch(size, gap);
        const oval = outlineOf({ kind: 'oval' }, size);
        const beside = nearest(oval, shiftOutline(oval, { x: (size.width + gap) / 2, y: pitch })).distance;
        const over = nearest(oval, shiftOutline(oval, { x: 0, y: 2 * pitch })).distance;
        expect(Math.min(beside, over)).toBeCloseTo(gap, 6);
      }),
      { numRuns: 25 },
    );
  });

  it('are staggered where that holds more, in their places and apart', () => {
    let seen = 0;
    const asks = fc.record({
      size: fc.record({ width: fc.integer({ min: 30, max: 60 }), height: fc.integer({ min: 30, max: 60 }) }),
      blank: fc.record({ width: fc.integer({ min: 250, max: 500 }), height: fc.integer({ min: 250, max: 500 }) }),
      gap: fc.integer({ min: 2, max: 10 }),
      border: fc.constant({ left: 10, top: 10, right: 10, bottom: 20 }),
      shape: fc.constant('oval' as const),
    });
    fc.assert(
      fc.property(asks, (ask) => {
        const answer = howMany(ask);
        const plain = howMany({ ...ask, shape: 'rectangle' });
        expect(answer.best.count).toBeGreaterThanOrEqual(plain.best.count);
        expectInPlace(answer);
        if (answer.best.way !== 'staggered') return;
        seen += 1;
        expect(answer.best.count).toBeGreaterThan(plain.best.count);
        const ovals = placesOf(answer).map(({ box }) =>
          shiftOutline(outlineOf({ kind: 'oval' }, { width: widthOf(box), height: heightOf(box) }), {
            x: box.left,
            y: box.bottom,
          }),
        );
        const [first, ...others] = ovals.slice(0, 10);
        for (const other of others) expect(nearest(first!, other).distance).toBeGreaterThan(ask.gap - 1e-6);
      }),
      { numRuns: 25 },
    );
    expect(seen).toBeGreaterThan(3);
  });

  it('circles of 2 in: staggered columns hold more than a grid', () => {
    // Room 10 x 13 1/2 in. A grid: 4 x 6. Columns are 2 1/4 x sqrt(3) / 2 = 1.9486 in apart: 1 + floor(8 / 1.9486) = 5,
    // of floor(13.75 / 2.25) = 6 and floor((13.75 - 1.125) / 2.25) = 5 by turns.
    const answer = asked('2 x 2 in', '11 x 14.5 in', '1/4 in', '1/2 in', 'oval');
    expect(answer.plain).toMatchObject([{ count: 24 }]);
    expect(answer.best).toMatchObject({ way: 'staggered', along: 'up', rows: 5, inRow: [6, 5], count: 28 });
    expect(howManyWords(answer, INCHES)[0]).toBe('28 fit: 5 staggered columns of 6 and 5 by turns.');
  });
});

describe('what can not be is told', () => {
  it.each([
    [{ size: '4 by', on: '16 x 20', gap: '1/2', border: '2' }, 'size', 'size-unreadable'],
    [{ size: '4 x 0', on: '16 x 20', gap: '1/2', border: '2' }, 'size', 'length-out-of-range'],
    [{ size: '4 x 6', on: '16 x 20', gap: '0', border: '2' }, 'gap', 'length-out-of-range'],
    [{ size: '4 x 6', on: '16 x 20', gap: '1/2', border: '-1' }, 'border', 'length-out-of-range'],
    [{ size: '4 x 6', on: '16 x 20', gap: '1/2', border: '8' }, 'border', 'no-room-for-windows'],
  ])('%j', (written, at, code) => {
    const read = readHowMany(written, 'in');
    expect(read).toMatchObject({ ok: false, problems: [{ at, code }] });
  });

  it('a window larger than the room fits never, and is told what would do', () => {
    const answer = asked('10 x 12 in', '11 x 14 in', '1 in', '2 in');
    expect(answer.best.count).toBe(0);
    expect(placesOf(answer)).toEqual([]);
    expect(howManyWords(answer, INCHES)).toEqual([
      'None of 10 x 12 in fits on 11 x 14 in with these borders, upright or turned.',
      '1 would fit with borders of at most 1/2 in.',
    ]);
    expect(boxAt({ x: 0, y: 0 }, answer.ask.blank).right).toBe(279.4);
  });
});
