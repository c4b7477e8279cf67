/** What a customer gets, what it costs and what to know of it, in words; nothing of the shop's own reckoning. */
import type { Size } from '../geometry/box';
import type { Layout, PlacedWindow } from '../layout/layout';
import { counted, listed, uncapital } from '../phrases';
import type { Job } from '../job/job';
import { fineText, lengthText, showSetting, sizeText, type Showing } from '../units';
import type { Costed, CostSheet } from './cost-sheet';
import { areOfOnePicture } from './one-picture';
import type { Shop } from './price-list';
import { amountText, atLeast, percentGiven } from './price-text';

/** Whose proposal it is and for whom; each is told where it is given. */
export interface OfferHead {
  readonly shop: Shop;
  /** As the user wrote it. */
  readonly customer?: string | undefined;
}

/** `For The school by the harbour`. */
export function customerWords({ customer = '' }: OfferHead): string {
  return customer.trim() === '' ? '' : `For ${customer.trim()}`;
}

export type OfferRow = readonly [what: string, value: string];

/** So many pictures or kinds of windows are told one by one. */
const MOST_TOLD = 4;

/** The same rows for every variant, in the same order. */
export function offerRows({ job, layout, made, sheet }: Costed, showing: Showing): OfferRow[] {
  return [
    ['Outside', sizeText(made.moulding.outside, showing)],
    [job.pictures.length === 1 ? 'Picture' : 'Pictures', pictureWords(job, showing)],
    ['Mat', matWords(layout)],
    ['Windows', layout.layers.length === 0 ? 'none' : windowWords(layout.windows, showing)],
    ['Frame', frameWords({ job, made, sheet }, showing)],
    ['Glazing', glazingWords(job, showing)],
  ];
}

function pictureWords({ pictures }: Job, showing: Showing): string {
  const told = pictures.map(({ title, sheet }) => {
    const size = sizeText(sheet, showing);
    return title === '' ? size : `${title}, ${size}`;
  });
  if (told.length === 0) return 'none';
  return told.length === 1
    ? (told[0] ?? '')
    : `${told.length}: ${listed(
        told.map((one) => one.replace(', ', ' ')),
        MOST_TOLD,
      )}`;
}

/** Boards by their names from the front. */
function matWords({ layers }: Layout): string {
  return layers.length === 0 ? 'without a mat' : layers.map(({ board }) => board).join(' over ');
}

/** Shapes whose own names say little. */
const SHAPE_WORDS: Readonly<Partial<Record<PlacedWindow['shape'], string>>> = {
  joined: 'joined openings',
  outline: 'drawn outline',
};

function windowWords(windows: readonly PlacedWindow[], showing: Showing): string {
  const alike = new Map<string, number>();
  for (const { shape, window } of windows) {
    const words = `${SHAPE_WORDS[shape] ?? shape}, ${sizeText(sizeOf(window), showing)}`;
    alike.set(words, (alike.get(words) ?? 0) + 1);
  }
  return listed(
    [...alike].map(([words, count]) => (count === 1 ? words : `${count} x ${words}`)),
    MOST_TOLD,
  );
}

function sizeOf(box: PlacedWindow['window']): Size {
  return { width: box.right - box.left, height: box.top - box.bottom };
}

function frameWords({ job, made, sheet }: Pick<Costed, 'job' | 'made' | 'sheet'>, showing: Showing): string {
  const { section } = made.moulding;
  const wide = `${lengthText(section.width, showing)} wide`;
  const isMade = section.name !== undefined;
  const name = section.name ?? job.frame.name;
  const isReady = !isMade && sheet.lines.some(({ slot, what }) => slot === 'frame' && what === 'Frame');
  return [name, wide, isMade ? 'made to size' : isReady ? 'ready-made' : undefined].filter(Boolean).join(', ');
}

function glazingWords({ package: { glazing } }: Job, showing: Showing): string {
  if (!glazing) return 'none';
  // Glazing is sold by millimetres in every country; an inch's fraction of it is kept where it is one.
  const own = showSetting(glazing.thickness.nominal, showing);
  const thick = own.parts.fraction ? own.withUnit : fineText(glazing.thickness.nominal, 'mm');
  return `${glazing.material}${glazing.uvFilter ? ' that filters UV' : ''}, ${thick}`;
}

/** What is paid: price, each tax by its name, and all together. */
export function paidRows({ currency, net, taxes, total, includesTax, isOpen }: CostSheet): OfferRow[] {
  const told = (amount: CostSheet['total']) => atLeast(`${currency.code} ${amountText(amount, currency)}`, isOpen); // prettier-ignore
  const taxRows = taxes.map(({ name, percent, amount }): OfferRow => {
    const words = `${name}, ${percentGiven(percent).replace(' %', '\u00a0%')}`;
    return [includesTax ? `of which ${words}` : words, told(amount)];
  });
  if (taxes.length === 0) return [['Price', told(total)]];
  if (includesTax) return [['Price with tax', told(total)], ...taxRows];
  return [['Price', told(net)], ...taxRows, ['In all', told(total)]];
}

/** What prices do not hold: a sentence for each variant that lacks something, or one where all lack the same. */
export function notInPrices(variants: readonly { readonly name: string; readonly sheet: CostSheet }[]): string[] {
  const lacking = variants.map(({ sheet }) => listed([...new Set(sheet.notCounted.map(uncapital))]));
  const [first = ''] = lacking;
  if (lacking.every((one) => one === first)) return first === '' ? [] : [`Not in this price: ${first}.`];
  return variants.flatMap(({ name }, index) => {
    const words = lacking[index] ?? '';
    return words === '' ? [] : [`${name}: not in this price: ${words}.`];
  });
}

/** Common practice, no source. */
export function customerCautions(jobs: readonly Job[]): string {
  const isGlass = jobs.some(({ package: { glazing } }) => glazing?.material === 'glass');
  const carry = isGlass ? 'Glass breaks and its edges cut: carry the frame upright, by both sides. ' : '';
  return `${carry}No glazing stops light from fading a picture: hang it away from sun, heat and damp. What is valuable, old or fragile is for a conservator to mount.`;
}

/** Left for the pen. */
export const TO_FILL_IN = ['Offer holds until', 'Date', 'Signature'] as const;

/** @param isCompared true where they are held beside one another: variants of one picture are chosen from. */
export function offerHeading(jobs: readonly Job[], isCompared: boolean): string {
  const count = jobs.length;
  if (count === 1) return 'What you get';
  const frames = counted(count, 'frame');
  if (!isCompared) return `What you get: ${frames}`;
  return `What you get: ${areOfOnePicture(jobs) ? `${counted(count, 'variant')} to choose from` : `${frames}, side by side`}`;
}
