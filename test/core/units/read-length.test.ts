/** Reading lengths as they are written at the bench, and refusing what could mean two things. */
import { describe, expect, it } from 'vitest';
import { readLength, showLength, type LengthReading } from '../../../src/core/units';

function read(written: string | number, unit: 'in' | 'mm' | 'cm' = 'in') {
  const reading = readLength(written, unit);
  if (!reading.ok) throw new Error(`${written}: ${reading.message}`);
  return reading;
}

function refused(written: string): Extract<LengthReading, { ok: false }> {
  const reading = readLength(written, 'in');
  if (reading.ok) throw new Error(`${written} was read as ${reading.mm} mm`);
  return reading;
}

describe('one length, however it is written (common practice, no source)', () => {
  it.each(['6 1/2', '6-1/2', '6.5', '6½', '6 1⁄2"', '16.51 cm', '165.1 mm', `0'6 1/2"`])('%s', (written) =>
    expect(read(written).mm).toBe(165.1),
  );

  it.each([
    '6,5', '6 ½', '6-½', '6 1∕2', '6‑1/2', '6–1/2', '13/2', '6 2/4', '6 1/2"', '6 1/2”', '6 1/2″', "6 1/2''", '6 1/2 in',
    '6 1/2 IN', '6.5in.', '6 1/2 inch', '6 1/2 inches', '  6   1/2  ', '6\u00a01/2', '6\u202f1/2', '+6 1/2', `0' 6.5"`, `0’6½”`,
    '0 ft 6 1/2 in', "0'-6 1/2\"", `0′ 6 1/2″`, '16,51 cm', '165,1mm', '165.1 millimetres', '16.51 centimeters',
  ])('%s', (written) => expect(read(written).mm).toBe(165.1)); // prettier-ignore

  it.each([
    ['½', 12.7],
    ['⅓ in', 25.4 / 3],
    ['.5', 12.7],
    [',5', 12.7],
    ["6'", 1828.8],
    ['6 ft', 1828.8],
    ['6 ft.', 1828.8],
    ['2 feet', 609.6],
    ['1 foot', 304.8],
    [`5' 6"`, 1676.4],
    [`5'6`, 1676.4],
    [`1/2'`, 152.4],
    ['−1/4', -6.35],
    ['-1/4 in', -6.35],
    ['-½', -12.7],
    ['-0', 0],
    ['0', 0],
    ['0.125', 3.175],
    ['0,125', 3.175],
    ['12,5 mm', 12.5],
  ])('%s is %s mm', (written, mm) => expect(read(written).mm).toBe(mm));

  it('takes 12,5 as 12.5', () => expect(read('12,5', 'mm').mm).toBe(12.5));

  it('echoes 11/4 as 2 3/4', () => {
    expect(showLength(read('11/4').mm, { unit: 'in', inchStep: 16, metricStep: 0.5 }).withUnit).toBe('2 3/4 in');
  });
});

describe('the unit of a length', () => {
  it.each([
    ['in', 165.1],
    ['mm', 6.5],
    ['cm', 65],
  ] as const)('a bare number is in the unit of the job: %s', (unit, mm) => {
    expect(readLength('6.5', unit)).toEqual({ ok: true, mm, unit, bare: true });
    expect(readLength(6.5, unit)).toEqual({ ok: true, mm, unit, bare: true });
  });

  it.each([
    ['6.5 in', 'in'],
    ["6'", 'in'],
    ['65 mm', 'mm'],
    ['6.5 cm', 'cm'],
  ] as const)('%s says its own', (written, unit) => {
    for (const job of ['in', 'mm', 'cm'] as const)
      expect(readLength(written, job)).toMatchObject({ unit, bare: false });
  });
});

describe('refusals say what is wrong and what would be right', () => {
  it.each([
    ['1,000', /1,000 could be 1000 or 1\b/, /1000 or 1\b/],
    ['12,500', /12,500 could be 12500 or 12\.5/, /12500 or 12\.5/],
    ['1.5/8', /1\.5\/8 mixes a decimal and a fraction/, /1 5\/8 or 1\.625/],
    ['1/2.5', /mixes a decimal and a fraction/, /one or the other/],
    ['1,000.5', /two decimal marks/, /no marks between thousands/],
    ['6 3/0', /3\/0 divides by nothing/, /write it like/],
    ['6 5/4', /fraction of one or more/, /7 1\/4/],
    ['6 8/8', /fraction of one or more/, /write 7, or/],
    ['8x10', /is a size/, /write it like/],
    ['8 x 10 in', /is a size/, /write it like/],
    ['', /nothing is written/, /write it like/],
    ['   ', /nothing is written/, /write it like/],
    ['wide', /wide is not a length/, /write it like/],
    ['🌿', /is not a length/, /write it like/],
    ['6 furlongs', /cannot be read|can be read/, /write it like/],
    ['5 cm 3 mm', /can be read/, /write it like/],
    ["5' 3 mm", /can be read/, /write it like/],
    ['1e3', /can be read/, /write it like/],
    ['--5', /can be read/, /write it like/],
    ['1/2/3', /can be read/, /write it like/],
  ])('%s', (written, message, remedy) => {
    expect(refused(written).message).toMatch(message);
    expect(refused(written).remedy).toMatch(remedy);
  });

  it.each([NaN, Infinity, -Infinity])('the number %s', (value) => {
    expect(readLength(value, 'mm')).toMatchObject({ ok: false, message: `${value} is not a length` });
  });

  it.each([
    '9'.repeat(400),
    `1/${'9'.repeat(400)}`,
    `1.${'0'.repeat(400)}`,
    `${'9'.repeat(400)}'1"`,
    '1000000000',
    '-40000000 in',
    1e300,
    -1e9,
  ])('what is longer than anything at a bench: %s', (written) => {
    const reading = readLength(written, 'mm');
    expect(reading.ok ? reading.mm : reading.message).toBe(
      String(written).startsWith('1/') ? 0 : 'this is longer than anything at a bench',
    );
  });

  it('quotes no more of a long text than helps', () =>
    expect(refused('x'.repeat(5000)).message.length).toBeLessThan(80));
});
