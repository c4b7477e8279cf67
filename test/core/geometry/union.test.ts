/** Unions against closed forms and against Clipper2 (Angus Johnson, an independent library) on finely flattened outlines. */
import { FillRule, unionD, areaPathsD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boxOutline,
  areaOf,
  flatten,
  isClosed,
  lengthOf,
  shiftOutline,
  type Outline,
} from '../../../src/core/geometry/outline';
import { outlineOf, type Shape } from '../../../src/core/geometry/shapes';
import { crossingOf } from '../../../src/core/geometry/region';
import { unionOf } from '../../../src/core/geometry/union';

const box = (left: number, bottom: number, width: number, height: number): Outline =>
  boxOutline({ left, bottom, right: left + width, top: bottom + height });
const circle = (x: number, y: number, radius: number) =>
  shiftOutline(outlineOf({ kind: 'oval' }, { width: 2 * radius, height: 2 * radius }), {
    x: x - radius,
    y: y - radius,
  });
const whole = (outlines: readonly Outline[]) =>
  unionOf(outlines).reduce(
    (sum, { outer, holes }) => sum + areaOf(outer) + holes.reduce((a, hole) => a + areaOf(hole), 0),
    0,
  );

describe('the union of outlines', () => {
  it('of rectangles that overlap has the corners of both', () => {
    const [only, ...others] = unionOf([box(0, 0, 100, 80), box(60, 40, 80, 100)]);
    expect(others).toEqual([]);
    expect(only?.outer).toHaveLength(8);
    expect(areaOf(only?.outer ?? [])).toBeCloseTo(100 * 80 + 80 * 100 - 40 * 40, 9);
  });

  it('of rectangles that share a side is one rectangle, without the side', () => {
    const [only] = unionOf([box(0, 0, 50, 80), box(50, 0, 30, 80)]);
    expect(only?.outer).toHaveLength(4);
    expect(lengthOf(only?.outer ?? [])).toBeCloseTo(320, 9);
    const part = unionOf([box(0, 0, 50, 80), box(50, 20, 30, 30)]);
    expect(part).toHaveLength(1);
    expect(part[0]?.outer).toHaveLength(8);
    expect(whole([box(0, 0, 50, 80), box(50, 20, 30, 30)])).toBeCloseTo(4900, 9);
  });

  it('of two circles leaves out the lens between them once', () => {
    // Two circles of radius r, d apart: 2 pi r² - (2 r² acos(d / 2r) - d/2 sqrt(4r² - d²)).
    const [r, d] = [50, 60];
    const lens = 2 * r * r * Math.acos(d / (2 * r)) - (d / 2) * Math.sqrt(4 * r * r - d * d);
    expect(whole([circle(0, 0, r), circle(d, 0, r)])).toBeCloseTo(2 * Math.PI * r * r - lens, 6);
    // Arcs stay arcs of the same ellipses, cut where they cross.
    for (const edge of unionOf([circle(0, 0, r), circle(d, 0, r)])[0]?.outer ?? []) {
      expect(edge.kind).toBe('oval');
      if (edge.kind === 'oval') expect(edge.radii).toEqual({ x: r, y: r });
    }
  });

  it('of equal outlines is that outline; of one inside another the outer one', () => {
    for (const kind of ['oval', 'rectangle'] as const) {
      const shape = outlineOf({ kind }, { width: 90, height: 70 });
      expect(whole([shape, shape, shape])).toBeCloseTo(areaOf(shape), 9);
      expect(whole([shape, box(30, 20, 20, 20)])).toBeCloseTo(areaOf(shape), 9);
    }
  });

  it('keeps apart what only touches in a point, and what does not touch', () => {
    expect(unionOf([box(0, 0, 10, 10), box(10, 10, 10, 10)])).toHaveLength(2);
    expect(unionOf([circle(0, 0, 10), circle(20, 0, 10)])).toHaveLength(2);
    expect(unionOf([box(0, 0, 10, 10), box(11, 0, 10, 10)])).toHaveLength(2);
  });

  it('leaves the hole that four rectangles enclose', () => {
    const [only, ...others] = unionOf([box(0, 0, 90, 20), box(0, 70, 90, 20), box(0, 0, 20, 90), box(70, 0, 20, 90)]);
    expect(others).toEqual([]);
    expect(only?.holes).toHaveLength(1);
    expect(areaOf(only?.holes[0] ?? [])).toBeCloseTo(-50 * 50, 9);
    expect(only?.outer).toHaveLength(4);
  });

  const length = fc.double({ min: 20, max: 200, noNaN: true });
  const shape: fc.Arbitrary<Shape> = fc.constantFrom<Shape>(
    { kind: 'rectangle' },
    { kind: 'oval' },
    { kind: 'rounded', radius: 8 },
    { kind: 'scooped', radius: 7 },
    { kind: 'cut-corners', cut: 6 },
    { kind: 'stepped', step: 3, count: 2 },
    { kind: 'arch', rise: 9 },
  );
  const placed = fc
    .record({
      shape,
      width: length,
      height: length,
      x: fc.integer({ min: -80, max: 80 }),
      y: fc.integer({ min: -80, max: 80 }),
    })
    .map(({ shape, width, height, x, y }) => shiftOutline(outlineOf(shape, { width, height }), { x, y }));

  it('has the area that Clipper2 finds, and simple outlines', () => {
    fc.assert(
      fc.property(fc.array(placed, { minLength: 2, maxLength: 5 }), (outlines) => {
        const regions = unionOf(outlines);
        const paths = outlines.map((outline) => flatten(outline, 0.0005));
        const theirs = areaPathsD(unionD(paths, [], FillRule.NonZero, 4));
        // The chords cut off less than their length times the tolerance; Clipper rounds to a tenth of a micron.
        const slack = 0.001 * outlines.reduce((sum, outline) => sum + lengthOf(outline), 1);
        expect(Math.abs(whole(outlines) - theirs)).toBeLessThan(slack);
        for (const { outer, holes } of regions)
          for (const outline of [outer, ...holes]) {
            expect(isClosed(outline, 3e-6)).toBe(true);
            expect(crossingOf(outline)).toBeUndefined();
          }
      }),
      { numRuns: 400, endOnFailure: true },
    );
  });
});
