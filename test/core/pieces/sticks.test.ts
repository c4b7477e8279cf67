/** Sticks of moulding: published instances, every way tried on small ones, and plans judged by a checker of their own. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutStock } from '../../../src/core/pieces/cut-stock';
import { planSticks, railsTooLong, type NamedRail } from '../../../src/core/pieces/sticks';
import { faultsOf, fewestByTrying } from './check-sticks';

function rails(lengths: readonly number[]): NamedRail[] {
  return lengths.map((length, frame) => ({ frame, sides: 'left and right', length }));
}

/** The plan of lengths that all fit, found right by the checker. */
function plan(lengths: readonly number[], stick: number, kerf = 0) {
  const wanted = rails(lengths);
  const made = planSticks(wanted, stick, kerf);
  if (!made) throw new Error('a length is longer than the stick');
  expect(faultsOf(made, wanted)).toEqual([]);
  return made;
}

describe('published instances', () => {
  function solve(stick: number, wanted: readonly (readonly [size: number, count: number])[]) {
    const ask = { stick, wanted: wanted.map(([size, count]) => ({ size, count })).sort((a, b) => b.size - a.size) };
    const { patterns, atLeast } = cutStock(ask);
    ask.wanted.forEach(({ count }, index) =>
      expect(patterns.reduce((sum, pattern) => sum + (pattern[index] ?? 0), 0)).toBe(count),
    );
    for (const pattern of patterns) {
      expect(ask.wanted.reduce((sum, { size }, index) => sum + size * (pattern[index] ?? 0), 0)).toBeLessThanOrEqual(
        stick,
      );
    }
    return { sticks: patterns.length, atLeast };
  }

  // Gilmore and Gomory's example as taught (Chvatal, Linear Programming, 1983, chapter 13, from memory): 453 rolls.
  it('four widths of a roll of 100', () => {
    expect(solve(100, [[45, 97], [36, 610], [31, 395], [14, 211]])).toEqual({ sticks: 453, atLeast: 453 }); // prettier-ignore
  });

  // The paper mill of 5,600 mm rolls, widely taught (its optimum from memory): 73 rolls.
  it('thirteen widths of a roll of 5,600', () => {
    const widths = [1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200];
    const counts = [22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20];
    expect(solve(5600, widths.map((width, index) => [width, counts[index]!]))).toEqual({ sticks: 73, atLeast: 73 }); // prettier-ignore
  });

  // u120_00 of Falkenauer, Journal of Heuristics 2 (1996), OR-Library (data and optimum from memory): 48 bins.
  it('120 lengths in sticks of 150', () => {
    const sizes = [
      42, 69, 67, 57, 93, 90, 38, 36, 45, 42, 33, 79, 27, 57, 44, 84, 86, 92, 46, 38, 85, 33, 82, 73, 49, 70, 59, 23, 57, 72, 74, 69, 33, 42, 28, 46, 30, 64, 29, 74,
      41, 49, 55, 98, 80, 32, 25, 38, 82, 30, 35, 39, 57, 84, 62, 50, 55, 27, 30, 36, 20, 78, 47, 26, 45, 41, 58, 98, 91, 96, 73, 84, 37, 93, 91, 43, 73, 85, 81, 79,
      71, 80, 76, 83, 41, 78, 70, 23, 42, 87, 43, 84, 60, 55, 49, 78, 73, 62, 36, 44, 94, 69, 32, 96, 70, 84, 58, 78, 25, 80, 58, 66, 83, 24, 98, 60, 42, 43, 43, 39,
    ]; // prettier-ignore
    const made = plan(sizes, 150);
    expect([made.sticks.length, made.atLeast]).toEqual([48, 48]);
  });
});

describe('small asks', () => {
  const asks = fc.record({
    stick: fc.integer({ min: 60, max: 120 }),
    lengths: fc.array(fc.integer({ min: 8, max: 60 }), { minLength: 1, maxLength: 8 }),
  });

  it('take as many sticks as trying every way finds, and that is proven', () => {
    fc.assert(
      fc.property(asks, ({ stick, lengths }) => {
        const fewest = fewestByTrying(lengths, stick);
        const { sticks, atLeast } = plan(lengths, stick);
        expect([sticks.length, atLeast]).toEqual([fewest, fewest]);
      }),
      { numRuns: 300, endOnFailure: true },
    );
  });

  it('with a kerf take as many as longer lengths without', () => {
    fc.assert(
      fc.property(asks, fc.integer({ min: 0, max: 3 }), ({ stick, lengths }, kerf) => {
        const fitting = lengths.filter((length) => length + 2 * kerf <= stick);
        fc.pre(fitting.length > 0);
        const longer = fitting.map((length) => length + 2 * kerf);
        expect(plan(fitting, stick, kerf).sticks.length).toBe(fewestByTrying(longer, stick));
      }),
      { numRuns: 100, endOnFailure: true },
    );
  });
});

