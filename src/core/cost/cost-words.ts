/** Cost sheets in words, the same on screen, paper and terminal. */
import { counted, listed, uncapital } from '../phrases';
import type { Money } from '../money';
import { showingOf, sizeText } from '../units';
import type { ComparedCell, ComparedRow, ComparedWhat } from './compare';
import { totalOf, type CostSheet } from './cost-sheet';
import { GROUPS, type CostGroup, type CostSlot, type PricedLine } from './line';
import type { PriceRounding } from './price-list';
import { amountText, atLeast, percentGiven, percentText } from './price-text';
import type { FrameVariant } from './ready-or-made';
import type { Earning } from './sum-up';

export const GROUP_WORDS: Readonly<Record<CostGroup, string>> = {
  materials: 'Materials',
  fixings: 'Fixings',
  'mat work': 'Mat work',
  labour: 'Labour',
};

/** Headings of `lineRow`. */
export const LINE_HEADS = ['what', 'quantity', 'amount', 'basis'] as const;

export const NOT_COUNTED = 'not counted';

/** What no line of a group has is left out with the group. */
export function groupsOf({ lines }: CostSheet): { readonly group: CostGroup; readonly lines: readonly PricedLine[] }[] {
  return GROUPS.map((group) => ({ group, lines: lines.filter((line) => line.group === group) })).filter(
    ({ lines: own }) => own.length > 0,
  );
}

export function lineRow({ what, quantity, basis, amount }: PricedLine, { currency }: CostSheet): string[] {
  return [what, quantity, amount ? amountText(amount, currency) : NOT_COUNTED, basis];
}

/** One sum: what it is, the amount, how it comes about. */
export type SumRow = readonly [what: string, amount: string, how: string];

/** From the sums of the groups to what is paid; what a part is missing from is told as the least that it is. */
export function sumRows(sheet: CostSheet): SumRow[] {
  const { overhead, cost, earning, price, rounding, net, taxes, groups, isOpen } = sheet;
  const told = (amount: Money) => amountText(amount, sheet.currency);
  const least = (amount: Money) => atLeast(told(amount), isOpen);
  const direct = overhead ? cost.minus(overhead.amount) : cost;
  return [
    ...groupsOf(sheet).map(({ group, lines }): SumRow => {
      // The sum of nothing is no price.
      const counted = lines.filter(({ amount }) => amount).length;
      return [GROUP_WORDS[group], counted > 0 ? atLeast(told(groups[group]), counted < lines.length) : NOT_COUNTED, ''];
    }),
    ...(overhead ? [['Overhead', least(overhead.amount), `${percentGiven(overhead.percent)} of ${told(direct)}`] as const] : []), // prettier-ignore
    ['Cost', least(cost), without(sheet)],
    ...(earning ? [[earningWord(earning), least(earning.amount), earningWords(earning)] as const] : []), // prettier-ignore
    ['Price', least(price), ''],
    ...(rounding ? [['Rounding', told(rounding.amount), roundingWords(rounding, sheet)] as const] : []),
    ...(net.eq(price) || !rounding ? [] : [[sheet.includesTax ? 'Price without tax' : 'Price, rounded', least(net), ''] as const]), // prettier-ignore
    ...taxes.map(({ name, percent, amount }): SumRow => [name, least(amount), taxWords(percent, sheet)]),
    ['Total', atLeast(`${sheet.currency.code} ${told(sheet.total)}`, isOpen), totalWords(sheet)],
  ];
}

/** What is earned as the shop says it: of the price, or of the cost. */
function earningWord(earning: Earning | undefined): string {
  return earning?.of === 'margin' ? 'Margin' : 'Markup';
}

/** `margin 50 % = markup 100 %`: of the price, and of the cost; the first as the shop gives it. */
export function earningWords({ of, markup, margin }: Earning): string {
  const [given, other, word] = of === 'margin' ? [margin, markup, 'markup'] as const : [markup, margin, 'margin'] as const; // prettier-ignore
  const told = percentText(other);
  const isExact = !told.startsWith('≈');
  return `${of} ${percentGiven(given)} ${isExact ? '=' : '≈'} ${word} ${told.replace('≈ ', '')}`;
}

