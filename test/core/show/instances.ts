/** Small questions for the search of frame sizes, and their answers by trying every set of sizes and every way to fill it. */
import fc from 'fast-check';
import { isBetter, type Choosing, type Worth } from '../../../src/core/show/search/choosing';

/** @param counts whether frames may run out; then there are fewer of everything, since trying takes longer. */
export function instances(counts: boolean): fc.Arbitrary<Choosing> {
  const most = counts ? { sizes: 6, frames: 7, rows: 6 } : { sizes: 9, frames: 12, rows: 14 };
  const frame = (sizes: number) =>
    fc.record({
      size: fc.nat(sizes - 1),
      cost: fc.oneof(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 1000 })),
      count: counts ? fc.nat(3) : fc.constant(Infinity),
    });
  return fc
    .integer({ min: 1, max: most.sizes })
    .chain((sizes) =>
      fc.record({
        sizes: fc.constant(sizes),
        frames: fc.array(frame(sizes), { minLength: 1, maxLength: most.frames }),
        rows: fc.array(
          fc.record({
            count: fc.integer({ min: 1, max: 3 }),
            takes: fc.array(fc.boolean(), { minLength: most.frames, maxLength: most.frames }),
          }),
          { minLength: 1, maxLength: most.rows },
        ),
      }),
    )
    .map(({ sizes, frames, rows }) => ({
      sizes,
      frames,
      kinds: rows.map(({ count, takes }) => ({
        count,
        fits: frames
          .flatMap((_, index) => (takes[index] ? [index] : []))
          .sort((a, b) => frames[a]!.cost - frames[b]!.cost || a - b),
      })),
    }));
}

/** Every set of at most so many sizes. */
export function subsets(sizes: number, most: number): number[][] {
  const all: number[][] = [[]];
  for (let size = 0; size < sizes; size += 1)
    all.push(...all.filter((set) => set.length < most).map((set) => [...set, size]));
  return all;
}

/** The best filling of some sizes, picture after picture, each left out or put into every frame that is free. */
export function fillByTrying({ frames, kinds }: Choosing, sizes: readonly number[]): Worth {
  const pictures = kinds.flatMap(({ count, fits }) => Array.from({ length: count }, () => fits));
  const left = frames.map(({ count, size }) => (sizes.includes(size) ? count : 0));
  const memo = new Map<string, Worth>();
  const fill = (at: number): Worth => {
    if (at === pictures.length) return { held: 0, cost: 0 };
    const key = `${at} ${left.join(' ')}`;
    const known = memo.get(key);
    if (known) return known;
    let best = fill(at + 1);
    for (const frame of pictures[at]!) {
      if (left[frame]! <= 0) continue;
      left[frame]! -= 1;
      const rest = fill(at + 1);
      left[frame]! += 1;
      const one = { held: rest.held + 1, cost: rest.cost + frames[frame]!.cost };
      if (isBetter(one, best)) best = one;
    }
    memo.set(key, best);
    return best;
  };
  return fill(0);
}

export function bestByTrying(choosing: Choosing, most: number): Worth {
  return subsets(choosing.sizes, most)
    .map((sizes) => fillByTrying(choosing, sizes))
    .reduce((a, b) => (isBetter(b, a) ? b : a));
}
