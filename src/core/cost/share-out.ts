/** Parts an amount that several pay together, so that what they pay adds up to it. */
import { cutTo, money, NO_MONEY, roundedTo, sumOf, type Money } from '../money';

/**
 * In the currency's smallest unit, by the largest remainders: each gets its share rounded down, and the units that are then left
 * go one each to those whose share was cut most; of such that were cut alike to the first.
 *
 * @param parts not below 0; where all are 0 nothing is paid.
 */
export function shareOut(amount: Money, parts: readonly Money[], places: number): Money[] {
  const all = sumOf(parts);
  if (all.isZero()) return parts.map(() => NO_MONEY);
  const whole = roundedTo(amount, places);
  const shares = parts.map((part, index) => {
    const exact = whole.times(part).div(all);
    const down = cutTo(exact, places);
    return { index, down, cut: exact.minus(down) };
  });
  const unit = money(10).pow(-places);
  const left = whole
    .minus(sumOf(shares.map(({ down }) => down)))
    .div(unit)
    .toNumber();
  const raised = new Set(shares.toSorted((a, b) => b.cut.cmp(a.cut) || a.index - b.index).slice(0, left).map(({ index }) => index)); // prettier-ignore
  return shares.map(({ index, down }) => (raised.has(index) ? down.plus(unit) : down));
}
