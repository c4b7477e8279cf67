/** Changes to a list of kept cutters: in place, at the end, made again on a list that another has changed. */
import { describe, expect, it } from 'vitest';
import { changeCutters, changedMeanwhile, sameCutter } from '../../../src/core/job/cutter-changes';

const bench = { name: 'Bench', reach: '20 in', overcuts: [{ thickness: '1/16 in', overcut: '1.2 mm' }] };
const long = { name: 'Long', scaleOffset: '-0.4 mm' };

describe('a change', () => {
  it('puts a cutter in the place of its namesake, or at the end', () => {
    const changed = { ...bench, reach: '22 in' };
    expect(changeCutters([bench, long], { kind: 'keep', cutters: [changed] })).toEqual([changed, long]);
    expect(changeCutters([long], { kind: 'keep', cutters: [bench, { ...long, waste: 'left' }] })).toEqual([
      { ...long, waste: 'left' },
      bench,
    ]);
  });

  it('takes one out, and nothing where there is none of that name', () => {
    expect(changeCutters([bench, long], { kind: 'remove', name: 'Bench' })).toEqual([long]);
    expect(changeCutters([bench], { kind: 'remove', name: 'bench' })).toEqual([bench]);
  });
});

describe('what another changed meanwhile', () => {
  const mine = { kind: 'keep', cutters: [{ ...bench, reach: '22 in' }] } as const;
  const theirs = { ...bench, reach: '24 in' };

  it('is told where this would write over it or take it out', () => {
    expect(changedMeanwhile([bench, long], [theirs, long], mine)).toEqual([theirs]);
    expect(changedMeanwhile([bench], [theirs], { kind: 'remove', name: 'Bench' })).toEqual([theirs]);
    // Made by another, where there was none before.
    expect(changedMeanwhile([], [theirs], mine)).toEqual([theirs]);
  });

  it('is nothing where it touches other cutters, or is the same change', () => {
    expect(changedMeanwhile([bench, long], [bench, { ...long, waste: 'left' }], mine)).toEqual([]);
    expect(changedMeanwhile([bench], [{ ...bench, reach: '558.8 mm' }], mine)).toEqual([]);
    expect(changedMeanwhile([bench, long], [long], mine)).toEqual([]);
  });
});

describe('sameness', () => {
  it('is of measures, however they are written and in whatever order', () => {
    const other = { overcuts: [{ overcut: '0.12 cm', thickness: '0.0625 in' }], reach: '508 mm', name: 'Bench' };
    expect(sameCutter(bench, other)).toBe(true);
    expect(sameCutter(bench, { ...other, reach: '508.01 mm' })).toBe(false);
    expect(sameCutter(bench, { ...other, name: 'bench' })).toBe(false);
    expect(sameCutter(long, { ...long, bevelAngle: 45 })).toBe(false);
  });

  it('is of the text where a measure cannot be read', () => {
    const torn = { name: 'Torn', reach: 'far' };
    expect(sameCutter(torn, { ...torn })).toBe(true);
    expect(sameCutter(torn, { name: 'Torn', reach: 'farther' })).toBe(false);
  });
});