/** Of a price told with tax it is what the customer pays that lies on the step. */
function roundingWords({ way, step }: PriceRounding, { currency, includesTax, total }: CostSheet): string {
  const rule = `${way === 'up' ? 'up to a multiple of' : 'to the nearest'} ${amountText(step, currency)}`;
  return includesTax ? `the price with tax ${rule}: ${amountText(total, currency)}` : rule;
}

function taxWords(percent: Money, { net, includesTax, currency }: CostSheet): string {
  const of = `${percentGiven(percent)} of ${amountText(net, currency)}`;
  return includesTax ? `${of}, as much as is in the total` : of;
}

function totalWords(sheet: CostSheet): string {
  if (sheet.taxes.length === 0) return 'no tax in the price list';
  return sheet.includesTax ? 'prices are told with tax' : 'tax on top of the price';
}

function without({ notCounted }: CostSheet): string {
  if (notCounted.length === 0) return 'everything is counted';
  return `without ${listed(notCounted.map(uncapital))}`;
}

/** What several jobs come to; of variants nobody wants a sum. */
export function togetherWords(sheets: readonly CostSheet[]): string {
  const [first] = sheets;
  if (!first) return '';
  const isOpen = sheets.some((sheet) => sheet.isOpen);
  const all = `${first.currency.code} ${amountText(totalOf(sheets), first.currency)}`;
  return `${counted(sheets.length, 'job')} together: ${atLeast(all, isOpen)}${isOpen ? ', without what is not counted' : ''}`;
}

/** Said with every cost sheet. */
export function roundingNote({ currency: { code, places } }: CostSheet): string {
  const to = places === 0 ? 'whole amounts' : `${places} decimals`;
  return `Each line is rounded half up to ${to}, as ${code} is paid (ISO 4217); every sum is the sum of the amounts shown. What is not counted is in no sum.`;
}

/** How the first row is named that holds the variants' names. */
export const COMPARED_HEAD = 'what';

export function comparedRow({ what, cells }: ComparedRow, sheet: CostSheet): string[] {
  const words = cells.map((cell) => comparedCell(cell, sheet));
  return [comparedWhat(what, sheet), ...words.map(({ told, more }) => (more === undefined ? told : `${told} ${more}`))];
}

const SLOT_WORDS: Readonly<Record<CostSlot, string>> = {
  boards: 'Boards',
  glazing: 'Glazing',
  spacer: 'Spacer',
  backing: 'Backing',
  'dust cover': 'Dust cover',
  frame: 'Frame',
  hinges: 'Hinges',
  fixing: 'Fixing',
  hangers: 'Hangers and hooks',
  openings: 'Openings',
  'odd shapes': 'Odd shapes',
  layout: 'Layout',
  'cut straight': 'Cutting, straight',
  'cut curve': 'Cutting, curves',
  fit: 'Fitting',
  hang: 'Fixing the hangers',
};

export function comparedWhat(what: ComparedWhat, { earning }: CostSheet): string {
  if (what.kind === 'line') return SLOT_WORDS[what.slot];
  if (what.kind === 'tax') return what.name;
  return { overhead: 'Overhead', cost: 'Cost', earning: earningWord(earning), price: 'Price', rounding: 'Rounding', total: 'Total' }[what.kind]; // prettier-ignore
}

/** `13.50`, and what it is more than the first, `+1.50`; `at least` where a part of it is not counted. */
export function comparedCell(
  { amount, isOpen, more }: ComparedCell,
  { currency }: CostSheet,
): { readonly told: string; readonly more?: string } {
  if (!amount) return { told: NOT_COUNTED };
  const told = atLeast(amountText(amount, currency), isOpen);
  return more ? { told, more: `(${differenceText(more, amountText(more, currency))})` } : { told };
}

function differenceText(more: Money, told: string): string {
  if (more.isZero()) return 'same';
  return more.isPositive() ? `+${told}` : told;
}

/** `Ready-made “Ash 16x20”, 16 x 20 in`. */
export function variantName({ kind, job, layout }: FrameVariant): string {
  const size = sizeText(layout.frame.blank, showingOf(job));
  const name = job.frame.name ?? '';
  return kind === 'ready-made' ? `Ready-made “${name}”, ${size}` : `Made to size of “${name}”, ${size}`;
}
