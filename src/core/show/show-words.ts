/** A show's plan in words: for the command line, the screen and lists alike. */
import { RECKONED } from '../finding/piece-price';
import type { PerSide } from '../geometry/box';
import { showFor, type Show } from '../layout/show';
import { wantedDepthText } from '../package/room-words';
import { showSetting, showTogether, sizeText, type Shown } from '../units';
import { money, roundedText } from '../money';
import { costText, type Cost } from './costs';
import type { Choice, HungPlace, Place, ShowPlan, SizeUse, TradeOffRow } from './plan';
import { counted, listed } from '../phrases';

/** `6 of 8x10 in, 7 of 11x14 in`. */
export function usesText(uses: readonly SizeUse[]): string {
  return uses.map(({ size, pictures }) => `${pictures} of ${size.name}`).join(', ');
}

/** What costs are: the head of their column. */
export function costHead({ by }: Pick<ShowPlan, 'by'>): string {
  return by === 'money' ? 'Cost' : 'Width + height';
}

/** The pictures, the sizes to choose from and the range of borders. */
export function askedText(plan: ShowPlan): string {
  const { range, showing, pictures, sizes, by, counted: priced } = plan;
  const limit = (mm: number) => showSetting(mm, showing).withUnit;
  const to = range.greatest === undefined ? 'up, without an upper end' : `to ${limit(range.greatest)}`;
  const beside = priced.length === 0 ? '' : `, with ${listed(priced)}`;
  const costs =
    by === 'money' ? `Costs are the frames’ prices${beside}.${priced.length > 0 ? ` ${RECKONED}` : ''}` : '';
  return `${counted(pictures, 'picture')}, ${counted(sizes.length, 'size')} of frames to choose from; borders from ${limit(range.least)} ${to}, ${range.measured}. ${costs}`.trim();
}

export const TRADE_OFF_HEADS = ['At most', 'Holds', 'Saves', 'Frames'] as const;

/** Most sizes, pictures held, cost, what it saves beside one size fewer, frames of each size. */
export function tradeOffCells(
  row: TradeOffRow,
  { showing, tradeOff }: Pick<ShowPlan, 'showing' | 'tradeOff'>,
): string[] {
  const before = tradeOff.find(({ most }) => most === row.most - 1);
  return [
    counted(row.most, 'size'),
    String(row.held),
    costText(row.cost, showing),
    // As shown, so that whoever subtracts finds the same.
    row.saves && before ? costText(apart(before.cost, row.cost), showing) : '',
    `${usesText(row.uses)}${row.proven ? '' : ' (not proven best)'}`,
  ];
}

function apart(one: Cost, other: Cost): Cost {
  if (one.by === 'money' && other.by === 'money') {
    return { by: 'money', amount: money(roundedText(one.amount)).minus(roundedText(other.amount)) };
  }
  return one.by === 'size' && other.by === 'size' ? { by: 'size', length: one.length - other.length } : one;
}

/** How many sizes it takes to hold what the shelf can hold. */
export function fewestText({ fewest: { held, least, sizes }, pictures }: ShowPlan): string {
  if (held === 0) return 'No frame of the shelf takes any of the pictures.';
  const all = held === pictures ? `all ${pictures}` : `the ${held} of ${pictures} that the shelf can hold`;
  return sizes === least
    ? `The fewest sizes that hold ${all}: ${least}.`
    : `${sizes} sizes hold ${all}; fewer than ${least} can’t, and what lies between was not settled.`;
}

export function chosenText({ chosen, pictures, showing, by, places }: ShowPlan): string {
  const { uses, held, cost } = chosen;
  const worth = by === 'money' ? `for ${costText(cost, showing)}` : `${costText(cost, showing)} of width and height`;
  const made = places.filter(({ state }) => state === 'made to size').length;
  const beside = made === 0 ? '' : ` ${made} more in ${made === 1 ? 'a frame' : 'frames'} made to size.`;
  return `Chosen: ${counted(uses.length, 'size')} for ${held} of ${counted(pictures, 'picture')}, ${worth}.${beside}${provenText(chosen, showing)}`;
}

function provenText({ proven, bound, held }: Choice, showing: ShowPlan['showing']): string {
  if (proven) return '';
  return bound.held > held
    ? ` Not proven best: as many as ${bound.held} might be held.`
    : ` Not proven best: no choice costs less than ${costText(bound.cost, showing)}.`;
}

