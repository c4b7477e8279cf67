/** From the lines of a cost sheet to what the customer pays: overhead, earnings, rounding and taxes; every sum is of what is shown. */
import { money, NO_MONEY, onStep, roundedTo, sumOf, type Money } from '../money';
import type { PricedLine } from './line';
import type { PriceList, PriceRounding, Tax } from './price-list';

/** A percentage of something, rounded to the currency. */
export interface Share {
  readonly percent: Money;
  readonly amount: Money;
}

/** What is earned on top of the cost, told both ways. */
export interface Earning {
  /** As the shop says it. */
  readonly of: 'markup' | 'margin';
  /** Percent of the cost. */
  readonly markup: Money;
  /** Percent of the price. */
  readonly margin: Money;
  readonly amount: Money;
}

export interface TaxAmount extends Tax {
  readonly amount: Money;
}

/** Each is rounded to the currency's decimals, and each sum is the sum of rounded amounts. */
export interface Sums {
  /** Lines and overhead. */
  readonly cost: Money;
  readonly overhead?: Share;
  readonly earning?: Earning;
  /** Cost and earning. */
  readonly price: Money;
  /** What rounding adds; below nothing: takes. There too where no rule is given and taxes are within the price. */
  readonly rounding?: PriceRounding & { readonly amount: Money };
  /** Price and rounding: what taxes are reckoned of. */
  readonly net: Money;
  readonly taxes: readonly TaxAmount[];
  /** Whether the total is what was rounded, and the taxes are in it. */
  readonly includesTax: boolean;
  /** What is paid. */
  readonly total: Money;
}

export function sumUp(lines: readonly PricedLine[], prices: PriceList): Sums {
  const { places } = prices.currency;
  const direct = sumOf(lines.flatMap(({ amount }) => amount ?? []));
  const overhead = prices.overhead && {
    percent: prices.overhead,
    amount: roundedTo(percentOf(prices.overhead, direct), places),
  };
  const cost = direct.plus(overhead?.amount ?? NO_MONEY);
  const earning = prices.earning && earningOf(prices.earning, cost, places);
  const price = cost.plus(earning?.amount ?? NO_MONEY);
  const rounding = prices.rounding ?? (prices.includesTax ? toSmallest(places) : undefined);
  const { net, taxes } = prices.includesTax ? taxesWithin(price, prices, rounding) : taxesOnTop(price, prices, rounding); // prettier-ignore
  return {
    cost,
    ...(overhead ? { overhead } : {}),
    ...(earning ? { earning } : {}),
    price,
    ...(rounding ? { rounding: { ...rounding, amount: net.minus(price) } } : {}),
    net,
    taxes,
    includesTax: prices.includesTax,
    total: net.plus(sumOf(taxes.map(({ amount }) => amount))),
  };
}

const HUNDRED = money(100);

function percentOf(percent: Money, amount: Money): Money {
  return amount.times(percent).div(HUNDRED);
}

/** `markup = margin / (100 − margin)`: half of the price is all of the cost once more. */
function earningOf({ of, percent }: NonNullable<PriceList['earning']>, cost: Money, places: number): Earning {
  const isMargin = of === 'margin';
  const markup = isMargin ? percent.times(HUNDRED).div(HUNDRED.minus(percent)) : percent;
  const margin = isMargin ? percent : percent.times(HUNDRED).div(HUNDRED.plus(percent));
  const exact = isMargin ? cost.times(percent).div(HUNDRED.minus(percent)) : percentOf(percent, cost);
  return { of, markup, margin, amount: roundedTo(exact, places) };
}

type Taxed = Pick<Sums, 'net' | 'taxes'>;

/** What taxes that are taken out of a whole sum leave may be a smallest coin more or less than the price before them. */
function toSmallest(places: number): PriceRounding {
  return { way: 'nearest', step: money(10).pow(-places) };
}

/** The price is rounded, and each tax is reckoned of that. */
function taxesOnTop(price: Money, { taxes, currency }: PriceList, rounding: PriceRounding | undefined): Taxed {
  const net = rounding ? onStep(price, rounding.step, rounding.way) : price;
  return {
    net,
    taxes: taxes.map((tax) => ({ ...tax, amount: roundedTo(percentOf(tax.percent, net), currency.places) })),
  };
}

/** The price with all taxes is rounded; what of that is tax is taken out again, so that it is that sum which lies on the step. */
function taxesWithin(
  price: Money,
  { taxes, currency: { places } }: PriceList,
  rounding: PriceRounding | undefined,
): Taxed {
  const all = HUNDRED.plus(sumOf(taxes.map(({ percent }) => percent)));
  const gross = price.times(all).div(HUNDRED);
  const total = rounding ? onStep(gross, rounding.step, rounding.way) : roundedTo(gross, places);
  const within = taxes.map((tax) => ({ ...tax, amount: roundedTo(total.times(tax.percent).div(all), places) }));
  return { net: total.minus(sumOf(within.map(({ amount }) => amount))), taxes: within };
}
