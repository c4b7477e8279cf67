/** Several cost sheets side by side, line by line, each beside the first. */
import { NO_MONEY, sumOf, type Money } from '../money';
import type { CostSheet } from './cost-sheet';
import type { Problem } from '../problem';
import { SLOTS, type CostSlot, type PricedLine } from './line';

/** What one variant pays of something. */
export interface ComparedCell {
  /** Of all that is known; undefined: nothing is. Nothing is paid of what a variant does not have. */
  readonly amount?: Money;
  /** True where a part of it is not known. */
  readonly isOpen: boolean;
  /** More than the first variant pays; below nothing: less. Undefined of the first, and where either is open. */
  readonly more?: Money;
}

export type ComparedWhat =
  | { readonly kind: 'line'; readonly slot: CostSlot }
  | { readonly kind: 'overhead' | 'cost' | 'earning' | 'price' | 'rounding' | 'total' }
  | { readonly kind: 'tax'; readonly name: string };

export interface ComparedRow {
  readonly what: ComparedWhat;
  /** In the order of the variants. */
  readonly cells: readonly ComparedCell[];
}

/** One job, several of one order, variants of which one is made, or one ready-made and made to size. */
export type CostWay = 'by itself' | 'together' | 'compared' | 'against custom';

/** What is wrong with the number of jobs that are asked for in a way. */
export function countProblems(count: number, how: CostWay): Problem[] {
  if (how === 'compared' && count < 2) {
    return [wrongCount('variants-too-few', 'To be compared are two jobs or more, the variants.', 'another job')];
  }
  if (how === 'against custom' && count > 1) {
    return [wrongCount('variants-too-many', 'Ready-made and made to size are compared for one job at a time.', 'one job')]; // prettier-ignore
  }
  return [];
}

function wrongCount(code: string, message: string, remedy: string): Problem {
  return { code, severity: 'error', at: '', message, remedy };
}

/** Lines in the order of a cost sheet; those that no variant has are left out. All are of one price list. */
export function compareSheets(sheets: readonly CostSheet[]): ComparedRow[] {
  const slots = SLOTS.filter((slot) => sheets.some(({ lines }) => lines.some((line) => line.slot === slot)));
  const [first] = sheets;
  const sums = (kind: 'overhead' | 'cost' | 'earning' | 'price' | 'rounding' | 'total') =>
    row({ kind }, sheets.map((sheet) => ({ amount: SUMS[kind](sheet), isOpen: sheet.isOpen && kind !== 'rounding' }))); // prettier-ignore
  return [
    ...slots.map((slot) => row({ kind: 'line', slot }, sheets.map(({ lines }) => cellOf(lines, slot)))), // prettier-ignore
    ...(first?.overhead ? [sums('overhead')] : []),
    sums('cost'),
    ...(first?.earning ? [sums('earning')] : []),
    sums('price'),
    ...(first?.rounding ? [sums('rounding')] : []),
    ...(first?.taxes ?? []).map(
      ({ name }) =>
      row({ kind: 'tax', name }, sheets.map((sheet) => ({ amount: taxOf(sheet, name), isOpen: sheet.isOpen }))), // prettier-ignore
    ),
    sums('total'),
  ];
}

const SUMS = {
  overhead: ({ overhead }: CostSheet) => overhead?.amount ?? NO_MONEY,
  cost: ({ cost }: CostSheet) => cost,
  earning: ({ earning }: CostSheet) => earning?.amount ?? NO_MONEY,
  price: ({ price }: CostSheet) => price,
  rounding: ({ rounding }: CostSheet) => rounding?.amount ?? NO_MONEY,
  total: ({ total }: CostSheet) => total,
} as const;

function taxOf({ taxes }: CostSheet, of: string): Money {
  return taxes.find(({ name }) => name === of)?.amount ?? NO_MONEY;
}

function cellOf(lines: readonly PricedLine[], slot: CostSlot): Omit<ComparedCell, 'more'> {
  const own = lines.filter((line) => line.slot === slot);
  const known = own.flatMap(({ amount }) => amount ?? []);
  const isOpen = known.length < own.length;
  return { isOpen, ...(isOpen && known.length === 0 ? {} : { amount: sumOf(known) }) };
}

function row(what: ComparedWhat, cells: readonly Omit<ComparedCell, 'more'>[]): ComparedRow {
  const [first] = cells;
  return {
    what,
    cells: cells.map((cell, index): ComparedCell => {
      const isKnown = index > 0 && !cell.isOpen && !first?.isOpen && cell.amount && first?.amount;
      return { ...cell, ...(isKnown && cell.amount && first.amount ? { more: cell.amount.minus(first.amount) } : {}) };
    }),
  };
}
