/** Practitioners' cases of choosing a frame, worked by hand: common practice, no source. */
import { describe, expect, it } from 'vitest';
import { customWords, equalityWords } from '../../src/core/finding/custom-words';
import { candidateWords } from '../../src/core/finding/words';
import { found, framesOf, inchesOf, one, working } from '../core/finding/shelves';
import type { Contents } from '../core/open';
import { SOURCE } from './case';

const print = (size: string, overlap: string, borders: Contents['borders'] = {}): Contents => ({
  pictures: [{ size: `${size} in`, overlap: `${overlap} in` }],
  borders,
});

describe(`which frame (${SOURCE})`, () => {
  it('8x12 print, overlap 1/8: 11x14 or 12x16? The even one, not the nearest in size', () => {
    const shelf = framesOf('11x14', '12x16');
    const wide = found(print('8x12', '1/8'), shelf);
    expect(working(wide)).toEqual(['12x16']);
    expect(inchesOf(one(wide, '12x16').borders)).toEqual([2.125, 2.125, 2.125, 2.125]);
    expect(inchesOf(one(wide, '11x14').borders)).toEqual([1.625, 1.125, 1.625, 1.125]);
    // Also where narrow borders are allowed, and 11x14 takes less board.
    const narrow = found(print('8x12', '1/8', { range: { least: '1 in' } }), shelf);
    expect(working(narrow).slice(0, 2)).toEqual(['12x16', '11x14']);
    expect(candidateWords(narrow, narrow.candidates[0]!).join(' ')).toMatch(/more even by 1\/2 in/);
  });

  it('15x22 sheet, overlap 1/4: 22x28 leaves 3 3/4 and 3 1/4, 21x28 leaves 3 1/4 all round', () => {
    const sheet = found(print('15x22', '1/4'), framesOf('22x28', '21x28'));
    expect(working(sheet).slice(0, 2)).toEqual(['21x28', '22x28']);
    expect(inchesOf(one(sheet, '22x28').borders)).toEqual([3.75, 3.25, 3.75, 3.25]);
    expect(inchesOf(one(sheet, '21x28').borders)).toEqual([3.25, 3.25, 3.25, 3.25]);
  });

  it('16x20 print, overlap 1/4: 24x28 or 20x24? Both are even and stand beside each other', () => {
    const both = found(print('16x20', '1/4'), framesOf('24x28', '20x24'));
    expect(working(both).slice(0, 2)).toEqual(['20x24', '24x28']);
    for (const [name, border] of [['20x24', 2.25], ['24x28', 4.25]] as const) {
      expect(inchesOf(one(both, name).borders)).toEqual([border, border, border, border]);
      expect(one(both, name).evenness!.by).toBeCloseTo(0, 9);
      expect(one(both, name).evenness!.ratio).toBeCloseTo(1, 9);
    } // prettier-ignore
    expect(candidateWords(both, both.candidates[0]!).join(' ')).toMatch(/as even, and takes 384 sq in less board/);
  });

  it('square print 10 3/4, borders 4 and 8 at the bottom: no size is ready-made, the nearest above is 20x24', () => {
    const range = { least: '4 in' };
    const wanted = [
      { rule: 'by-hand', sides: '4 in', top: '4 in', bottom: '8 in', range },
      { rule: 'top-as-sides', sides: '4 in', bottom: '8 in', range },
    ] as const;
    for (const borders of wanted) {
      const square = found(print('10 3/4 x 10 3/4', '1/8', borders), framesOf('16x20', '18x24', '20x24', '22x28'));
      expect(square.candidates[0]!.frame.name).toBe('20x24');
      expect(inchesOf(square.candidates[0]!.borders)).toEqual([4.75, 4.75, 4.75, 8.75]);
      expect(one(square, '18x24').misses.map(({ side, by }) => [side, by / 25.4])).toContainEqual([
        'left',
        expect.closeTo(0.25, 9),
      ]);
      const [own] = square.customs;
      expect([own!.kind, own!.blank.width / 25.4, own!.blank.height / 25.4]).toEqual([
        'own',
        expect.closeTo(18.5, 9),
        expect.closeTo(22.5, 9),
      ]);
      expect(own!.nearestAbove?.name).toBe('20x24');
      expect(customWords(square, own!).join(' ')).toMatch(/The nearest above on the shelf is 20x24\./);
    }
  });

  it('8x10 with all borders equal: 13x15 made to size beside 11x14, and what that costs', () => {
    for (const job of [
      print('8x10', '1/8', { rule: 'equal', all: '2 5/8 in' }),
      { ...print('8x10', '1/8', { rule: 'equal' }), frame: { size: '13 x 15 in' } },
    ]) {
      const equal = found(job, framesOf('11x14'));
      expect(working(equal)).toEqual(['11x14']);
      expect(inchesOf(equal.candidates[0]!.borders)).toEqual([1.625, 2.125, 1.625, 2.125]);
      const sizes = equal.customs.map(({ kind, blank }) => [kind, blank.width / 25.4, blank.height / 25.4]);
      expect(sizes.slice(0, 3)).toEqual([
        ['own', expect.closeTo(13, 9), expect.closeTo(15, 9)],
        ['even narrow', expect.closeTo(11, 9), expect.closeTo(13, 9)],
        ['even wide', expect.closeTo(12, 9), expect.closeTo(14, 9)],
      ]);
      const [own] = equal.customs;
      expect(inchesOf(own!.borders)).toEqual([2.625, 2.625, 2.625, 2.625]);
      // 2 x (13 + 15) less 2 x (11 + 14) in of moulding, 13 x 15 less 11 x 14 sq in of mat, of mount board and of glazing.
      expect(own!.more!.length / 25.4).toBeCloseTo(6, 9);
      expect(own!.more!.board / 25.4 ** 2).toBeCloseTo(2 * 41, 6);
      expect(own!.more!.glazing / 25.4 ** 2).toBeCloseTo(41, 6);
      expect(own!.more!.amount).toBe(undefined);
      expect(equalityWords(equal)).toMatch(/11x14 are not even/);
    }
  });

  it('10x14 prints, overlap 1/8, in 16x20: hung either way round, unless the bottom is weighted', () => {
    const even = found(print('10x14', '1/8'), framesOf('16x20'));
    expect(inchesOf(one(even, '16x20').borders)).toEqual([3.125, 3.125, 3.125, 3.125]);
    expect(one(even, '16x20').hangsEitherWay).toBe('yes');
    expect(candidateWords(even, one(even, '16x20')).join(' ')).toMatch(/3 1\/8 in, so the mat may be turned.*any bottom weighting takes that away/); // prettier-ignore
    const weighted = found(print('10x14', '1/8', { rule: 'bottom-amount', amount: '1/2 in' }), framesOf('16x20'));
    expect(inchesOf(one(weighted, '16x20').borders)).toEqual([3.125, 2.875, 3.125, 3.375]);
    expect(one(weighted, '16x20').hangsEitherWay).toBe('not weighted');
    expect(one(found(print('8x10', '1/8'), framesOf('11x14')), '11x14').hangsEitherWay).toBe('no');
  });

  it('16x20 print, overlap 1/8, in 22x26 behind a 1/4 lip: 2 15/16 shows, which fails “3 in visible”', () => {
    const frame = { lip: '1/4 in', allowance: '1/8 in' };
    const seen = { measured: 'as seen', range: { least: '3 in' } } as const;
    const job = { ...print('16x20', '1/8', seen), frame };
    const fails = found(job, framesOf('22x26', '24x28'));
    expect(working(fails)).toEqual(['24x28']);
    expect(inchesOf(one(fails, '22x26').borders, 'seen')).toEqual([2.9375, 2.9375, 2.9375, 2.9375]);
    for (const { by } of one(fails, '22x26').misses) expect(by / 25.4).toBeCloseTo(1 / 16, 9);
    expect(one(fails, '22x26').misses).toHaveLength(4);
    expect(one(fails, '22x26').reasons[0]!.words).toBe(
      'All four borders are 2 15/16 in as seen, 1/16 in too narrow: 3 in or more is wanted.',
    );
    // As cut the same frame is wide enough, and one without a lip shows all of it.
    expect(working(found({ ...job, borders: { range: seen.range } }, framesOf('22x26')))).toEqual(['22x26']);
    expect(working(found(job, [{ ...framesOf('22x26')[0]!, lip: 0 }]))).toEqual(['22x26']);
  });
});
