/** The inch against its published definition and the usual table of fractions. */
import { describe, expect, it } from 'vitest';
import { decimalText, MM_PER_INCH, readLength, ROUNDED_BEYOND, showLength } from '../../../src/core/units';

// 1 in = 25.4 mm exactly since 1 July 1959: US Federal Register notice of 1959, reprinted in NIST SP 447, App. 5.
describe('the inch (Federal Register 1959, reprinted NIST SP 447 App. 5)', () => {
  it('is exactly 25.4 mm', () => {
    expect(MM_PER_INCH).toBe(25.4);
    expect(readLength('1 in', 'mm')).toEqual({ ok: true, mm: 25.4, unit: 'in', bare: false });
    expect(readLength('12 in', 'mm')).toMatchObject({ mm: 304.8 });
    expect(readLength("1'", 'mm')).toMatchObject({ mm: 304.8 });
  });

  it('has a thousandth of 0.0254 mm', () => expect(ROUNDED_BEYOND).toBe(0.0254));
});

/** Fraction, decimal inches, millimetres: all exact, worked out by hand from 25.4. */
const TABLE = [
  ['1/64', '0.015625', 0.396875],
  ['1/32', '0.03125', 0.79375],
  ['1/16', '0.0625', 1.5875],
  ['1/8', '0.125', 3.175],
  ['3/16', '0.1875', 4.7625],
  ['1/4', '0.25', 6.35],
  ['5/16', '0.3125', 7.9375],
  ['3/8', '0.375', 9.525],
  ['7/16', '0.4375', 11.1125],
  ['1/2', '0.5', 12.7],
  ['5/8', '0.625', 15.875],
  ['3/4', '0.75', 19.05],
  ['7/8', '0.875', 22.225],
  ['2 1/2', '2.5', 63.5],
  ['10 3/32', '10.09375', 256.38125],
  ['15 15/16', '15.9375', 404.8125],
] as const;

describe.each(TABLE)('%s in = %s in = %s mm', (fraction, decimal, mm) => {
  it('reads the fraction, the decimal and the millimetres as one double', () => {
    expect(readLength(`${fraction} in`, 'mm')).toMatchObject({ mm });
    expect(readLength(`${decimal} in`, 'mm')).toMatchObject({ mm });
    expect(readLength(`${mm} mm`, 'in')).toMatchObject({ mm });
  });

  it('shows the fraction, the decimal and the millimetres', () => {
    expect(showLength(mm, { unit: 'in', inchStep: 64, metricStep: 0.1 })).toMatchObject({
      text: fraction,
      rounded: false,
    });
    expect(Number(decimalText(mm, 'in', 6))).toBe(Number(decimal));
    expect(Number(decimalText(mm, 'mm', 6))).toBe(mm);
  });
});
