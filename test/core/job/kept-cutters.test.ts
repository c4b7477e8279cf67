/** Changes to a list of kept cutters: in place, at the end, made again on a list that another has changed. */
import { describe, expect, it } from 'vitest';
import { KEPT_CUTTERS, sameCutter } from '../../../src/core/job/kept-cutters';
import { changedMeanwhile, changeList } from '../../../src/core/kept-list';

const bench = { name: 'Bench', reach: '20 in', overcuts: [{ thickness: '1/16 in', overcut: '1.2 mm' }] };
const long = { name: 'Long', scaleOffset: '-0.4 mm' };

describe('a change', () => {
  it('puts a cutter in the place of its namesake, or at the end', () => {
    const changed = { ...bench, reach: '22 in' };
    expect(changeList([bench, long], { keep: [changed] }, KEPT_CUTTERS)).toEqual([changed, long]);
    expect(changeList([long], { keep: [bench, { ...long, waste: 'left' }] }, KEPT_CUTTERS)).toEqual([
      { ...long, waste: 'left' },
      bench,
    ]);
  });

  it('takes one out, and nothing where there is none of that name', () => {
    expect(changeList([bench, long], { remove: ['Bench'] }, KEPT_CUTTERS)).toEqual([long]);
    expect(changeList([bench], { remove: ['bench'] }, KEPT_CUTTERS)).toEqual([bench]);
  });

  it('puts one of a new name where another was taken out, and keeps one that is both', () => {
    const other = { name: 'Short' };
    const renamed = { ...bench, name: 'Table' };
    const change = { keep: [renamed], remove: ['Bench'] };
    expect(changeList([other, bench, long], change, KEPT_CUTTERS)).toEqual([other, renamed, long]);
    expect(changeList([long], change, KEPT_CUTTERS)).toEqual([long, renamed]);
    expect(changeList([bench, long], { keep: [bench], remove: ['Bench'] }, KEPT_CUTTERS)).toEqual([bench, long]);
  });
});

describe('what another changed meanwhile', () => {
  const mine = { keep: [{ ...bench, reach: '22 in' }] } as const;
  const theirs = { ...bench, reach: '24 in' };

  it('is told where this would write over it or take it out', () => {
    expect(changedMeanwhile([bench, long], [theirs, long], mine, KEPT_CUTTERS)).toEqual([theirs]);
    expect(changedMeanwhile([bench], [theirs], { remove: ['Bench'] }, KEPT_CUTTERS)).toEqual([theirs]);
    // Made by another, where there was none before.
    expect(changedMeanwhile([], [theirs], mine, KEPT_CUTTERS)).toEqual([theirs]);
  });

  it('is nothing where it touches other cutters, or is the same change', () => {
    expect(changedMeanwhile([bench, long], [bench, { ...long, waste: 'left' }], mine, KEPT_CUTTERS)).toEqual([]);
    expect(changedMeanwhile([bench], [{ ...bench, reach: '558.8 mm' }], mine, KEPT_CUTTERS)).toEqual([]);
    expect(changedMeanwhile([bench, long], [long], mine, KEPT_CUTTERS)).toEqual([]);
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