describe('the rails of a show', () => {
  /** Frames as they come in a show: some sizes, each several times. */
  const shows = fc.record({
    stick: fc.constantFrom(96 * 25.4, 108 * 25.4, 120 * 25.4, 3000),
    kerf: fc.constantFrom(0, 25.4 / 8, 3),
    sizes: fc.array(
      fc.record({
        width: fc.integer({ min: 16, max: 100 }),
        height: fc.integer({ min: 16, max: 100 }),
        count: fc.integer({ min: 1, max: 6 }),
      }),
      { minLength: 1, maxLength: 6 },
    ),
  });
  const lengthsOf = (sizes: readonly { width: number; height: number; count: number }[]) =>
    sizes.flatMap(({ width, height, count }) =>
      Array.from({ length: count }, () =>
        [width, width, height, height].map((side) => (side * 25.4) / 4 + 19.05),
      ).flat(),
    );

  it('are all cut, and the bound is no further than one stick away', () => {
    fc.assert(
      fc.property(shows, ({ stick, kerf, sizes }) => {
        const { sticks, atLeast } = plan(lengthsOf(sizes), stick, kerf);
        expect(sticks.length - atLeast).toBeLessThanOrEqual(1);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  it('need no fewer sticks with a wider kerf, no more with longer sticks, and the order they come in changes nothing', () => {
    fc.assert(
      fc.property(shows, ({ stick, kerf, sizes }) => {
        const lengths = lengthsOf(sizes);
        const made = plan(lengths, stick, kerf);
        // Where a bound is open, only what is proven can be compared.
        expect(plan(lengths, stick, kerf + 2).sticks.length).toBeGreaterThanOrEqual(made.atLeast);
        expect(plan(lengths, stick + 300, kerf).atLeast).toBeLessThanOrEqual(made.sticks.length);
        expect(plan(lengths.toReversed(), stick, kerf).sticks.map(({ rest }) => rest)).toEqual(
          made.sticks.map(({ rest }) => expect.closeTo(rest, 6) as number),
        );
      }),
      { numRuns: 40, endOnFailure: true },
    );
  });

  it('equal asks have equal plans', () => {
    const lengths = lengthsOf([{ width: 44, height: 60, count: 5 }, { width: 31, height: 47, count: 4 }]); // prettier-ignore
    expect(plan(lengths, 2743.2, 3)).toEqual(plan(lengths, 2743.2, 3));
  });
});

describe('at the limits', () => {
  it('rails that fill a stick to the last bit go into it, also where doubles do not add up', () => {
    const third = 3048 / 3;
    expect(plan([third, third, third], 3048).sticks).toHaveLength(1);
    const tenth = Array.from({ length: 10 }, () => 304.8 - 2 * 3.175);
    expect(plan(tenth, 3048, 3.175).sticks).toHaveLength(1);
    expect(plan([...tenth.slice(1), 304.8 - 2 * 3.175 + 0.01], 3048, 3.175).sticks).toHaveLength(2);
  });

  it('a rail that is longer than the stick with its two cuts is told', () => {
    const wanted = rails([500, 995, 994]);
    expect(planSticks(wanted, 1000, 3)).toBeUndefined();
    expect(railsTooLong(wanted, 1000, 3).map(({ length }) => length)).toEqual([995]);
  });

  it('a show of 500 frames, each of its own size, has a plan that the checker finds right', () => {
    const lengths = Array.from({ length: 500 }, (_, index) => {
      const side = (step: number) => 300 + ((index * step) % 509) * 1.37;
      return [side(7), side(7), side(11), side(11)];
    }).flat();
    const { sticks, atLeast } = plan(lengths, 3048, 3);
    expect(sticks.length).toBeLessThanOrEqual(atLeast * 1.02);
  });
});
