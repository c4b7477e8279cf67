/** Amounts, percents and measures as a cost sheet tells them. */
import { money, moneyText, roundedTo, type Money } from '../money';
import type { Currency } from './currencies';

/** A price: the currency's decimals, or where it has more that are not zero as many, two at least, as the shelf writes it. */
export function priceText(amount: Money, { places }: Currency): string {
  return amount.decimalPlaces() > places ? moneyText(amount) : amount.toFixed(places);
}

/** An amount that is rounded: the currency's decimals. */
export function amountText(amount: Money, { places }: Currency): string {
  return roundedTo(amount, places).toFixed(places).replace('-', '−');
}

export const AT_LEAST = 'at least ';

/** What an amount says of itself where a part of it is not known. */
export function atLeast(told: string, isOpen: boolean): string {
  return isOpen ? AT_LEAST + told : told;
}

/** A percent that the user gave, with all its decimals: `33.333 %`. */
export function percentGiven(percent: Money): string {
  return `${percent.toFixed()} %`;
}

/** `12.5 %`; to two decimals, and said where they are not all. */
export function percentText(percent: Money): string {
  const rounded = roundedTo(percent, 2);
  return `${rounded.eq(percent) ? '' : '≈ '}${rounded.toFixed()} %`;
}

/** A number without zeros at its end, to so many decimals. */
export function numberText(number: Money, decimals: number): string {
  const rounded = roundedTo(number, decimals);
  return `${rounded.eq(number) ? '' : '≈ '}${rounded.toFixed()}`;
}

/** A length in decimals without the last bits of a double, which have no place in money: to a millionth of a millimetre. */
export function exactMm(mm: number): Money {
  return money(mm.toFixed(6));
}

/** `2.5 sq ft` of mm². */
export function areaIn(squareMm: Money, per: 'm2' | 'sq ft'): string {
  return `${numberText(squareMm.div(per === 'm2' ? '1000000' : '92903.04'), 4)} ${per}`;
}

/** Width and height of a frame size together, `36 united in`. */
export function unitedText(mm: Money): string {
  return `${numberText(mm.div('25.4'), 4)} united in`;
}
