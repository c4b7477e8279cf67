/** Rows of a price list: what each is called, what its value is, and which other cells it has. */
import type { Column } from '../tables/read-table';
import type { STEPS } from './price-list';
import { BOARD_BASES, BOARD_CHARGES, PART_BASES, PARTS, STEP_BASES } from './price-list';

export const PRICE_COLUMNS = [
  { key: 'what', names: ['what', 'kind'], needed: true },
  { key: 'value', names: ['value', 'price', 'amount'], needed: true },
  { key: 'per', names: ['per', 'price per'] },
  { key: 'name', names: ['name'] },
  { key: 'note', names: ['note', 'notes'] },
] as const satisfies readonly Column[];

export type PriceColumn = (typeof PRICE_COLUMNS)[number]['key'];

/** What a value may be. */
type Value =
  'currency' | 'amount' | 'percent' | 'minutes' | 'waste' | 'rounding' | 'yes or no' | 'text' | readonly string[];

interface PriceRow {
  readonly value: Value;
  /** What the value may be for; the first where the cell is empty. Left out: the row has no such cell. */
  readonly per?: readonly string[];
  /** Whether it is for one thing by name; some rows need one, of some words. Left out: the row has no such cell. */
  readonly name?: 'may' | 'must' | readonly string[];
}

export const PRICE_ROWS = {
  currency: { value: 'currency' },
  'board charged': { value: BOARD_CHARGES },
  board: { value: 'amount', per: Object.values(BOARD_BASES).flat(), name: 'may' },
  waste: { value: ['shared', 'not shared'] },
  'mitre waste': { value: 'waste' },
  openings: { value: ['by window', 'by layer'] },
  'first opening': { value: 'amount' },
  'further opening': { value: 'amount' },
  layout: { value: 'amount' },
  'odd shape': { value: 'amount' },
  part: { value: 'amount', per: PART_BASES, name: PARTS },
  hour: { value: 'amount' },
  'cut straight': { value: 'minutes', per: STEP_BASES['cut straight'] },
  'cut curve': { value: 'minutes', per: STEP_BASES['cut curve'] },
  fit: { value: 'minutes', per: STEP_BASES.fit },
  hang: { value: 'minutes', per: STEP_BASES.hang },
  overhead: { value: 'percent' },
  markup: { value: 'percent' },
  margin: { value: 'percent' },
  rounding: { value: 'rounding' },
  tax: { value: 'percent', name: 'must' },
  'tax included': { value: 'yes or no' },
  shop: { value: 'text' },
  'shop address': { value: 'text' },
} as const satisfies Readonly<Record<string, PriceRow> & Record<(typeof STEPS)[number], PriceRow>>;

export type PriceWhat = keyof typeof PRICE_ROWS;
export const PRICE_WHATS = Object.keys(PRICE_ROWS) as readonly PriceWhat[];

export function rowOf(what: PriceWhat): PriceRow {
  return PRICE_ROWS[what];
}
