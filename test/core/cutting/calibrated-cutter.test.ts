/** From what is typed of a trial square to a cutter's measures: reading, refusing, and what stays as it was. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calibratedCutter, calibrationWords } from '../../../src/core/cutting/calibrated-cutter';
import { calibrate, type Calibration } from '../../../src/core/cutting/calibration';
import { readCalibration } from '../../../src/core/cutting/calibration-ask';
import { checkCutters } from '../../../src/core/job/cutter-list';
import { readLength } from '../../../src/core/units';

const IN = 25.4;
const typed = {
  scale: '2',
  borders: { left: '1 31/32', top: '1 31/32', right: '2', bottom: '1 15/16' },
  corners: ['-1/64', '-1/32', '0', '-1/64'],
  usedOvercut: '1/16',
};
const spread = { borders: 0, corners: 0 };
const mmOf = (text: string | number | undefined) => {
  const reading = readLength(text ?? '', 'mm');
  if (!reading.ok || (reading.bare && reading.mm !== 0)) throw new Error(`${text} is no length with a unit`);
  return reading.mm;
};

describe('what is typed', () => {
  it('is read in the unit and gives the sums worked by hand', () => {
    const read = readCalibration(typed, 'in');
    if (!read.ok) throw new Error('it can be read');
    // 63/32 in is 50.00625 mm, 31/16 in 49.2125 mm.
    expect(read.value.borders).toEqual({ left: 50.00625, top: 50.00625, right: 50.8, bottom: 49.2125 });
    const found = calibrate(read.value, String);
    if (!found.ok) throw new Error('it can be calibrated');
    // 2 less the mean of 1 31/32, 1 31/32, 2, 1 15/16; 1/16 and the mean of 1/64, 1/32, 0, 1/64 that the cuts stop short.
    expect(found.value.scaleOffset / IN).toBeCloseTo(1 / 32, 12);
    expect(found.value.overcut / IN).toBeCloseTo(5 / 64, 12);
  });

  it('is refused with its place where it is no measure', () => {
    const wrong = {
      scale: 'two',
      borders: { ...typed.borders, top: '5 m' },
      corners: ['0', '3 in', '', '0'],
      usedOvercut: '1,000',
    };
    const read = readCalibration(wrong, 'in');
    expect(read.ok).toBe(false);
    expect(read.problems.map(({ at }) => at)).toEqual(['scale', 'borders.top', 'corners[1]', 'corners[2]', 'overcut']);
    for (const { message } of read.problems) expect(message.length).toBeGreaterThan(10);
  });
});

describe('the cutter', () => {
  const found: Calibration = { scaleOffset: IN / 32, overcut: (5 / 64) * IN, spread };

  it('gets offset and overcut, and keeps all else', () => {
    const before = {
      name: 'Bench',
      reach: '20 in',
      scaleOffset: '1/8 in',
      overcuts: [
        { thickness: '1.5875 mm', overcut: '1/16 in' },
        { thickness: '1/8 in', overcut: '1/8 in' },
      ],
      waste: 'left' as const,
    };
    expect(calibratedCutter(before, found, IN / 16, 'in')).toEqual({
      ...before,
      scaleOffset: '1/32 in',
      overcuts: [{ thickness: '1.5875 mm', overcut: '5/64 in' }, before.overcuts[1]],
    });
    expect(calibratedCutter(before, found, 2, 'mm').overcuts).toEqual([
      ...before.overcuts,
      { thickness: '2 mm', overcut: '1.984 mm' },
    ]);
  });

  it('reads a board without a unit in that of the job', () => {
    const before = { name: 'Bench', overcuts: [{ thickness: '1/16', overcut: 0 }] };
    expect(calibratedCutter(before, found, IN / 16, 'in').overcuts).toEqual([
      { thickness: '1/16', overcut: '5/64 in' },
    ]);
  });

  it('can always be kept, and is what was found within 0.005 mm', () => {
    const mm = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    fc.assert(
      fc.property(
        mm(-50, 50),
        mm(0, 40),
        mm(0.5, 6),
        fc.constantFrom('in', 'mm', 'cm'),
        (scaleOffset, overcut, thickness, units) => {
          const cutter = calibratedCutter({ name: 'Bench' }, { scaleOffset, overcut, spread }, thickness, units);
          expect(checkCutters([cutter]).problems).toEqual([]);
          expect(Math.abs(mmOf(cutter.scaleOffset) - scaleOffset)).toBeLessThan(0.005);
          expect(Math.abs(mmOf(cutter.overcuts?.[0]?.overcut) - overcut)).toBeLessThan(0.005);
          expect(Math.abs(mmOf(cutter.overcuts?.[0]?.thickness) - thickness)).toBeLessThan(0.005);
        },
      ),
      { endOnFailure: true },
    );
  });
});

describe('in words', () => {
  const showing = { unit: 'mm', inchStep: 64, metricStep: 0.1 } as const;
  it.each([
    [0.5, 'the scale must read 0.5 mm more than'],
    [-0.25, 'the scale must read 0.25 mm less than'],
    [0, 'the scale reads true'],
  ])('an offset of %f mm says which way', (scaleOffset, words) => {
    expect(calibrationWords({ scaleOffset, overcut: 1, spread }, showing)[0]).toContain(words);
  });
});
