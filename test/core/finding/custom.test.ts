/** Frames made to size beside the ready-made ones: their sizes, the moulding they take, what they cost more. */
import { describe, expect, test } from 'vitest';
import { customTitle, customWords, equalityWords } from '../../../src/core/finding/custom-words';
import type { Custom } from '../../../src/core/finding/custom';
import type { Found } from '../../../src/core/finding/find-frames';
import type { Contents } from '../open';
import { found, framesOf, inchesOf, shelfOf } from './shelves';

const fern: Contents = {
  pictures: [{ size: '8 x 10 in', overlap: '1/8 in' }],
  package: { mountBoard: { without: true } },
};
const heading = 'kind,name,width,height,face,lip,rabbet depth,price,per,comes with,material,uv filter,count';
const shop = shelfOf(
  heading,
  'frame,Ash,11 in,14 in,,,,12.50,each,,,,',
  'moulding,Broad,,,1 1/4 in,1/4 in,5/8 in,5.40,ft,,,,',
  'moulding,Narrow,,,3/4 in,1/4 in,5/8 in,2.20,ft,,,,',
  'moulding,Shallow,,,1/2 in,1/8 in,1/4 in,0.50,ft,,,,',
  'moulding,Used up,,,1/2 in,1/8 in,1 in,0.10,ft,,,,0',
  'moulding,Unpriced,,,1/2 in,1/8 in,1 in,,,,,,',
  'board,Top board,32 in,40 in,,,,12.60,sheet,,,,',
  'glazing,Clear,30 in,40 in,,,,1.44,sq ft,,glass,no,',
);

function kindOf({ customs }: Found, kind: Custom['kind']): Custom {
  const custom = customs.find((one) => one.kind === kind);
  if (!custom) throw new Error(`none of the kind ${kind} among ${customs.map((one) => one.kind).join(', ')}`);
  return custom;
}

const inchSize = ({ blank }: Custom) => [blank.width, blank.height].map((mm) => Number((mm / 25.4).toFixed(9)));

describe('a frame made to size', () => {
  const job: Contents = { ...fern, borders: { all: '2 5/8 in' } };
  const all = found(job, shop);
  const own = kindOf(all, 'own');

  test('takes 2 x (w + h) of the rabbet and 8 x (face - lip) of moulding, the cheapest that is deep enough', () => {
    expect(inchSize(own)).toEqual([13, 15]);
    // Rabbet 13 1/8 x 15 1/8 in: 2 x 28 1/4, and 8 x 1/2.
    expect(own.length / 25.4).toBeCloseTo(60.5, 9);
    expect(own.offers.map(({ moulding, isDeepEnough }) => [moulding.name, isDeepEnough])).toEqual([
      ['Narrow', true],
      ['Broad', true],
      ['Unpriced', true],
      ['Shallow', false],
    ]);
    expect(own.offers[0]!.amount!.toNumber()).toBeCloseTo((2.2 * 60.5) / 12, 9);
    // Broad: 8 x 1 in.
    expect(own.offers[1]!.length / 25.4).toBeCloseTo(64.5, 9);
  });

  test('costs so much more than the best on the shelf', () => {
    // Six of 13 x 15 in lie on a sheet of 32 x 40, as of 11 x 14; glazing goes by its area.
    const cost = (2.2 * 60.5) / 12 + 12.6 / 6 + 0.01 * 195;
    expect(own.cost.counted!.toNumber()).toBeCloseTo(cost, 9);
    expect(own.more!.amount!.toNumber()).toBeCloseTo(cost - 12.5 - 12.6 / 6 - 1.54, 9);
    expect(own.more!.notCounted).toEqual([]);
    expect(customWords(all, own)).toEqual([
      'Borders 2 5/8 in all round as cut; 2 7/16 in all round as seen.',
      'It takes 60 1/2 in of Narrow, 11.09, waste and work not counted.',
      'To be cut: board 195 sq in, glazing 195 sq in.',
      'Price 15.14: frame 11.09, layer 1 2.10, glazing 1.95.',
      'Beside Ash: 6 in more moulding round it, 41 sq in more board, 41 sq in more glazing; it costs 1.00 less.',
    ]);
    expect(customTitle(own, all.job)).toBe('13 x 15 in, as the job has it');
  });

  test('counts what comes with the best as nothing more, and its own in full', () => {
    const glazed = shop.map((item) => (item.kind === 'frame' ? { ...item, comesWith: ['glazing' as const] } : item));
    const { more, cost } = kindOf(found(job, glazed), 'own');
    expect(more!.amount!.toNumber()).toBeCloseTo(cost.counted!.toNumber() - 12.5 - 12.6 / 6, 9);
    expect(more!.glazing / 25.4 ** 2).toBeCloseTo(195, 9);
  });

  test('says by how much more length and area where prices are not known', () => {
    const bare = found(job, framesOf('11x14'));
    const { more, cost } = kindOf(bare, 'own');
    expect([cost.counted, more!.amount]).toEqual([undefined, undefined]);
    expect(more!.notCounted).toEqual(['frame', 'layer 1', 'glazing']);
    const words = customWords(bare, kindOf(bare, 'own')).join(' ');
    expect(words).toContain('6 in more moulding round it, 41 sq in more board');
    expect(words).toContain('the difference in price is not known (not counted: frame, layer 1, glazing)');
    const half = found(job, [...framesOf('11x14'), ...shop.filter(({ kind }) => kind !== 'frame')]);
    expect(kindOf(half, 'own').more!.amount!.toNumber()).toBeCloseTo(0.41, 9);
    expect(kindOf(half, 'own').more!.notCounted).toEqual(['frame']);
  });
});

