/** The price list that rows make together, once nothing is wrong with them. */
import { assert } from '../problem';
import type { BoardBasis, PartName, PartPrice, PriceList, StepMinutes, Step } from './price-list';
import { STEPS } from './price-list';
import { chargeOf } from './prices-problems';
import type { PriceEntry } from './price-entry';

export function priceListOf(entries: readonly PriceEntry[]): PriceList {
  const one = (what: PriceEntry['what']) => entries.find((entry) => entry.what === what);
  const all = (what: PriceEntry['what']) => entries.filter((entry) => entry.what === what);
  const currency = one('currency')?.currency;
  assert(currency, 'a list without a currency was refused before');
  const earning = one('markup') ?? one('margin');
  const rounding = one('rounding')?.rounding;
  return {
    currency,
    board: {
      charge: chargeOf(entries),
      prices: new Map(
        all('board').flatMap(({ name = '', amount, per }) =>
          amount ? [[name.trim().toLowerCase(), { amount, per: per as BoardBasis }] as const] : [],
        ),
      ),
      sharesWaste: one('waste')?.word !== 'not shared',
    },
    mitreWaste: one('mitre waste')?.waste ?? { rule: 'as cut' },
    openings: {
      ...amountAs('first', one('first opening')),
      ...amountAs('further', one('further opening')),
      counted: one('openings')?.word === 'by layer' ? 'by layer' : 'by window',
    },
    ...amountAs('layout', one('layout')),
    ...amountAs('oddShape', one('odd shape')),
    parts: new Map(
      all('part').flatMap(({ name, amount, per }) =>
        amount ? [[name as PartName, { amount, per: per as PartPrice['per'] }] as const] : [],
      ),
    ),
    ...amountAs('hour', one('hour')),
    steps: new Map(STEPS.flatMap((step) => stepOf(step, one(step)))),
    ...amountAs('overhead', one('overhead')),
    ...(earning?.amount ? { earning: { of: earning.what as 'markup' | 'margin', percent: earning.amount } } : {}),
    ...(rounding ? { rounding } : {}),
    taxes: all('tax').flatMap(({ name = '', amount }) => (amount ? [{ name, percent: amount }] : [])),
    includesTax: one('tax included')?.yes ?? false,
    shop: { ...wordAs('name', one('shop')), ...wordAs('address', one('shop address')) },
  };
}

function stepOf(step: Step, entry: PriceEntry | undefined): (readonly [Step, StepMinutes])[] {
  if (!entry?.amount) return [];
  return [[step, { minutes: entry.amount, per: entry.per as StepMinutes['per'] }]];
}

function wordAs<K extends string>(key: K, entry: PriceEntry | undefined): Partial<Record<K, string>> {
  return entry?.word === undefined ? {} : ({ [key]: entry.word } as Record<K, string>);
}

function amountAs<K extends string>(
  key: K,
  entry: PriceEntry | undefined,
): Partial<Record<K, NonNullable<PriceEntry['amount']>>> {
  return entry?.amount ? ({ [key]: entry.amount } as Record<K, NonNullable<PriceEntry['amount']>>) : {};
}