/** `lying`, `upright` or `square`. */
export function hangsText({ blank }: Pick<HungPlace, 'blank'>): string {
  if (Math.abs(blank.width - blank.height) < 1e-6) return 'square';
  return blank.width > blank.height ? 'lying' : 'upright';
}

/** What it hangs in: the frame's name, or the size and depth that it is made to. */
export function frameText(place: HungPlace, { showing }: Pick<ShowPlan, 'showing'>): string {
  if (place.frame) return place.frame.name;
  return `made to size, ${sizeText(place.blank, showing)}, rabbet ${wantedDepthText(place.depth.needs, showIn(showing))}`;
}

function showIn({ unit, inchStep, metricStep }: ShowPlan['showing']): Show {
  return showFor({ units: unit, steps: { in: inchStep, mm: metricStep } });
}

/** Borders as the range is measured. */
export function bordersOf({ borders }: HungPlace, { range }: Pick<ShowPlan, 'range'>): PerSide {
  return range.measured === 'as seen' ? borders.seen : borders.cut;
}

export const PLACE_HEADS = ['Picture', 'Frame', 'Hangs', 'Window', 'Left', 'Top', 'Right', 'Bottom'] as const;

/** Title, frame, which way it hangs, window, and the borders from the left round; as shown they add up to the frame. */
export function placeCells(place: Place & HungPlace, plan: ShowPlan): string[] {
  const { left, top, right, bottom } = bordersOf(place, plan);
  const { width, height } = place.window;
  // What rounding leaves over lies in the window, so that equal borders read as equal.
  const [atLeft, atRight, wide] = together([left, right, width], plan);
  const [above, below, high] = together([top, bottom, height], plan);
  const window = `${wide?.rounded || high?.rounded ? '≈ ' : ''}${wide?.text} x ${high?.withUnit}`;
  const borders = [atLeft, above, atRight, below].map((one) => `${one?.rounded ? '≈ ' : ''}${one?.withUnit}`);
  return [titleText(place), frameText(place, plan), hangsText(place), window, ...borders];
}

/** With the remainder of rounding on the last. */
function together(lengths: readonly number[], { showing }: Pick<ShowPlan, 'showing'>): Shown[] {
  const total = lengths.reduce((sum, one) => sum + one, 0);
  return showTogether(lengths, total, showing);
}

/** With which of several it is. */
export function titleText({ picture, copy }: Place): string {
  return picture.count > 1 ? `${picture.title} (${copy} of ${picture.count})` : picture.title;
}

/** Why a picture has no frame, and what would do. */
export function whyText(
  place: Extract<Place, { state: 'own' | 'left' }>,
  { showing }: Pick<ShowPlan, 'showing'>,
): string {
  const { custom, why } = place;
  if (!custom) return why;
  return `${why} A frame made to ${sizeText(custom, showing)} with a rabbet ${wantedDepthText(custom.rabbet, showIn(showing))} would do.`;
}

/** `6 of 8x10 in; 4 on the shelf, 2 to order; 87.00`. */
export function toBuyCells({ toBuy, showing }: ShowPlan): string[][] {
  const rows = toBuy.map(({ frame, needed, there, toOrder, price }) => [
    String(needed),
    frame.name,
    there === undefined ? '' : toOrder === 0 ? `${there} on the shelf` : `${there} on the shelf, ${toOrder} to order`,
    price ? costText(price, showing) : '',
  ]);
  const prices = toBuy.flatMap(({ price }) => price ?? []);
  const whole = sumOfCosts(prices);
  const missing = toBuy.length - prices.length;
  return rows.length < 2 || !whole
    ? rows
    : [
        ...rows,
        [
          '',
          missing === 0 ? 'In all' : `In all, without ${counted(missing, 'frame')} of no known price`,
          '',
          costText(whole, showing),
        ],
      ];
}

/** Undefined of none. */
function sumOfCosts(costs: readonly Cost[]): Cost | undefined {
  return costs.reduce<Cost | undefined>((sum, one) => {
    if (!sum) return one;
    if (sum.by === 'money' && one.by === 'money') return { by: 'money', amount: sum.amount.plus(one.amount) };
    return sum.by === 'size' && one.by === 'size' ? { by: 'size', length: sum.length + one.length } : sum;
  }, undefined);
}
