/** Calibration by a square cut in a scrap: sums worked by hand, and measurements that do not agree. */
import { describe, expect, it } from 'vitest';
import { calibrate, type CalibrationCut } from '../../../src/core/cutting/calibration';
import { allSides } from '../../../src/core/geometry/box';

const IN = 25.4;
const show = (mm: number) => `${mm.toFixed(2)} mm`;
const GOOD: CalibrationCut = {
  scale: 2 * IN,
  borders: allSides(2 * IN),
  corners: [0, 0, 0, 0],
  usedOvercut: IN / 16,
};

describe('a calibration', () => {
  it('of a cutter that is right changes nothing', () => {
    expect(calibrate(GOOD, show)).toEqual({
      ok: true,
      value: { scaleOffset: 0, overcut: IN / 16, spread: { borders: 0, corners: 0 } },
      problems: [],
    });
  });

  // The scale read 2 in and the borders came out 1 31/32, 1 31/32, 2 and 1 15/16 in: 1 31/32 in the mean, so that the
  // scale must read 1/32 in more than the setting. Run 1/16 in past, the cuts stop 1/64, 1/32, 0 and 1/64 in short:
  // 1/64 in more is wanted, 5/64 in.
  it('takes the means', () => {
    const cut = {
      ...GOOD,
      borders: { left: (63 / 32) * IN, top: (63 / 32) * IN, right: 2 * IN, bottom: (31 / 16) * IN },
      corners: [-IN / 64, -IN / 32, 0, -IN / 64],
    };
    const found = calibrate(cut, show);
    if (!found.ok) throw new Error('it can be calibrated');
    expect(found.value.scaleOffset / IN).toBeCloseTo(1 / 32, 12);
    expect(found.value.overcut / IN).toBeCloseTo(5 / 64, 12);
    expect(found.value.spread.borders / IN).toBeCloseTo(1 / 16, 12);
    expect(found.value.spread.corners / IN).toBeCloseTo(1 / 32, 12);
    // 1/16 in apart is too much for borders, 1/32 in is just not for corners.
    expect(found.problems.map(({ code, at }) => [code, at])).toEqual([['calibration-disagrees', 'borders']]);
  });

  it('gives less overcut to cuts that run over', () => {
    expect(calibrate({ ...GOOD, corners: [IN / 32] }, show)).toMatchObject({ value: { overcut: IN / 32 } });
  });

  it('never gives an overcut below nothing, and says so', () => {
    const found = calibrate({ ...GOOD, corners: [IN / 8, IN / 8] }, show);
    expect(found).toMatchObject({ ok: true, value: { overcut: 0 } });
    expect(found.problems.map(({ code, at }) => [code, at])).toEqual([['calibration-unlikely', 'corners']]);
  });

  it('does not believe a scale that is off by more than 1/2 in', () => {
    const found = calibrate({ ...GOOD, borders: allSides(3 * IN) }, show);
    expect(found.ok && found.value.scaleOffset / IN).toBeCloseTo(-1, 12);
    expect(found.problems.map(({ code, at }) => [code, at])).toEqual([['calibration-unlikely', 'borders']]);
  });

  it.each([
    [{ borders: { ...GOOD.borders, top: 0 } }, 'borders'],
    [{ corners: [] }, 'corners'],
    [{ scale: 0 }, 'scale'],
    [{ usedOvercut: -1 }, 'overcut'],
  ])('of %j is refused', (change, at) => {
    const found = calibrate({ ...GOOD, ...change }, show);
    expect(found.ok).toBe(false);
    expect(found.problems.map((problem) => [problem.code, problem.at])).toEqual([['calibration-impossible', at]]);
  });
});
