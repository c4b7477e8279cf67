/** Rows of a price list in words: what each is about, and what is typed for it. */
import { capital } from '../phrases';
import type { PriceEntry } from './price-entry';
import { rowOf, type PriceWhat } from './price-rows';
import { valueText } from './print-prices';

/** Rows that belong together, in the order of a price list. */
export const PRICE_GROUPS = [
  { title: 'Currency and taxes', whats: ['currency', 'tax', 'tax included', 'rounding'] },
  { title: 'Overhead and earnings', whats: ['overhead', 'markup', 'margin'] },
  { title: 'Boards and moulding', whats: ['board charged', 'board', 'waste', 'mitre waste'] },
  { title: 'Mat work', whats: ['openings', 'first opening', 'further opening', 'odd shape', 'layout'] },
  { title: 'Parts that no shelf holds', whats: ['part'] },
  { title: 'Labour', whats: ['hour', 'cut straight', 'cut curve', 'fit', 'hang'] },
  { title: 'Your shop', whats: ['shop', 'shop address'] },
] as const satisfies readonly { readonly title: string; readonly whats: readonly PriceWhat[] }[];

/** `Part: hinges`, `Sales tax`. */
export function priceRowTitle({ what, name }: PriceEntry): string {
  if (name === undefined) return capital(what);
  return what === 'tax' ? name : `${capital(what)}: ${name}`;
}

/** `1.5 min per cut`. */
export function priceRowWords(entry: PriceEntry, places: number): string {
  const value = valueText(entry, places);
  return entry.per === undefined ? value : `${value} per ${entry.per}`;
}

/** What a row is about, for who types it. */
export const PRICE_MEANINGS: Readonly<Record<PriceWhat, string>> = {
  currency: 'Of all amounts, those of the shelf too: its code of ISO 4217.',
  'board charged': 'How boards are charged.',
  board: 'What board costs by its area, or by united inches (width + height); without a name it is for every board.',
  waste: 'Whether what is left of a sheet is paid by the jobs that are cut from it.',
  'mitre waste':
    'What a moulding takes more for its mitres: as cut, 8 x face, or a percent of twice width and height of the rabbet.',
  openings: 'Whether a window counts once, or once in each layer of the mat.',
  'first opening': 'Of a mat.',
  'further opening': 'Each other opening; without this row they cost what the first costs.',
  layout: 'Flat, for each mat.',
  'odd shape': 'For each window that is no rectangle.',
  part: 'For the whole frame, for a length once round the frame size, or for its area.',
  hour: 'Of work.',
  'cut straight': 'For each straight cut, or for each opening without a curve, in every layer.',
  'cut curve': 'For each opening with a curve, in every layer.',
  fit: 'For each frame: putting it together.',
  hang: 'For each frame: fixing its hangers.',
  overhead: 'What the shop itself costs, as a part of all lines.',
  markup: 'What you earn, as a part of the cost: a markup of 100 % is a margin of 50 %.',
  margin: 'What you earn, as a part of the price: a margin of 50 % is a markup of 100 %.',
  rounding: 'Of the price: to the nearest multiple of a step, or up to one.',
  tax: 'Of the price, called as you name it.',
  'tax included': 'Whether customers are told prices with tax.',
  shop: 'What your shop is called, at the head of proposals.',
  'shop address': 'Where it is, or how it is reached: one line under its name.',
};

const TYPED = {
  currency: ['Code', 'such as EUR or JPY'],
  amount: ['Amount', 'a plain number, such as 12.50'],
  percent: ['Percent', 'such as 12.5 %'],
  minutes: ['Minutes', 'such as 1.5 min'],
  waste: ['Rule', 'as cut, 8 x face, or a percent such as 12 %'],
  text: ['Text', 'as it is to be printed'],
  rounding: ['Rule', 'nearest 0.05, up to 0.50, and the like'],
} as const;

/** What its value is called, and what is typed for it where it is no choice of some words. */
export function valueWords(what: PriceWhat): { readonly label: string; readonly hint: string } {
  const { value } = rowOf(what);
  const [label, hint] = typeof value === 'string' && value !== 'yes or no' ? TYPED[value] : (['Choice', ''] as const);
  return { label, hint };
}

/** Words that the value is one of; undefined where it is typed. */
export function valueChoices(what: PriceWhat): readonly string[] | undefined {
  const { value } = rowOf(what);
  if (value === 'yes or no') return ['yes', 'no'];
  return typeof value === 'string' ? undefined : value;
}
