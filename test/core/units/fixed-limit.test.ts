/** Fixed limits as they are told: round in the unit asked, and never more than the limit. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fixedLimitText } from '../../../src/core/limit-text';
import { readLength, type Unit } from '../../../src/core/units';

const inUnit = (unit: Unit) => ({ unit, inchStep: 64, metricStep: 0.1 }) as const;

it.each([
  // 200 / 25.4 = 7.874, 20 / 25.4 = 0.787, 10000 / 25.4 = 393.7.
  [200, 'in', '7 3/4 in'],
  [20, 'in', '3/4 in'],
  [10_000, 'in', '393 in'],
  [203.2, 'in', '8 in'],
  [200, 'mm', '200 mm'],
  [20, 'cm', '2 cm'],
] as const)('%d mm in %s: %s', (mm, unit, told) => {
  expect(fixedLimitText(mm, inUnit(unit))).toBe(told);
});

it('never says more than the limit, nor far less', () => {
  fc.assert(
    fc.property(fc.integer({ min: 2, max: 20_000 }), fc.constantFrom<Unit>('in', 'mm', 'cm'), (mm, unit) => {
      const told = readLength(fixedLimitText(mm, inUnit(unit)), unit);
      expect(told.ok && told.mm <= mm + 1e-6 && told.mm > mm - 25.4 && told.mm > 0.4 * mm).toBe(true);
    }),
  );
});
