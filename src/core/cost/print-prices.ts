/** A price list as the text of its file, which reads back to the same rows. */
import type { Money } from '../money';
import { csvText } from '../tables/csv-text';
import type { MitreWaste } from './price-list';
import type { PriceEntry } from './price-entry';
import { PRICE_COLUMNS, rowOf, type PriceColumn } from './price-rows';

/** Comma-separated values; amounts with the decimals of the list's currency, or more where they have more. */
export function printPrices(entries: readonly PriceEntry[]): string {
  const places = placesOf(entries);
  return csvText([
    PRICE_COLUMNS.map(({ names: [name] }) => name),
    ...entries.map((entry) => {
      const cells = priceCells(entry, places);
      return PRICE_COLUMNS.map(({ key }) => cells[key] ?? '');
    }),
  ]);
}

/** Decimals that amounts of the list are told with. */
export function placesOf(entries: readonly PriceEntry[]): number {
  return entries.find(({ currency }) => currency)?.currency?.places ?? 2;
}

/** What its row holds; a cell without a text is left out. */
export function priceCells(entry: PriceEntry, places: number): Partial<Record<PriceColumn, string>> {
  const { what, per, name, note } = entry;
  return {
    what,
    value: valueText(entry, places),
    ...(per === undefined ? {} : { per }),
    ...(name === undefined ? {} : { name }),
    ...(note === undefined ? {} : { note }),
  };
}

/** As it is typed: `12.50`, `8 %`, `1.5 min`, `up to 0.50`. */
export function valueText(entry: PriceEntry, places: number): string {
  const { what, amount, word, currency, waste, rounding, yes } = entry;
  if (currency) return currency.code;
  if (waste) return wasteText(waste);
  if (rounding) return `${rounding.way === 'up' ? 'up to' : 'nearest'} ${plainText(rounding.step, places)}`;
  if (yes !== undefined) return yes ? 'yes' : 'no';
  if (!amount) return word ?? '';
  const { value } = rowOf(what);
  if (value === 'percent') return `${amount.toFixed()} %`;
  return value === 'minutes' ? `${amount.toFixed()} min` : plainText(amount, places);
}

function wasteText(waste: MitreWaste): string {
  return waste.rule === 'percent' ? `${waste.percent.toFixed()} %` : waste.rule;
}

function plainText(amount: Money, places: number): string {
  return amount.toFixed(Math.max(places, amount.decimalPlaces()));
}
