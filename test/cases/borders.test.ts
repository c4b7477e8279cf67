/** Practitioners' cases of borders, worked by hand. */
import { describe, expect, it } from 'vitest';
import { showTogether } from '../../src/core/units';
import { planned, type Contents } from '../core/open';
import { numbersOf, SOURCE, type Case, type Expected } from './case';
import { checkCases } from './check-cases';

function inches(has: string, job: Contents, expected: Expected): Case {
  return { has, source: SOURCE, unit: 'in', job, expected };
}

function millimetres(has: string, job: Contents, expected: Expected): Case {
  return { has, source: SOURCE, unit: 'mm', job, expected };
}

const one = (size: string, overlap: string): Contents['pictures'] => [{ size, overlap }];
/** A window of 7 x 4 in a mat of 10 x 8: 4 in left over vertically. */
const wide = (borders: Contents['borders']): Contents => ({
  frame: { size: '10 x 8' },
  windows: { kind: 'window', size: '7 x 4' },
  borders,
});
/** 6 in left over vertically. */
const six = (borders: Contents['borders']): Contents => ({
  frame: { size: '12 x 16' },
  windows: { kind: 'window', size: '8 x 10' },
  borders,
});

describe('borders in a given frame', () => {
  checkCases([
    inches('picture 11x17, frame 16x20, overlap 1/4', { pictures: one('11x17', '1/4'), frame: { size: '16x20' } }, {
      window: [10.5, 16.5], borders: [2.75, 1.75, 2.75, 1.75],
    }),
    inches('10x14 print in 16x20', { pictures: one('10x14', '1/8'), frame: { size: '16x20' } }, {
      borders: [3.125, 3.125, 3.125, 3.125], says: ['hangs-either-way'], words: [/any bottom weighting takes that away/],
    }),
    inches('the same print weighted at the bottom', { pictures: one('10x14', '1/8'), frame: { size: '16x20' }, borders: { rule: 'bottom-amount', amount: '1/2' } }, {
      borders: [3.125, 2.875, 3.125, 3.375], never: ['hangs-either-way'],
    }),
    inches('the same print lying', { pictures: one('14x10', '1/8'), frame: { readyMade: '16x20 in', hung: 'landscape' } }, {
      borders: [3.125, 3.125, 3.125, 3.125], sizeName: '20x16 in',
    }),
    inches('16x20 print in 24x28', { pictures: one('16x20', '1/4'), frame: { size: '24x28' } }, { borders: [4.25, 4.25, 4.25, 4.25] }),
    inches('16x20 print in 20x24', { pictures: one('16x20', '1/4'), frame: { size: '20x24' } }, { borders: [2.25, 2.25, 2.25, 2.25] }),
    inches('8x12 print in 11x14', { pictures: one('8x12', '1/8'), frame: { size: '11x14' } }, { borders: [1.625, 1.125, 1.625, 1.125] }),
    inches('8x12 print in 12x16', { pictures: one('8x12', '1/8'), frame: { size: '12x16' } }, { borders: [2.125, 2.125, 2.125, 2.125] }),
    inches('15x22 sheet in 22x28', { pictures: one('15x22', '1/4'), frame: { size: '22x28' } }, { borders: [3.75, 3.25, 3.75, 3.25] }),
    inches('15x22 sheet in 21x28', { pictures: one('15x22', '1/4'), frame: { size: '21x28' } }, { borders: [3.25, 3.25, 3.25, 3.25] }),
    inches('5x7 photo in 8x10, overlap 1/8', { pictures: one('5x7', '1/8'), frame: { size: '8x10' } }, {
      window: [4.75, 6.75], borders: [1.625, 1.625, 1.625, 1.625],
    }),
    inches('5x7 photo in 8x10, overlap 1/4', { pictures: one('5x7', '1/4'), frame: { size: '8x10' } }, {
      window: [4.5, 6.5], borders: [1.75, 1.75, 1.75, 1.75],
    }),
    inches('5x7 photo with a 5x7 window falls through', { pictures: one('5x7', '0'), frame: { size: '8x10' } }, {
      says: ['overlap-too-small'], words: [/held by only 0 in/],
    }),
    inches('8x10 with equal borders wants 13x15', { pictures: one('8x10', '1/8'), frame: { size: '13x15' }, borders: { rule: 'equal' } }, {
      borders: [2.625, 2.625, 2.625, 2.625],
    }),
    inches('8x10 in 11x14', { pictures: one('8x10', '1/8'), frame: { size: '11x14' } }, { borders: [1.625, 2.125, 1.625, 2.125] }),
    inches('8x10 with equal borders in 11x14 says what that costs', { pictures: one('8x10', '1/8'), frame: { size: '11x14' }, borders: { rule: 'equal' } }, {
      says: ['borders-cannot-be-equal'], words: [/1 5\/8 in is left at the sides, 2 1\/8 in at top and bottom/, /11 x 13 in/, /12 x 14 in/],
    }),
  ]); // prettier-ignore
});

