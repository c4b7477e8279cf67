/** Money in exact decimals; a price says how much, and for how much of a thing. */
import { Decimal } from 'decimal.js';

/** An amount in the user's own currency, exact. */
export type Money = Decimal;

export type MoneyReading =
  { readonly ok: true; readonly value: Money } | { readonly ok: false; readonly message: string };

/** Digits before the decimal mark, and behind it. */
const MOST_DIGITS = { before: 12, behind: 6 };
const PLAIN = /^(\d+)(?:[.,](\d+))?$/;

/** Reads `12`, `12.50` or `12,50`; refuses signs of currencies, thousands marks and what could mean two things. */
export function readMoney(written: string): MoneyReading {
  const text = written.trim();
  const thousands = withoutThousands(text);
  if (thousands !== undefined) {
    const fraction = /^\d+,\d{3}$/.test(text) ? `, or ${text.replace(',', '.')} where it parts a fraction` : '';
    return refuse(`“${text.slice(0, 40)}” has a mark between thousands; write ${thousands.slice(0, 40)}${fraction}`);
  }
  const [, before, behind = ''] = PLAIN.exec(text) ?? [];
  if (before === undefined) {
    return refuse(`“${text.slice(0, 40)}” is not an amount; write a plain number like 12.50, without currency`);
  }
  if (before.replace(/^0+/, '').length > MOST_DIGITS.before) {
    return refuse(`“${text.slice(0, 40)}” is too large an amount; the greatest is ${'9'.repeat(MOST_DIGITS.before)}`);
  }
  if (behind.length > MOST_DIGITS.behind) {
    return refuse(`“${text.slice(0, 40)}” has too many decimals; an amount has ${MOST_DIGITS.behind} at the most`);
  }
  return { ok: true, value: new Decimal(text.replace(',', '.')) };
}

/** `1,250.50` or `1.250,50` as a plain number; undefined where it has no marks between thousands. */
function withoutThousands(text: string): string | undefined {
  if (/^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(text)) return text.replaceAll(',', '');
  return /^\d{1,3}(?:\.\d{3})+,\d+$/.test(text) ? text.replaceAll('.', '').replace(',', '.') : undefined;
}

export function money(amount: number | string): Money {
  return new Decimal(amount);
}

export const NO_MONEY: Money = new Decimal(0);

export function sumOf(amounts: readonly Money[]): Money {
  return amounts.reduce((sum, one) => sum.plus(one), NO_MONEY);
}

/** With two places, or more where the amount has more that are not zero. */
export function moneyText(amount: Money): string {
  return amount.toFixed(Math.max(2, amount.decimalPlaces()));
}

/**
 * Rounded half up to two places: for sums of areas and lengths times prices. What would round to nothing keeps its first
 * two figures, since something that costs little is not free.
 */
export function roundedText(amount: Money): string {
  const rounded = amount.toDecimalPlaces(2, Decimal.ROUND_HALF_UP);
  if (!rounded.isZero() || amount.isZero()) return rounded.toFixed(2);
  return amount.toSignificantDigits(2, Decimal.ROUND_HALF_UP).toFixed();
}

/** Half up to so many decimals: half of the last one goes away from nothing, as tills round. */
export function roundedTo(amount: Money, places: number): Money {
  return amount.toDecimalPlaces(places, Decimal.ROUND_HALF_UP);
}

/** What is more than so many decimals is cut off; of amounts that are not below nothing. */
export function cutTo(amount: Money, places: number): Money {
  return amount.toDecimalPlaces(places, Decimal.ROUND_DOWN);
}

/** On a multiple of a step: the nearest, halves up, or where it lies between two the higher one. */
export function onStep(amount: Money, step: Money, way: 'nearest' | 'up'): Money {
  return amount.toNearest(step, way === 'up' ? Decimal.ROUND_CEIL : Decimal.ROUND_HALF_UP);
}

/** The amount in whole parts, `places` decimals each, rounded half up: for searches, which need whole numbers. */
export function inParts(amount: Money, places: number): number {
  return amount.times(new Decimal(10).pow(places)).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).toNumber();
}

/** The amount of so many parts, exact up to 2^53. */
export function ofParts(parts: number, places: number): Money {
  return new Decimal(parts).div(new Decimal(10).pow(places));
}

/** What a price is for. */
export const PRICE_BASES = ['each', 'm', 'ft', 'in', 'm2', 'sq ft', 'sheet'] as const;
export type PriceBasis = (typeof PRICE_BASES)[number];

export interface Price {
  readonly amount: Money;
  readonly per: PriceBasis;
}

/** Millimetres, or square millimetres, in one of a basis; undefined for whole things. */
const MEASURE: Readonly<Record<PriceBasis, { readonly length?: string; readonly area?: string }>> = {
  each: {},
  sheet: {},
  m: { length: '1000' },
  ft: { length: '304.8' },
  in: { length: '25.4' },
  m2: { area: '1000000' },
  'sq ft': { area: '92903.04' },
};

/** What a length, mm, costs; undefined when the price is not by length. */
export function priceOfLength({ amount, per }: Price, mm: number): Money | undefined {
  const { length } = MEASURE[per];
  return length === undefined ? undefined : amount.times(mm).div(length);
}

/** What an area, mm², costs; undefined when the price is not by area. */
export function priceOfArea({ amount, per }: Price, squareMm: number): Money | undefined {
  const { area } = MEASURE[per];
  return area === undefined ? undefined : amount.times(squareMm).div(area);
}

function refuse(message: string): MoneyReading {
  return { ok: false, message };
}
