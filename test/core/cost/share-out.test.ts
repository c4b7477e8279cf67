/** An amount parted among several: what they pay is the whole, and nobody pays a unit more or less than is fair. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shareOut } from '../../../src/core/cost/share-out';
import { money, roundedTo, sumOf } from '../../../src/core/money';

const told = (amount: string, parts: readonly number[], places = 2) =>
  shareOut(money(amount), parts.map(money), places).map((share) => share.toFixed(places));

describe('shares', () => {
  it.each([
    ['11.00', [1, 1, 1], 2, ['3.67', '3.67', '3.66']],
    ['11.00', [1, 2], 2, ['3.67', '7.33']],
    ['10.00', [1, 1, 1], 2, ['3.34', '3.33', '3.33']],
    ['0.02', [1, 1, 1], 2, ['0.01', '0.01', '0.00']],
    ['100', [1, 1, 1], 0, ['34', '33', '33']],
    ['1.000', [3, 3, 3, 1], 3, ['0.300', '0.300', '0.300', '0.100']],
    ['11.005', [1, 1], 2, ['5.51', '5.50']],
    ['11.00', [0, 0], 2, ['0.00', '0.00']],
    ['11.00', [0, 5], 2, ['0.00', '11.00']],
  ])('of %s among %j with %i decimals', (amount, parts, places, shares) => {
    expect(told(amount, parts, places)).toEqual(shares);
  });

  it('add up, whatever is parted, each less than a unit from its exact part', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1e9 }),
        fc.array(fc.integer({ min: 0, max: 1e9 }), { minLength: 1, maxLength: 30 }),
        fc.integer({ min: 0, max: 3 }),
        (milles, parts, places) => {
          fc.pre(parts.some((part) => part > 0));
          const amount = money(milles).div(1000);
          const shares = shareOut(amount, parts.map(money), places);
          const whole = roundedTo(amount, places);
          expect(sumOf(shares).toFixed()).toBe(whole.toFixed());
          shares.forEach((share, index) => {
            const exact = whole.times(parts[index] ?? 0).div(sumOf(parts.map(money)));
            expect(share.minus(exact).abs().lt(money(10).pow(-places))).toBe(true);
          });
        },
      ),
    );
  });
});