describe('equal borders', () => {
  test('beside an uneven frame: as narrow, or as wide, with the rule for the bottom on top', () => {
    const even = found({ ...fern, frame: { size: '11 x 14 in' } }, shop);
    expect(inchSize(kindOf(even, 'even narrow'))).toEqual([11, 13]);
    expect(inchSize(kindOf(even, 'even wide'))).toEqual([12, 14]);
    expect(inchesOf(kindOf(even, 'even wide').borders)).toEqual([2.125, 2.125, 2.125, 2.125]);
    const weighted = found({ ...fern, borders: { rule: 'bottom-amount', amount: '1/2 in' } }, shop);
    expect(inchSize(kindOf(weighted, 'even narrow'))).toEqual([11, 13.5]);
    expect(inchesOf(kindOf(weighted, 'even narrow').borders)).toEqual([1.625, 1.625, 1.625, 2.125]);
  });

  test('cost nothing more where the best has them', () => {
    const even = found(fern, framesOf('11x13', '11x14'));
    expect(equalityWords(even)).toBe('Even borders cost nothing more: 11x13 has them.');
    expect(even.customs.map(({ kind }) => kind)).toEqual(['own']);
  });

  test('as seen are equal as seen', () => {
    const seen = found(
      { ...fern, frame: { size: '11 x 14 in' }, borders: { measured: 'as seen', range: { least: '1 in' } } },
      shop,
    );
    expect(inchesOf(kindOf(seen, 'even wide').borders, 'seen')).toEqual([1.9375, 1.9375, 1.9375, 1.9375]);
  });
});

describe('the smallest in range', () => {
  test('keeps the least border, weighted by the rule, and no frame of the shelf is told twice', () => {
    const least = kindOf(found({ ...fern, frame: { size: '20 x 24 in' }, borders: { range: { least: '2 in' } } }, shop), 'least'); // prettier-ignore
    expect(inchSize(least)).toEqual([11.75, 13.75]);
    const ready = found({ ...fern, frame: { size: '20 x 24 in' }, borders: { range: { least: '2 in' } } }, [
      ...framesOf('13.75x11.75'),
    ]);
    expect(ready.customs.map(({ kind }) => kind)).toEqual(['own']);
  });

  test('stands in where the job’s own borders are out of range', () => {
    const narrow = found({ ...fern, borders: { all: '1 in', range: { least: '2 in' } } }, shop);
    expect(kindOf(narrow, 'own').misses).toHaveLength(4);
    expect(inchSize(kindOf(narrow, 'least'))).toEqual([11.75, 13.75]);
    expect(customWords(narrow, kindOf(narrow, 'own')).join(' ')).toContain('1 in too narrow');
    expect(equalityWords(narrow)).toMatch(/Nothing on the shelf works/);
  });
});

describe('for a canvas without a mat', () => {
  const canvas: Contents = {
    pictures: [{ kind: 'painting on canvas', size: '15 x 19 in', thickness: '3/4 in' }],
    mat: { layers: [] },
  };

  test('is as large as the picture, of the cheapest moulding, beside the first of the shelf', () => {
    const float = shelfOf('name,width,height,build,price', 'Float,15 in,19 in,float,20');
    const all = found(canvas, [...shop, ...float]);
    const custom = kindOf(all, 'picture');
    expect(inchSize(custom)).toEqual([15, 19]);
    // Rabbet 15 1/8 x 19 1/8 in: 2 x 34 1/4, and 8 x (1/2 - 1/8).
    expect(custom.offers[0]!.moulding.name).toBe('Shallow');
    expect(custom.length / 25.4).toBeCloseTo(71.5, 9);
    expect(custom.cost.counted!.toNumber()).toBeCloseTo((0.5 * 71.5) / 12, 9);
    expect(custom.more!.amount!.toNumber()).toBeCloseTo((0.5 * 71.5) / 12 - 20, 9);
    const words = customWords(all, custom);
    expect(words[0]).toBe('The lip covers 1/16 in all round; 14 7/8 x 18 7/8 in is seen.');
    expect(words).toContain('It is 3/4 in deep and stands out 1/2 in behind the frame; a rabbet 3/4 in deep would hide it.'); // prettier-ignore
    expect(words.join(' ')).not.toMatch(/border|nearest above/);
    expect(customTitle(custom, all.job)).toBe('15 x 19 in, as large as the picture');
  });

  test('is not told where the first of the shelf is that very frame', () => {
    expect(found(canvas, framesOf('19x15')).customs).toEqual([]);
  });
});

test('the nearest above on the shelf is one that the job goes into', () => {
  const rows = ['name,width,height,rabbet depth,build', 'Shallow,13 in,16 in,1/4 in,', 'Float,14 in,16 in,,float', 'Larger,14 in,17 in,5/8 in,']; // prettier-ignore
  const all = found({ ...fern, borders: { all: '2 5/8 in' } }, shelfOf(...rows));
  expect(kindOf(all, 'own').nearestAbove?.name).toBe('Larger');
});
