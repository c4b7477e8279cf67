/** Small parts of paper: the scales that rules have, labels spread side by side, pages that are filled. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flowTight, unparted, type Block } from '../../src/outputs/paper/flow';
import { scaleFor } from '../../src/outputs/paper/scale';
import { spread } from '../../src/outputs/paper/spread';

describe('a scale', () => {
  // Metric rules are divided for 1 : 1, 2, 5, 10 and so on, builders' rules by the inch to the foot. Common practice, no source.
  it.each([
    [100, 'mm', '1 : 1'],
    [101, 'mm', '1 : 2'],
    [500, 'mm', '1 : 5'],
    [2100, 'mm', '1 : 25'],
    [5001, 'mm', '1 : 100'],
    [30, 'mm', '1 : 1'],
    [700, 'in', '1 : 8'],
    [1200, 'in', '1 : 12, 1 in to the foot'],
    [2000, 'in', '1 : 24, 1\u20442 in to the foot'],
    [3700, 'in', '1 : 48, 1\u20444 in to the foot'],
  ] as const)('of %d mm on 100, by %s, is %s', (long, unit, words) => {
    const size = { width: long, height: 1 };
    expect(scaleFor(size, { width: 100, height: 100 }, unit).words).toBe(words);
  });

  it('enlarges where that is asked, by whole steps', () => {
    const most = { width: 100, height: 100 };
    expect(scaleFor({ width: 30, height: 1 }, most, 'mm', 'enlarged')).toEqual({ factor: 2, words: '2 : 1' });
    expect(scaleFor({ width: 20, height: 1 }, most, 'in', 'enlarged')).toEqual({ factor: 4, words: '4 : 1' });
    expect(scaleFor({ width: 60, height: 1 }, most, 'in', 'enlarged')).toEqual({ factor: 1, words: '1 : 1' });
  });

  it('always fits', () => {
    const long = fc.double({ min: 1, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(long, long, fc.constantFrom('in' as const, 'mm' as const), (width, height, unit) => {
        const { factor } = scaleFor({ width, height }, { width: 100, height: 60 }, unit, 'enlarged');
        expect(width * factor).toBeLessThanOrEqual(100 + 1e-6);
        expect(height * factor).toBeLessThanOrEqual(60 + 1e-6);
      }),
    );
  });
});

describe('labels spread side by side', () => {
  it('keep apart, in order, and within the ends, or are refused', () => {
    const places = fc.array(fc.double({ min: 0, max: 50, noNaN: true }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(places, (wanted) => {
        const sorted = wanted.toSorted((a, b) => a - b);
        const found = spread(sorted, 3, [0, 50]);
        if (!found) return expect((sorted.length - 1) * 3).toBeGreaterThan(50);
        expect(found).toHaveLength(sorted.length);
        for (const [index, at] of found.entries()) {
          expect(at).toBeGreaterThanOrEqual(-1e-9);
          expect(at).toBeLessThanOrEqual(50 + 1e-9);
          if (index > 0) expect(at - found[index - 1]!).toBeGreaterThanOrEqual(3 - 1e-9);
        }
      }),
    );
    expect(spread([10, 20, 30], 3, [0, 50])).toEqual([10, 20, 30]);
  });
});

describe('pages', () => {
  const block = (height: number): Block => ({ height, draw: () => undefined });

  it('take the roomiest of the ways that need the fewest', () => {
    const ways = [60, 50, 40, 30].map((drawing) => [block(drawing), block(55)]);
    const [only, ...others] = flowTight(ways, 100);
    expect(others).toEqual([]);
    expect(only!.map(({ height }) => height)).toEqual([40, 55]);
  });

  it('do not part what belongs together', () => {
    const pages = flowTight([[block(50), ...unparted([block(30), block(30)])]], 100);
    expect(pages.map((page) => page.map(({ height }) => height))).toEqual([[50], [30, 30]]);
  });
});
