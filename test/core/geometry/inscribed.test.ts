/** The largest rectangle inside an outline, against closed forms, and never beyond any outline. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heightOf, widthOf, type Box, type Point } from '../../../src/core/geometry/box';
import { largestRectangleIn } from '../../../src/core/geometry/inscribed';
import { isInside } from '../../../src/core/geometry/nearness';
import { boundsOf, flatten, type Outline } from '../../../src/core/geometry/outline';
import { outlineOf } from '../../../src/core/geometry/shapes';
import { anyShape, anyStar } from './random-outlines';

const areaIn = (outline: Outline): number => {
  const box = largestRectangleIn(outline);
  return box ? widthOf(box) * heightOf(box) : 0;
};

describe('closed forms of the largest rectangle inside', () => {
  it.each([
    ['an ellipse: half of width times height', { kind: 'oval' }, { width: 254, height: 203.2 }, (254 * 203.2) / 2],
    ['a semicircle: r²', { kind: 'arch', rise: 100 }, { width: 200, height: 100 }, 100 ** 2],
    ['a triangle: half its area', { kind: 'polygon', sides: 3 }, { width: 100, height: 50 * Math.sqrt(3) }, 2500 * (Math.sqrt(3) / 2)],
    ['a rectangle: all of it', { kind: 'rectangle' }, { width: 120, height: 70 }, 120 * 70],
    ['a cross whose arms are a third wide: one arm', { kind: 'stepped', step: 30, count: 1 }, { width: 90, height: 90 }, 30 * 90],
  ] as const)('%s', (_, shape, size, wanted) => {
    const area = areaIn(outlineOf(shape, size));
    expect(area).toBeLessThanOrEqual(wanted);
    expect(area).toBeGreaterThan(0.99 * wanted);
  }); // prettier-ignore
});

describe('the largest rectangle inside any outline', () => {
  it.each([
    ['shape', anyShape],
    ['star', anyStar],
  ] as const)('keeps within a %s', (_, outlines) => {
    fc.assert(
      fc.property(outlines, (outline) => {
        const box = largestRectangleIn(outline);
        // Every shape of ten millimetres and more has room for something.
        expect(box).toBeDefined();
        expect(isInside(outline, middleOf(box!))).toBe(true);
        expect(flatten(outline, 0.001).filter((point) => isWithin(point, box!))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('is no smaller than what grows about any place in a shape until it meets the outline', () => {
    const share = fc.double({ min: 0.02, max: 0.98, noNaN: true });
    fc.assert(
      fc.property(anyShape, share, share, share, (outline, x, y, slope) => {
        const bounds = boundsOf(outline);
        const middle = { x: bounds.left + x * widthOf(bounds), y: bounds.bottom + y * heightOf(bounds) };
        fc.pre(isInside(outline, middle));
        const points = flatten(outline, 0.01).flatMap((from, index, all) =>
          parted(from, all[(index + 1) % all.length]!),
        );
        const [width, height] = [slope * widthOf(bounds), (1 - slope) * heightOf(bounds)];
        // How far the nearest point lets it grow, where growth of 1 is the whole width and height.
        const grown = Math.min(...points.map((at) => Math.max(Math.abs(at.x - middle.x) / width, Math.abs(at.y - middle.y) / height))); // prettier-ignore
        expect(areaIn(outline)).toBeGreaterThan(0.97 * 4 * grown ** 2 * width * height);
      }),
      { numRuns: 100 },
    );
  });
});

/** Points along a line, so close that a rectangle between two of them is hardly larger than one that meets the line. */
const parted = (a: Point, b: Point): Point[] =>
  Array.from({ length: 200 }, (_, index) => ({ x: a.x + ((b.x - a.x) * index) / 200, y: a.y + ((b.y - a.y) * index) / 200 })); // prettier-ignore

const middleOf = ({ left, right, bottom, top }: Box) => ({ x: (left + right) / 2, y: (bottom + top) / 2 });
const isWithin = ({ x, y }: Point, { left, right, bottom, top }: Box) => x > left && x < right && y > bottom && y < top;
