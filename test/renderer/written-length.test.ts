/** Lengths in a field: what was typed stays, is read in the unit shown, and is nudged along the step. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLength, type Showing } from '../../src/core/units';
import { echoOf, fieldText, nudgedText, storedText } from '../../src/renderer/fields/written-length';
import { overlapText, readOverlapText } from '../../src/renderer/fields/overlap-text';
import { turnedSize } from '../../src/core/job/size-text';
import { echoSize, sizeText, storedSize } from '../../src/renderer/fields/written-size';

const inches: Showing = { unit: 'in', inchStep: 16, metricStep: 0.5 };
const metric: Showing = { ...inches, unit: 'mm' };

describe('a length in a field', () => {
  it.each(['11/4', '6-1/2', '6½', '165.1 mm', '1,000', 'nonsense', '0\'6 1/2"'])(
    'keeps %s as it was typed',
    (typed) => {
      expect(storedText(typed, 'in', inches)).toBe(typed);
      expect(fieldText(typed, 'in', inches)).toBe(typed);
    },
  );

  it('gets its unit where a bare number would mean another one in the job', () => {
    expect(storedText('7', 'in', metric)).toBe('7 mm');
    expect(storedText('7 in', 'in', metric)).toBe('7 in');
    expect(fieldText('6 1/2', 'in', metric)).toBe('6 1/2 in');
    expect(fieldText('165.1 mm', 'in', metric)).toBe('165.1 mm');
  });

  it('means the same whichever unit is shown', () => {
    const typed = fc
      .tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 1, max: 15 }))
      .map(([whole, part]) => `${whole} ${part}/16`);
    fc.assert(
      fc.property(typed, (text) => {
        const stored = readLength(text, 'in');
        const shown = readLength(fieldText(text, 'in', metric), 'mm');
        expect(shown).toMatchObject({ ok: true, mm: stored.ok ? stored.mm : NaN });
      }),
    );
  });

  it('is read back in both systems', () => {
    expect(echoOf('11/4', inches)).toEqual({ ok: true, mm: 69.85, text: '= 2 3/4 in · ≈ 69.9 mm' });
    // Thinner than a millimetre: to a hundredth, or paper would be told a fifth too thick.
    expect(echoOf('0.25 mm', inches)).toMatchObject({ text: '= 0.01 in · 0.25 mm' });
    expect(echoOf('69.85', metric)).toMatchObject({ ok: true, mm: 69.85 });
    expect(echoOf('1.5/8', inches)).toMatchObject({ ok: false, message: expect.stringContaining('1 5/8') as string });
  });

  it('goes to the next step up or down, and by whole steps from there', () => {
    expect(nudgedText(25.4, 1, 1, 'in', inches)).toBe('1 1/16');
    expect(nudgedText(25.4, -1, 1, 'in', inches)).toBe('15/16');
    expect(nudgedText(26, 1, 1, 'in', inches)).toBe('1 1/16');
    expect(nudgedText(26, -1, 1, 'in', inches)).toBe('1');
    expect(nudgedText(25.4, 1, 8, 'in', inches)).toBe('1 1/2');
    expect(nudgedText(10, 1, 1, 'in', metric)).toBe('10.5 mm');
  });
});

describe('an overlap in a field', () => {
  it.each([
    ['covers 1/8 in', 'covers', '1/8 in'],
    ['1/8', 'covers', '1/8'],
    ['shows 1/4', 'shows', '1/4'],
    ['-3 mm', 'shows', '3 mm'],
  ])('reads %s', (written, way, length) => {
    expect(readOverlapText(written)).toEqual({ way, length });
  });

  it('takes a typed word or sign as meant, else the way that was chosen', () => {
    expect(overlapText('covers', '3/8')).toBe('covers 3/8');
    expect(overlapText('covers', '-3/8')).toBe('shows 3/8');
    expect(overlapText('shows', 'covers 3/8')).toBe('covers 3/8');
  });
});

describe('a size in a field', () => {
  it('keeps what was typed, with a unit only where it would be misread', () => {
    expect(storedSize('8x10"', 'in', metric)).toBe('8x10"');
    expect(storedSize('200 x 250', 'in', metric)).toBe('200 x 250 mm');
    expect(storedSize('8 x 10', 'in', inches)).toBe('8 x 10');
    expect(storedSize('A4', 'in', metric)).toBe('A4');
    expect(sizeText('8 x 10', 'in', metric)).toBe('8 x 10 in');
    expect(sizeText({ width: '8', height: 10 }, 'in', inches)).toBe('8 x 10');
  });

  it.each([
    ['8 x 10 in', '10 x 8 in'],
    ['8in x 10in', '10in x 8in'],
    ['8x10”', '10x8”'],
    ['8 × 10 in', '10 × 8 in'],
    ['8 in by 25 cm', '25 cm by 8 in'],
    ['6½ x 8½ in', '8½ x 6½ in'],
    ['200 x 250 millimetres', '250 x 200 millimetres'],
    ['A4', 'A4 landscape'],
    ['A4 landscape', 'A4'],
  ])('turned on its side makes %s %s', (written, turned) => {
    expect(turnedSize(written)).toBe(turned);
    const before = echoSize(written, inches, 'it');
    const after = echoSize(turned, inches, 'it');
    if (!before.ok || !after.ok) throw new Error('both are sizes');
    expect(after.size).toEqual({ width: before.size.height, height: before.size.width });
  });

  it('says what is wrong with what is no size', () => {
    expect(echoSize('8', inches, 'the sheet')).toMatchObject({
      ok: false,
      message: expect.stringContaining('width x height') as string,
    });
  });
});
