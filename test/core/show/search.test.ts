/** The search for frame sizes, held against trying everything: its choices, its bounds, the fewest sizes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beyondAllCosts, pictureCount, type Choosing } from '../../../src/core/show/search/choosing';
import { fewestSizes } from '../../../src/core/show/search/fewest';
import { Filler } from '../../../src/core/show/search/fill';
import { leastCost } from '../../../src/core/show/search/least-cost';
import { Relaxation } from '../../../src/core/show/search/relaxation';
import { bestByTrying, fillByTrying, instances, subsets } from './instances';

const cases = [
  ['where no frame runs out', instances(false)],
  ['where frames may run out', instances(true)],
] as const;

const allOf = ({ sizes }: Choosing) => Array.from({ length: sizes }, (_, size) => size);

describe.each(cases)('%s', (_, choosings) => {
  it('a set of sizes holds most at the least cost, with no picture in two frames and no frame too often', () => {
    fc.assert(
      fc.property(choosings, fc.integer({ min: 0, max: 511 }), (choosing, mask) => {
        const sizes = allOf(choosing).filter((size) => (mask >> size) % 2 === 1);
        const { held, cost, shares, dearest } = new Filler(choosing).fill(sizes);
        expect({ held, cost }).toEqual(fillByTrying(choosing, sizes));
        const used = choosing.frames.map(() => 0);
        choosing.kinds.forEach(({ count, fits }, kind) => {
          const placed = shares[kind]!.reduce((sum, share) => sum + share.count, 0);
          expect(placed).toBeLessThanOrEqual(count);
          expect(dearest[kind] === Infinity).toBe(placed < count);
          for (const share of shares[kind]!) {
            expect(fits).toContain(share.frame);
            expect(sizes).toContain(choosing.frames[share.frame]!.size);
            used[share.frame]! += share.count;
          }
        });
        used.forEach((count, frame) => expect(count).toBeLessThanOrEqual(choosing.frames[frame]!.count));
      }),
      { numRuns: 300 },
    );
  });

  it('at most so many sizes: as good as the best of all sets, and proven', () => {
    fc.assert(
      fc.property(choosings, fc.integer({ min: 1, max: 5 }), (choosing, most) => {
        const { sizes, held, cost, proven, bound } = leastCost(choosing, most);
        expect({ held, cost }).toEqual(bestByTrying(choosing, most));
        expect(fillByTrying(choosing, sizes)).toEqual({ held, cost });
        expect(sizes.length).toBeLessThanOrEqual(most);
        expect({ proven, bound }).toEqual({ proven: true, bound: { held, cost } });
      }),
      { numRuns: 300 },
    );
  });

  it('given up at once, nothing is better than its bound', () => {
    fc.assert(
      fc.property(choosings, fc.integer({ min: 1, max: 5 }), (choosing, most) => {
        const { held, cost, proven, bound } = leastCost(choosing, most, undefined, 0);
        const best = bestByTrying(choosing, most);
        expect(bound.held).toBeGreaterThanOrEqual(best.held);
        if (bound.held === best.held) expect(bound.cost).toBeLessThanOrEqual(best.cost);
        if (proven) expect({ held, cost }).toEqual(best);
      }),
      { numRuns: 200 },
    );
  });

  it('whatever the prices, no choice is worth less than the bound', () => {
    const prices = fc.array(fc.integer({ min: 0, max: 5000 }), { minLength: 14, maxLength: 14 });
    fc.assert(
      fc.property(choosings, prices, fc.integer({ min: 0, max: 5 }), (choosing, offered, most) => {
        const penalty = beyondAllCosts(choosing);
        const relaxation = new Relaxation(choosing, new Filler(choosing).limited);
        const offers = Float64Array.from(choosing.kinds, (_, kind) => Math.min(penalty, offered[kind]!));
        const taken = allOf(choosing).slice(0, Math.min(1, most));
        const free = allOf(choosing).slice(taken.length);
        const { value } = relaxation.bound(relaxation.pricesOf(offers), taken, free, most - taken.length);
        for (const sizes of subsets(choosing.sizes, most).filter((set) => taken.every((size) => set.includes(size)))) {
          const { held, cost } = fillByTrying(choosing, sizes);
          expect(value).toBeLessThanOrEqual((pictureCount(choosing) - held) * penalty + cost);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('the fewest sizes hold what all do, and one fewer does not', () => {
    fc.assert(
      fc.property(choosings, (choosing) => {
        const { held, least, sizes } = fewestSizes(choosing);
        expect(held).toBe(fillByTrying(choosing, allOf(choosing)).held);
        expect(fillByTrying(choosing, sizes).held).toBe(held);
        expect(sizes.length).toBe(least);
        for (const fewer of subsets(choosing.sizes, least - 1)) {
          if (least > 0) expect(fillByTrying(choosing, fewer).held).toBeLessThan(held);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('the fewest, given up at once, still does, and says from where on nothing is settled', () => {
    fc.assert(
      fc.property(choosings, (choosing) => {
        const { held, least, sizes } = fewestSizes(choosing, 0, 0);
        expect(fillByTrying(choosing, sizes).held).toBe(held);
        expect(least).toBeLessThanOrEqual(fewestSizes(choosing).least);
        expect(sizes.length).toBeGreaterThanOrEqual(fewestSizes(choosing).least);
      }),
    );
  });
});

describe('known answers', () => {
  const frame = (size: number, cost: number, count = Infinity) => ({ size, cost, count });

  it('a frame that takes all is dearer than one for each, and cheaper in one size', () => {
    const choosing: Choosing = {
      sizes: 3,
      frames: [frame(0, 10), frame(1, 20), frame(2, 30)],
      kinds: [
        { count: 5, fits: [0, 2] },
        { count: 2, fits: [1, 2] },
      ],
    };
    expect(leastCost(choosing, 1)).toMatchObject({ sizes: [2], held: 7, cost: 210 });
    expect(leastCost(choosing, 2)).toMatchObject({ sizes: [0, 1], held: 7, cost: 90 });
    expect(leastCost(choosing, 3)).toMatchObject({ sizes: [0, 1], held: 7, cost: 90 });
    expect(fewestSizes(choosing)).toMatchObject({ held: 7, sizes: [2] });
  });

  it('holding one picture more outweighs any saving', () => {
    const choosing: Choosing = {
      sizes: 2,
      frames: [frame(0, 1), frame(1, 1000)],
      kinds: [
        { count: 3, fits: [0, 1] },
        { count: 1, fits: [1] },
      ],
    };
    expect(leastCost(choosing, 1)).toMatchObject({ sizes: [1], held: 4, cost: 4000 });
  });

  it('pictures move on where the only frame that takes another is theirs', () => {
    const choosing: Choosing = {
      sizes: 2,
      frames: [frame(0, 5, 1), frame(1, 9, 2)],
      kinds: [
        { count: 2, fits: [0, 1] },
        { count: 1, fits: [0] },
      ],
    };
    expect(new Filler(choosing).fill([0, 1])).toMatchObject({ held: 3, cost: 23 });
    expect(leastCost(choosing, 1)).toMatchObject({ sizes: [1], held: 2, cost: 18 });
  });

  it('more than six sizes are needed where eight pictures have each a size of its own', () => {
    const sizes = Array.from({ length: 8 }, (_, size) => size);
    const choosing: Choosing = {
      sizes: 8,
      frames: sizes.map((size) => frame(size, 1 + size)),
      kinds: sizes.map((size) => ({ count: 1, fits: [size] })),
    };
    expect(fewestSizes(choosing)).toEqual({ held: 8, least: 8, sizes });
    expect(leastCost(choosing, 6)).toMatchObject({ held: 6, cost: 21, proven: true });
  });

  it('what no bound can settle is searched through, or said not to be proven', () => {
    // The Fano plane: seven lines of three points, any two of which have one in common; three through a point hold all seven.
    const lines = [[0, 1, 2], [0, 3, 4], [0, 5, 6], [1, 3, 5], [1, 4, 6], [2, 3, 6], [2, 4, 5]]; // prettier-ignore
    const choosing: Choosing = {
      sizes: 7,
      frames: lines.map((_, size) => frame(size, 1)),
      kinds: lines.map((_, point) => ({
        count: 1,
        fits: lines.flatMap((line, size) => (line.includes(point) ? [size] : [])),
      })),
    };
    expect(leastCost(choosing, 2)).toMatchObject({ held: 5, cost: 5, proven: true });
    expect(leastCost(choosing, 2, undefined, 0)).toMatchObject({ held: 5, proven: false, bound: { held: 6 } });
    expect(fewestSizes(choosing)).toMatchObject({ held: 7, least: 3 });
    expect(leastCost(choosing, 3)).toMatchObject({ held: 7, cost: 7, proven: true });
  });

  it('a choice that is known is kept unless there is a better one', () => {
    const choosing: Choosing = { sizes: 2, frames: [frame(0, 5), frame(1, 5)], kinds: [{ count: 1, fits: [0, 1] }] };
    expect(leastCost(choosing, 1).sizes).toEqual([0]);
    expect(leastCost(choosing, 1, { sizes: [1], held: 1, cost: 5 }).sizes).toEqual([1]);
  });
});
