/** From lines to the total: worked sums, and what holds for all lines and rules. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { money, sumOf, type Money } from '../../../src/core/money';
import { sumRows } from '../../../src/core/cost/cost-words';
import type { CostSheet } from '../../../src/core/cost/cost-sheet';
import { linesIn, type PricedLine } from '../../../src/core/cost/line';
import { earningWords } from '../../../src/core/cost/cost-words';
import { sumUp } from '../../../src/core/cost/sum-up';
import '../../helpers/seed';
import { pricesOf } from './costed';

function lines(amounts: readonly string[], code = 'EUR'): PricedLine[] {
  const { currency } = pricesOf(`currency,${code}`);
  return linesIn('materials', currency, amounts.map((amount) => ({ slot: 'glazing', what: 'Glazing', quantity: '', basis: '', amount: money(amount) }))); // prettier-ignore
}

const sums = (amounts: readonly string[], ...rows: readonly string[]) => sumUp(lines(amounts), pricesOf('currency,EUR', ...rows)); // prettier-ignore

describe('worked by hand', () => {
  it('0.10 and 0.20 are 0.30', () => {
    expect(sums(['0.1', '0.2']).total.toString()).toBe('0.3');
  });

  it('lines are rounded half up, each by itself', () => {
    // 0.005 three times is 0.01 three times, not 0.02.
    expect(sums(['0.005', '0.005', '0.005']).cost.toString()).toBe('0.03');
    expect(lines(['0.5'], 'JPY')[0]!.amount!.toString()).toBe('1');
    expect(lines(['0.0005'], 'KWD')[0]!.amount!.toString()).toBe('0.001');
  });

  it('a margin of 50 % is a markup of 100 % (common practice, no source)', () => {
    const [margin, markup] = [sums(['40'], 'margin,50 %'), sums(['40'], 'markup,100 %')];
    expect([margin.price, markup.price].map(String)).toEqual(['80', '80']);
    expect(earningWords(margin.earning!)).toBe('margin 50 % = markup 100 %');
    expect(earningWords(markup.earning!)).toBe('markup 100 % = margin 50 %');
    expect(earningWords(sums(['40'], 'margin,40 %').earning!)).toBe('margin 40 % ≈ markup 66.67 %');
    expect(earningWords(sums(['40'], 'markup,25 %').earning!)).toBe('markup 25 % = margin 20 %');
  });

  it.each([
    ['10.01', 'up to 0.05', '10.05'],
    ['10.05', 'up to 0.05', '10.05'],
    ['10.02', 'nearest 0.05', '10'],
    ['10.025', 'nearest 0.05', '10.05'], // the line is 10.03 by then
    ['10.25', 'nearest 0.50', '10.5'],
    ['10.01', 'up to 1', '11'],
    ['0', 'up to 1', '0'],
  ])('%s rounded %s is %s', (amount, rule, net) => {
    expect(sums([amount], `rounding,${rule}`).net.toString()).toBe(net);
  });

  it('two taxes, each of the price without tax', () => {
    // 5 % of 99.99 is 4.9995, 9.975 % is 9.97400.
    const { taxes, total } = sums(['99.99'], 'tax,5 %,,State tax', 'tax,9.975 %,,Town tax');
    expect(taxes.map(({ name, amount }) => `${name} ${amount.toFixed(2)}`)).toEqual([
      'State tax 5.00',
      'Town tax 9.97',
    ]);
    expect(total.toString()).toBe('114.96');
  });

  it('taxes within a price that is rounded: both are taken out of it', () => {
    // 80 with 8 % and 2 % is 88, up to 90: 90 x 8/110 = 6.54545, 90 x 2/110 = 1.63636.
    const { taxes, net, total } = sums(['80'], 'rounding,up to 10', 'tax,8,,State', 'tax,2,,Town', 'tax included,yes');
    expect([...taxes.map(({ amount }) => amount), net, total].map(String)).toEqual(['6.55', '1.64', '81.81', '90']);
  });
});

const cents = fc.integer({ min: 0, max: 5_000_000 }).map((whole) => money(whole).div(1000).toString());
const percent = fc.integer({ min: 0, max: 9990 }).map((whole) => money(whole).div(100).toString());
const steps = fc.constantFrom('0.01', '0.05', '0.25', '1', '10');
const rules = fc.record({
  code: fc.constantFrom('EUR', 'BHD'),
  amounts: fc.array(cents, { maxLength: 8 }),
  overhead: fc.option(percent),
  of: fc.constantFrom('markup', 'margin'),
  percent,
  way: fc.constantFrom('nearest', 'up to'),
  step: fc.option(steps),
  taxes: fc.array(percent, { maxLength: 3 }),
  within: fc.boolean(),
});

describe('in words', () => {
  const words = (rules: readonly string[], amounts: readonly string[], isOpen = false) => {
    const list = pricesOf(...rules);
    const own = lines(amounts);
    const groups = { materials: sumOf(own.map(({ amount }) => amount!)), fixings: money(0), 'mat work': money(0), labour: money(0) }; // prettier-ignore
    return sumRows({
      title: '',
      currency: list.currency,
      lines: own,
      groups,
      notCounted: [],
      isOpen,
      ...sumUp(own, list),
    });
  };

  it('of prices told with tax it is what is paid that lies on the step, and the words say so', () => {
    const rows = words(['currency,JPY', 'tax,10 %,,Tax', 'tax included,yes', 'rounding,up to 10'], ['41']);
    expect(rows.slice(2)).toEqual([
      ['Price', '41', ''],
      ['Rounding', '4', 'the price with tax up to a multiple of 10: 50'],
      ['Price without tax', '45', ''],
      ['Tax', '5', '10 % of 45, as much as is in the total'],
      ['Total', 'JPY 50', 'prices are told with tax'],
    ]);
  });

  it('percents are told as the shop gives them, and what they come to as nearly as it is', () => {
    const rows = words(['currency,EUR', 'overhead,12.345 %', 'margin,33.333 %', 'tax,7.125 %,,Tax'], ['100']);
    const how = new Map(rows.map(([what, , told]) => [what, told]));
    expect(how.get('Overhead')).toBe('12.345 % of 100.00');
    expect(how.get('Margin')).toBe('margin 33.333 % ≈ markup 50 %');
    expect(how.get('Tax')).toMatch(/^7\.125 % of /);
  });

  it('sums that a part is missing from are the least there can be, but for the rounding', () => {
    const rows = words(['currency,EUR', 'overhead,10 %', 'tax,8 %,,Tax', 'rounding,up to 1'], ['9.99'], true);
    const least = rows.filter(([, amount]) => amount.startsWith('at least ')).map(([what]) => what);
    expect(least).toEqual(['Overhead', 'Cost', 'Price', 'Price, rounded', 'Tax', 'Total']);
    expect(rows.at(-1)).toEqual(['Total', 'at least EUR 11.88', 'tax on top of the price']);
  });
});

describe('for all lines and rules', () => {
  it('sums are of what is shown, cost x (1 + markup) = cost / (1 − margin), and the price lies on its step', () => {
    fc.assert(
      fc.property(rules, ({ code, amounts, overhead, of, percent: earned, way, step, taxes, within }) => {
        const list = pricesOf(
          `currency,${code}`,
          ...(overhead === null ? [] : [`overhead,${overhead}`]),
          `${of},${earned}`,
          ...(step === null ? [] : [`rounding,${way} ${step}`]),
          ...taxes.map((tax, index) => `tax,${tax},,Tax ${index}`),
          ...(taxes.length > 0 && within ? ['tax included,yes'] : []),
        );
        const all = lines(amounts, code);
        const made = sumUp(all, list);
        const { cost, earning, price, net, total } = made;
        const { places } = list.currency;
        const half = money(5).div(money(10).pow(places + 1));
        const isNear = (one: Money, other: Money, most = half) => one.minus(other).abs().lte(most);

        const shown = sumOf(all.map(({ amount }) => amount!));
        expect(cost.eq(shown.plus(made.overhead?.amount ?? 0))).toBe(true);
        expect(price.eq(cost.plus(earning!.amount))).toBe(true);
        expect(net.eq(price.plus(made.rounding?.amount ?? 0))).toBe(true);
        expect(total.eq(net.plus(sumOf(made.taxes.map(({ amount }) => amount))))).toBe(true);
        for (const amount of [cost, price, net, total]) expect(amount.decimalPlaces()).toBeLessThanOrEqual(places);

        const one = money(1);
        // Before rounding; the percentages themselves are of twenty digits.
        const byMarkup = cost.times(one.plus(earning!.markup.div(100)));
        const byMargin = cost.div(one.minus(earning!.margin.div(100)));
        expect(isNear(byMarkup, byMargin, money('0.0000001'))).toBe(true);
        expect(isNear(price, byMarkup, half.plus('0.0000001'))).toBe(true);

        const isWithin = taxes.length > 0 && within;
        const stepped = isWithin ? total : net;
        if (step !== null) {
          expect(stepped.mod(step).isZero()).toBe(true);
          const exact = isWithin ? price.times(sumOf(list.taxes.map((tax) => tax.percent)).plus(100)).div(100) : price;
          const moved = stepped.minus(exact);
          if (way === 'up to') expect(moved.gte(0) && moved.lt(step)).toBe(true);
          else expect(moved.abs().times(2).lte(step)).toBe(true);
        }
        for (const tax of made.taxes) expect(isNear(tax.amount, net.times(tax.percent).div(100), half.times(2 * made.taxes.length + 1))).toBe(true); // prettier-ignore
      }),
    );
  });

  it('the sums in words add up as they are read', () => {
    fc.assert(
      fc.property(
        fc.array(cents, { minLength: 1, maxLength: 5 }),
        percent,
        percent,
        fc.constantFrom(['rounding,up to 0.05'], [], ['tax included,yes']),
        (amounts, overhead, tax, rules) => {
          const list = pricesOf(
            'currency,EUR',
            `overhead,${overhead}`,
            'margin,37 %',
            `tax,${tax},,Tax`,
            'tax,3.3,,Other tax',
            ...rules,
          );
          const own = lines(amounts);
          const made = sumUp(own, list);
          const groups = { materials: sumOf(own.map(({ amount }) => amount!)), fixings: money(0), 'mat work': money(0), labour: money(0) }; // prettier-ignore
          const sheet: CostSheet = {
            title: '',
            currency: list.currency,
            lines: own,
            groups,
            notCounted: [],
            isOpen: false,
            ...made,
          };
          const read = new Map(
            sumRows(sheet).map(([what, amount]) => [what, money(amount.replace('EUR ', '').replace('−', '-'))]),
          );
          const of = (what: string) => read.get(what) ?? money(0);
          expect(of('Cost').eq(of('Materials').plus(of('Overhead')))).toBe(true);
          expect(of('Price').eq(of('Cost').plus(of('Margin')))).toBe(true);
          const rounded = read.get('Price, rounded') ?? read.get('Price without tax') ?? of('Price');
          expect(rounded.eq(of('Price').plus(of('Rounding')))).toBe(true);
          expect(of('Total').eq(rounded.plus(of('Tax')).plus(of('Other tax')))).toBe(true);
        },
      ),
    );
  });
});
