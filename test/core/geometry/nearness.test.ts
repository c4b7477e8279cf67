/** Distances between outlines against closed forms. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apart, isInside, nearest } from '../../../src/core/geometry/nearness';
import { parallelTo } from '../../../src/core/geometry/offset';
import { shiftOutline } from '../../../src/core/geometry/outline';
import { outlineOf } from '../../../src/core/geometry/shapes';

const oval = (width: number, height: number, x: number, y: number) =>
  shiftOutline(outlineOf({ kind: 'oval' }, { width, height }), { x: x - width / 2, y: y - height / 2 });

it('two circles: distance of the centres less both radii', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 6.28, noNaN: true }),
      fc.double({ min: 80, max: 300, noNaN: true }),
      (angle, apart) => {
        const found = nearest(oval(60, 60, 0, 0), oval(90, 90, apart * Math.cos(angle), apart * Math.sin(angle)));
        expect(found.distance).toBeCloseTo(apart - 75, 6);
      },
    ),
    { numRuns: 100 },
  );
});

it('rectangles: the gap, or the way between corners', () => {
  const box = (x: number, y: number) =>
    shiftOutline(outlineOf({ kind: 'rectangle' }, { width: 40, height: 30 }), { x, y });
  expect(nearest(box(0, 0), box(50, 5)).distance).toBeCloseTo(10, 9);
  expect(nearest(box(0, 0), box(43, 34)).distance).toBeCloseTo(5, 9);
});

it('an ellipse and its parallel curve lie as far apart everywhere, and so does any pair of ovals and one widened to touch', () => {
  const one = oval(120, 70, 0, 0);
  expect(nearest(one, parallelTo(one, 9)!.outline).distance).toBeCloseTo(9, 6);
  fc.assert(
    fc.property(fc.double({ min: 0, max: 6.28, noNaN: true }), (angle) => {
      const other = oval(50, 90, 160 * Math.cos(angle), 160 * Math.sin(angle));
      const gap = nearest(one, other).distance;
      const wider = parallelTo(one, gap)!.outline;
      // Widened by the gap it touches.
      expect(nearest(wider, other).distance).toBeLessThan(1e-6);
    }),
    { numRuns: 30 },
  );
});

it('tells inside from outside', () => {
  const one = oval(100, 60, 0, 0);
  fc.assert(
    fc.property(
      fc.double({ min: -60, max: 60, noNaN: true }),
      fc.double({ min: -40, max: 40, noNaN: true }),
      (x, y) => {
        const level = (x / 50) ** 2 + (y / 30) ** 2;
        if (Math.abs(level - 1) < 1e-3) return;
        expect(isInside(one, { x, y })).toBe(level < 1);
      },
    ),
    { numRuns: 300 },
  );
  const hollow = outlineOf({ kind: 'scooped', radius: 20 }, { width: 100, height: 80 });
  expect([
    isInside(hollow, { x: 10, y: 10 }),
    isInside(hollow, { x: 15, y: 15 }),
    isInside(hollow, { x: 50, y: 1 }),
  ]).toEqual([false, true, true]);
});

describe('outlines of which one reaches into the other evenly from both sides', () => {
  const large = outlineOf({ kind: 'oval' }, { width: 500, height: 600 });
  const sheet = outlineOf({ kind: 'rectangle' }, { width: 500, height: 200 });

  // In the middle, between the two crossings, the way from edge to edge is greatest and square to both.
  it.each([1, 5, 12.7, 20])('%d mm: they cross, and have to be moved apart by as much', (into) => {
    const above = shiftOutline(sheet, { x: 0, y: 600 - into });
    expect(nearest(large, above).distance).toBe(0);
    expect(nearest(above, large).distance).toBe(0);
    expect(apart(large, above)).toBeCloseTo(-into, 5);
  });
});
