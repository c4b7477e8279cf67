/** Measures in texts: what is kept on one line and set as a fraction, and what is not. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measuresIn } from '../../src/renderer/fields/measures';

const found = (text: string) => measuresIn(text).filter(({ isMeasure }) => isMeasure).map(({ text: one }) => one); // prettier-ignore

describe('measures in a text', () => {
  it.each([
    ['a gap of 1/4 in on every side', ['1/4 in']],
    ['27 15/16 in from the edge', ['27 15/16 in']],
    ['≈ 48 1/8 in', ['≈ 48 1/8 in']],
    ['2 x (16 1/8 + 20 1/8) + 8 x 1/8', ['16 1/8', '20 1/8', '1/8']],
    ['320.00 sq in, 145.06 sq in without windows', ['320.00 sq in', '145.06 sq in']],
    ['it weighs 3 lb 6 oz, or 350 g', ['3 lb 6 oz', '350 g']],
    ['leaves −0.002 in', ['−0.002 in']],
    ['16 x 20 in', ['20 in']],
    ['32 x 40 in, 75 % used, kept 12.5 %', ['40 in', '75 %', '12.5 %']],
    // Publications, ratios and dates are no fractions of an inch.
    ['CCI Notes 11/5 and 10/8, 13/17', []],
    ['a scale of 1/3, on 24/12', []],
    ['1/2/2026', []],
  ])('%s', (text, wanted) => expect(found(text)).toEqual(wanted));

  it('give the text again when they are put together', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('1/4', ' ', 'in', '16', '≈ ', 'a', '/', '3 1/8 in', '.')), (words) => {
        const text = words.join('');
        expect(measuresIn(text).map((part) => part.text).join('')).toBe(text); // prettier-ignore
      }),
    );
  });
});
