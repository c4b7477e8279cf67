/** Lines of the work: openings and layout at the shop's own rates, and steps by their minutes. */
import { counted } from '../phrases';
import { money } from '../money';
import type { LinesAsk } from './cost-ask';
import type { PricedLine } from './line';
import { openingsOf, type Openings } from './openings';
import type { PriceList, Step, StepMinutes } from './price-list';
import { numberText, priceText } from './price-text';

type Line = Omit<PricedLine, 'group'>;

/** Only what the shop has a rate for: what it does not charge is not missing. */
export function matWorkLines({ layout, prices }: LinesAsk): Line[] {
  const openings = openingsOf(layout);
  if (openings.windows === 0) return [];
  return [...openingLines(openings, prices), ...oddLines(openings, prices), ...layoutLines(prices)];
}

/** A mat of several layers is charged as one mat, or as one for each layer. */
function timesOf({ layers }: Openings, { openings }: PriceList): number {
  return openings.counted === 'by layer' ? layers : 1;
}

function openingLines(openings: Openings, prices: PriceList): Line[] {
  const { first, further = first } = prices.openings;
  if (!first || !further) return [];
  const { windows } = openings;
  const told = (amount: typeof first) => priceText(amount, prices.currency);
  const more = windows - 1;
  const sum = more === 0 ? `first at ${told(first)}` : `first at ${told(first)}, ${more} more at ${told(further)}`;
  const times = timesOf(openings, prices);
  return [
    {
      slot: 'openings',
      what: 'Openings',
      quantity: inLayers(windows, 'window', times),
      basis: times === 1 ? sum : `${sum}, in each layer`,
      amount: first.plus(further.times(more)).times(times),
    },
  ];
}

function inLayers(count: number, one: string, times: number): string {
  return times === 1 ? counted(count, one) : `${counted(count, one)} in ${times} layers`;
}

function oddLines(openings: Openings, prices: PriceList): Line[] {
  const { oddShapes } = openings;
  if (!prices.oddShape || oddShapes === 0) return [];
  const times = timesOf(openings, prices);
  return [
    {
      slot: 'odd shapes',
      what: 'Odd shapes',
      quantity: inLayers(oddShapes, 'window', times),
      basis: `no rectangles, at ${priceText(prices.oddShape, prices.currency)} each${times === 1 ? '' : ', in each layer'}`,
      amount: prices.oddShape.times(oddShapes * times),
    },
  ];
}

function layoutLines({ layout, currency }: PriceList): Line[] {
  if (!layout) return [];
  return [
    {
      slot: 'layout',
      what: 'Layout',
      quantity: '1 mat',
      basis: `flat, at ${priceText(layout, currency)}`,
      amount: layout,
    },
  ];
}

const STEP_WORDS: Readonly<Record<Step, string>> = {
  'cut straight': 'Cutting, straight',
  'cut curve': 'Cutting, curves',
  fit: 'Fitting',
  hang: 'Fixing the hangers',
};

export function labourLines({ layout, prices }: LinesAsk): Line[] {
  const openings = openingsOf(layout);
  return [...prices.steps].flatMap(([step, minutes]) => stepLines(step, minutes, openings, prices));
}

function stepLines(
  step: Step,
  { minutes, per }: StepMinutes,
  openings: Openings,
  { hour, currency }: PriceList,
): Line[] {
  const count = COUNTS[step](openings, per);
  if (count === 0 || minutes.isZero() || !hour) return [];
  const all = minutes.times(count);
  const of =
    per === 'frame'
      ? ''
      : `${counted(count, per === 'cut' ? 'straight cut' : 'opening')} of ${numberText(minutes, 4)} min, `;
  return [
    {
      slot: step,
      what: STEP_WORDS[step],
      quantity: `${numberText(all, 4)} min`,
      basis: `${of}at ${priceText(hour, currency)} an hour`,
      amount: all.times(hour).div(money(60)),
    },
  ];
}

/** Straight cuts are counted by the cut, those beside a curve too, or by the opening that has no curve. */
const COUNTS: Readonly<Record<Step, (openings: Openings, per: StepMinutes['per']) => number>> = {
  'cut straight': ({ straight, straightCuts }, per) => (per === 'cut' ? straightCuts : straight),
  'cut curve': ({ curved }) => curved,
  fit: () => 1,
  hang: () => 1,
};
