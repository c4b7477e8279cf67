/** What boards reach, against the numbers of the guidance, each named beside its check. */
import { describe, expect, it } from 'vitest';
import type { Grade } from '../../../src/core/care/grade';
import type { Quality } from '../../../src/core/job/package';
import { itemOf, kept, NEUTRAL, SOUND } from './kept';

const CONSERVATION = 'conservation';
const PROTECTIVE = 'protective';
const DECORATIVE = 'decorative';

function gradeOf(quality: Quality, kind: 'chart or map' | 'photograph' | 'cyanotype' = 'chart or map'): Grade {
  const contents = kept({ kind }, {}, quality);
  const grades = ['layer 1', 'mount board'].map((key) => itemOf(contents, key).grade);
  // One layer lies against the picture just as the mount board does.
  expect(new Set(grades).size).toBe(1);
  return grades[0]!;
}

describe('boards for works on paper', () => {
  it.each<readonly [source: string, Quality, Grade]>([
    // Library of Congress, Guide to Preservation Matting and Framing (seen): cotton rag or chemically purified pulp, pH 7 or
    // slightly alkaline, 8.5; a buffer does not make unpurified pulp fit.
    ['LC guide: pH 7', { fibre: 'cotton', ph: 7, reserve: 2 }, CONSERVATION],
    ['LC guide: pH 8.5', { fibre: 'purified pulp', ph: 8.5, reserve: 3 }, CONSERVATION],
    ['LC guide: acid', { fibre: 'cotton', ph: 6.9, reserve: 3 }, DECORATIVE],
    ['LC guide: buffered pulp', { fibre: 'wood pulp', ph: 8, reserve: 3 }, PROTECTIVE],
    ['LC guide: pulp without a buffer', { fibre: 'wood pulp', ph: 7.2, reserve: 0 }, DECORATIVE],
    // CCI Notes 11/5 (seen): buffered pH 7.5 to 8.5, unbuffered pH 7.
    ['CCI 11/5: buffered, 7.5', { fibre: 'cotton', ph: 7.5, reserve: 2 }, CONSERVATION],
    ['CCI 11/5: unbuffered, 7', { fibre: 'cotton', ph: 7, reserve: 0 }, CONSERVATION],
    ['CCI 11/5: unbuffered can’t be 8', { fibre: 'cotton', ph: 8, reserve: 0 }, PROTECTIVE],
    // CCAHA, Matting and Framing Specifications (seen): alkaline board with 3.5 % CaCO3.
    ['CCAHA: 3.5 %', { fibre: 'purified pulp', ph: 8.5, reserve: 3.5 }, CONSERVATION],
    // LC Specification 300-313-16, cl. 1.6-1.7 (seen): buffered stock pH 8.0 to 9.5, reserve 2 to 5 %.
    ['LC 300-313-16: pH 8.0, 2 %', { fibre: 'purified pulp', ph: 8, reserve: 2 }, CONSERVATION],
    ['LC 300-313-16: pH 9.5, 5 %', { fibre: 'purified pulp', ph: 9.5, reserve: 5 }, CONSERVATION],
    ['LC 300-313-16: above 9.5', { fibre: 'purified pulp', ph: 9.6, reserve: 3 }, PROTECTIVE],
    ['LC 300-313-16: under 2 %', { fibre: 'purified pulp', ph: 8.5, reserve: 1.9 }, PROTECTIVE],
    ['LC 300-313-16: over 5 %', { fibre: 'purified pulp', ph: 8.5, reserve: 5.1 }, PROTECTIVE],
    // LC Specification 200-201-16, cl. 1.6-1.7 (seen): unbuffered stock about 7.0; half a unit is our reading of "about".
    ['LC 200-201-16: about 7.0', { fibre: 'cotton', ph: 6.5, reserve: 0 }, CONSERVATION],
    ['LC 200-201-16: not so far off', { fibre: 'cotton', ph: 6.4, reserve: 0 }, DECORATIVE],
    // ISO 18902:2013 (from memory): pH 7.0 to 9.5, reserve 2 % at least.
    ['ISO 18902: 7.0 and 2 %', { fibre: 'purified pulp', ph: 7, reserve: 2 }, CONSERVATION],
    ['ISO 18902: 9.5 and 2 %', { fibre: 'purified pulp', ph: 9.5, reserve: 2 }, CONSERVATION],
    // ISO 9706:1994, as tabulated by LC (quoted), and AIC, Caring for Your Treasures (quoted): pH up to 10.
    ['ISO 9706: 10', { fibre: 'cotton', ph: 10, reserve: 2 }, PROTECTIVE],
    ['ISO 9706: above 10', { fibre: 'cotton', ph: 10.1, reserve: 2 }, DECORATIVE],
  ])('%s', (_, quality, grade) => expect(gradeOf(quality)).toBe(grade));

  it.each<readonly [string, Quality, Grade]>([
    ['nothing', {}, DECORATIVE],
    ['its fibre alone', { fibre: 'cotton' }, DECORATIVE],
    ['all but its fibre', { ph: 8, reserve: 3 }, DECORATIVE],
    ['all but its pH', { fibre: 'cotton', reserve: 3 }, DECORATIVE],
    ['all but its reserve', { fibre: 'cotton', ph: 8 }, PROTECTIVE],
  ])('unknown is never taken for good: %s is said', (_, quality, grade) => expect(gradeOf(quality)).toBe(grade));
});