describe('rules for the bottom', () => {
  checkCases([
    inches('window 7x4 in 10x8, centred', wide({ rule: 'centred' }), { borders: [1.5, 2, 1.5, 2] }),
    inches('window 7x4 in 10x8, top as the sides', wide({ rule: 'top-as-sides' }), { borders: [1.5, 1.5, 1.5, 2.5] }),
    inches('window 7x4 in 10x8, bottom 1/2 more', wide({ rule: 'bottom-amount', amount: '1/2' }), { borders: [1.5, 1.75, 1.5, 2.25] }),
    inches('window 7x4 in 10x8, equal steps', wide({ rule: 'equal-steps' }), { borders: [1.5, 11 / 6, 1.5, 13 / 6] }),
    inches('6 in left over, 45:55', six({ rule: 'height-share', share: '45:55' }), { borders: [2, 2.7, 2, 3.3] }),
    inches('6 in left over, 40:60', six({ rule: 'height-share', share: '40:60' }), { borders: [2, 2.4, 2, 3.6] }),
    inches('6 in left over, bottom 1/2 more', six({ rule: 'bottom-amount', amount: '1/2' }), { borders: [2, 2.75, 2, 3.25] }),
    inches('8x4 window in 8+2 x 8, equal ratios (hobby page; root of r + r² = 4)', { frame: { size: '10x8' }, windows: { kind: 'window', size: '8x4' }, borders: { rule: 'equal-ratios' } }, {
      borders: [1, (Math.sqrt(17) - 1) / 2, 1, ((Math.sqrt(17) - 1) / 2) ** 2],
    }),
    inches('5 1/2 in left over, bottom : top = 6 : 5 (photographic how-to page)', { frame: { size: '12 x 13 1/2' }, windows: { kind: 'window', size: '8x8' }, borders: { rule: 'bottom-ratio', ratio: 1.2 } }, {
      borders: [2, 2.5, 2, 3],
    }),
  ]); // prettier-ignore

  it('every rule names itself where the size is explained, and shares 4 in exactly', () => {
    for (const rule of [
      'centred',
      'top-as-sides',
      'bottom-amount',
      'bottom-ratio',
      'height-share',
      'equal-steps',
    ] as const) {
      const { layout } = planned(wide({ rule }));
      const { top, bottom } = layout.borders.cut;
      expect(top + bottom).toBeCloseTo(4 * 25.4, 9);
      const shown = showTogether([top, bottom], top + bottom, { unit: 'in', inchStep: 16, metricStep: 0.5 });
      expect(shown.reduce((sum, { value }) => sum + value, 0)).toBeCloseTo(4 * 25.4, 9);
    }
    const how = (rule: 'height-share' | 'bottom-amount') =>
      planned(wide({ rule })).layout.derivations.find(({ name }) => name === 'borders.cut.bottom')?.how;
    expect(how('height-share')).toMatch(/share the leftover height/);
    expect(how('bottom-amount')).toMatch(/top \+ amount/);
  });
});

describe('frames made to fit', () => {
  checkCases([
    inches('square print 10 3/4, borders 4 and 8', { pictures: one('10 3/4 x 10 3/4', '1/8'), borders: { rule: 'by-hand', sides: '4', top: '4', bottom: '8' } }, {
      blank: [18.5, 22.5], window: [10.5, 10.5], says: ['size-is-custom'], words: [/nearest above is 20x24 in/],
    }),
    inches('the same in 20x24, top as the sides', { pictures: one('10 3/4 x 10 3/4', '1/8'), frame: { size: '20x24' }, borders: { rule: 'top-as-sides' } }, {
      borders: [4.75, 4.75, 4.75, 8.75], sizeName: '20x24 in',
    }),
    inches('image 8x10, 1/4 of paper shown', { pictures: [{ size: '11x14', image: '8x10', overlap: 'shows 1/4' }], borders: { rule: 'by-hand', sides: '3', top: '3', bottom: '4' } }, {
      window: [8.5, 10.5], blank: [14.5, 17.5],
    }),
    inches('image 8x10, covered 1/4', { pictures: [{ size: '11x14', image: '8x10', overlap: 'covers 1/4' }], borders: { rule: 'by-hand', sides: '3', top: '3', bottom: '4' } }, {
      window: [7.5, 9.5], blank: [13.5, 16.5],
    }),
  ]); // prettier-ignore
});

describe('as seen, behind the lip', () => {
  const print: Contents = {
    pictures: one('16x20', '1/8'),
    frame: { size: '22x26', lip: '1/4', allowance: '1/8' },
  };
  checkCases([
    inches('16x20 print in 22x26 behind a 1/4 lip', print, {
      borders: [3.125, 3.125, 3.125, 3.125], seen: [2.9375, 2.9375, 2.9375, 2.9375],
    }),
    inches('the same with no allowance', { ...print, frame: { ...print.frame, allowance: '0' } }, { seen: [2.875, 2.875, 2.875, 2.875] }),
    inches('asked for 3 in to be seen', { ...print, borders: { rule: 'equal', all: '3', measured: 'as seen' } }, {
      says: ['borders-do-not-add-up'], words: [/nearest possible is sides 2 15\/16 in each/],
    }),
    inches('1/2 in of mat behind a 1/4 lip', { pictures: one('8x10', '1/8'), borders: { rule: 'equal', all: '1/2' }, frame: { lip: '1/4', allowance: '0' } }, {
      seen: [0.25, 0.25, 0.25, 0.25], says: ['border-narrow'], words: [/only 1\/4 in shows of all four borders/],
    }),
    inches('a border no wider than the lip', { pictures: one('8x10', '1/8'), borders: { rule: 'equal', all: '1/4' }, frame: { lip: '1/4' } }, {
      says: ['border-behind-lip'],
    }),
  ]); // prettier-ignore
});

describe('paper that is not what its name says', () => {
  // "22x30" paper measured 22 1/4 x 30 1/4: the window made for it, over sheets of other sizes.
  const window = { kind: 'window', picture: 1, size: '21 3/4 x 29 3/4' } as const;
  const over = (size: string): Contents => ({ pictures: one(size, '1/4'), windows: window, frame: { size: '28x36' } });
  checkCases([
    inches('22 1/4 x 30 1/4 as measured', over('22 1/4 x 30 1/4'), { overlap: 0.25, never: ['overlap-too-small'] }),
    inches('a true 22x30 sheet', over('22x30'), { overlap: 0.125, never: ['overlap-too-small'] }),
    inches('a 21 3/4 sheet', over('21 3/4 x 29 3/4'), { overlap: 0, says: ['overlap-too-small'], words: [/measure/i] }),
  ]);

  it.each([
    ['1/4', 89.1],
    ['1/8', 94.5],
  ] as const)('8x10 with an overlap of %s keeps %s % of the picture', (overlap, percent) => {
    const row = inches('', { pictures: one('8x10', overlap), frame: { size: '11x14' } }, {});
    const [width, height] = numbersOf(row).window;
    expect((100 * width * height) / 80).toBeCloseTo(percent, 1);
  });
});

describe('floats and millimetres', () => {
  checkCases([
    inches('floated print 8x10, 3/8 shown on three sides and 1/2 below', {
      pictures: [{ size: '8x10', overlap: { left: 'shows 3/8', top: 'shows 3/8', right: 'shows 3/8', bottom: 'shows 1/2' } }],
      frame: { size: '14x17' },
    }, { window: [8.75, 10.875], says: ['picture-floats'] }),
    millimetres('A4 certificate in 11x14, overlap 3 mm', { pictures: [{ size: 'A4', overlap: 3 }], frame: { size: '11x14 in' } }, {
      window: [204, 291], borders: [37.7, 32.3, 37.7, 32.3],
    }),
    millimetres('A3 image on 500 x 400 mm, 2 mm covered', { pictures: [{ size: 'A3 landscape', overlap: '2 mm' }], frame: { size: '500 x 400' } }, {
      window: [416, 293], borders: [42, 53.5, 42, 53.5],
    }),
    millimetres('diploma 216 x 279 on 413 x 476, overlap 2, reveal 6', { pictures: [{ size: '216 x 279', overlap: 2 }], frame: { size: '413 x 476' }, mat: { layers: [{}, { reveal: '6 mm' }] } }, {
      window: [212, 275], borders: [100.5, 100.5, 100.5, 100.5], topOpening: [224, 287], topBorders: [94.5, 94.5, 94.5, 94.5],
    }),
  ]); // prettier-ignore

  it('500 x 400 mm is loose in a 20x16 in frame by 8 x 6.4 mm', () => {
    const { blank } = planned({ pictures: one('8x10', '1/8'), frame: { size: '20x16' } }).layout.frame;
    expect(blank.width - 500).toBeCloseTo(8, 9);
    expect(blank.height - 400).toBeCloseTo(6.4, 9);
  });
});