describe('boards for photographs', () => {
  // LC guide, CCAHA (seen): boards for photographs have passed the photographic activity test (ISO 18916).
  it('have passed the photographic activity test', () => {
    expect(gradeOf(SOUND, 'photograph')).toBe(CONSERVATION);
    expect(gradeOf({ ...SOUND, photoTested: false }, 'photograph')).toBe(PROTECTIVE);
    expect(gradeOf({ fibre: 'cotton', ph: 8, reserve: 3 }, 'photograph')).toBe(PROTECTIVE);
    expect(gradeOf({ fibre: 'cotton', ph: 8, reserve: 3 })).toBe(CONSERVATION);
  });

  // CCAHA (seen): cyanotypes are sensitive to alkaline surroundings; neutral board.
  it('are neutral and unbuffered against a cyanotype', () => {
    expect(gradeOf(NEUTRAL, 'cyanotype')).toBe(CONSERVATION);
    expect(gradeOf({ ...NEUTRAL, ph: 7.6 }, 'cyanotype')).toBe(DECORATIVE);
    expect(gradeOf({ ...NEUTRAL, reserve: 2 }, 'cyanotype')).toBe(DECORATIVE);
    expect(gradeOf(SOUND, 'cyanotype')).toBe(DECORATIVE);
    expect(gradeOf({ fibre: 'cotton', ph: 7, photoTested: true }, 'cyanotype')).toBe(DECORATIVE);
  });

  it('may be buffered where they lie above another, away from the cyanotype', () => {
    const job = kept({ kind: 'cyanotype' }, {}, NEUTRAL);
    const layers = [SOUND, NEUTRAL].map((quality) => ({ thickness: '1/16 in', quality }));
    const two = { ...job, mat: { layers } };
    expect(['layer 1', 'layer 2'].map((key) => itemOf(two, key).grade)).toEqual([CONSERVATION, CONSERVATION]);
  });
});

describe('the pH that is asked', () => {
  const lacks = (quality: Quality, kind?: 'cyanotype') =>
    itemOf(kept(kind ? { kind } : {}, {}, quality), 'mount board')
      .demands.filter(({ met }) => !met)
      .map(({ words }) => words)
      .join('. ');
  const ranges = (words: string) => new Set(words.match(/\d+(\.\d+)? to \d+(\.\d+)?(?! %)/g));

  it.each<readonly [string, Quality]>([
    ['not said', { fibre: 'cotton', reserve: 3 }],
    ['acid', { fibre: 'cotton', ph: 6, reserve: 3 }],
    ['high', { fibre: 'cotton', ph: 9.8, reserve: 3 }],
    ['too alkaline', { fibre: 'cotton', ph: 11, reserve: 3 }],
  ])('is one range, whether its own is %s', (_, quality) => {
    expect([...ranges(lacks(quality))]).toEqual(['7 to 9.5']);
  });

  it('is another where there is no reserve, and both are told where that is not said', () => {
    expect([...ranges(lacks({ fibre: 'cotton', reserve: 0 }))]).toEqual(['6.5 to 7.5']);
    expect([...ranges(lacks({ fibre: 'cotton' }))]).toEqual(['7 to 9.5', '6.5 to 7.5']);
  });

  it.each<Quality>([{}, { ph: 6 }, { ph: 8, reserve: 3 }, { reserve: 3 }, { ph: 11 }])(
    'against a cyanotype is the neutral one alone: %j',
    (quality) => expect([...ranges(lacks({ fibre: 'cotton', ...quality }, 'cyanotype'))]).toEqual(['6.5 to 7.5']),
  );
});

// LC guide (quoted in a reprint): board is usually 4-ply at the least. FACTS, Standard Guide, cl. 10.01 (quoted): a 4-ply
// board is 0.045 in. Saitzyk, Art Hardware, 1987 (seen): 0.050 to 0.060 in.
describe('boards are 4-ply at the least', () => {
  const thick = (layer: object) => itemOf({ ...kept(), mat: { layers: [{ quality: SOUND, ...layer }] } }, 'layer 1');
  it.each([
    ['0.045 in', CONSERVATION],
    ['0.05 in', CONSERVATION],
    ['0.044 in', PROTECTIVE],
    ['1.143 mm', CONSERVATION],
    ['1.14 mm', PROTECTIVE],
  ])('%s', (thickness, grade) => expect(thick({ thickness, thinnest: thickness }).grade).toBe(grade));

  it('also where they are as thin as they may be', () => {
    expect(thick({ thickness: '0.055 in', thinnest: '0.04 in' }).grade).toBe(PROTECTIVE);
  });
});

describe('a mount board', () => {
  it('is asked behind paper, and not behind a painting', () => {
    expect(itemOf(kept({}, { mountBoard: { without: true } }), 'mount board').grade).toBe(DECORATIVE);
    const painting = kept({ kind: 'painting on canvas', thickness: '3/4 in' });
    const { mountBoard: _, ...parts } = painting.package!;
    expect(() => itemOf({ ...painting, package: parts }, 'mount board')).toThrow('no item');
  });
});
