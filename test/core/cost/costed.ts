/** Jobs, shelves and price lists for the tests of costs, and what they come to. */
import { amountText } from '../../../src/core/cost/price-text';
import { costSheets, type CostAsk, type Costed, type CostSheet } from '../../../src/core/cost/cost-sheet';
import type { PriceList } from '../../../src/core/cost/price-list';
import { readPrices } from '../../../src/core/cost/read-prices';
import type { Result } from '../../../src/core/problem';
import { readShelf } from '../../../src/core/shelf/read-shelf';
import type { Shelf } from '../../../src/core/shelf/shelf';
import { planned, type Contents } from '../open';

export function must<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('\n'));
  return result.value;
}

/** Rows under `what,value,per,name`. */
export function pricesOf(...rows: readonly string[]): PriceList {
  return must(readPrices(`what,value,per,name\n${rows.join('\n')}`));
}

const SHELF_HEADING = 'kind,name,width,height,thickness,material,face,lip,comes with,step,length,load,price,per';

/** Lengths in inches unless they say otherwise. */
export function shelfOf(...rows: readonly string[]): Shelf {
  return must(readShelf(`${SHELF_HEADING}\n${rows.join('\n')}`, 'in'));
}

export function costedOf(
  contents: readonly Contents[],
  shelf: Shelf,
  prices: PriceList,
  more: Partial<CostAsk> = {},
): readonly Costed[] {
  return must(costSheets({ jobs: contents.map(planned), shelf, prices, ...more }));
}

export function sheetOf(contents: Contents, shelf: Shelf, prices: PriceList, more: Partial<CostAsk> = {}): CostSheet {
  const [costed] = costedOf([contents], shelf, prices, more);
  return costed!.sheet;
}

/** Lines as `what: amount`; what is not counted has none. */
export function linesOf({ lines, currency }: CostSheet): string[] {
  return lines.map(({ what, amount }) => `${what}: ${amount ? amountText(amount, currency) : '-'}`);
}

export function sumsOf({ cost, overhead, earning, price, rounding, net, taxes, total, currency }: CostSheet) {
  const told = (amount: typeof cost | undefined) => amount && amountText(amount, currency);
  return {
    overhead: told(overhead?.amount),
    cost: told(cost),
    earning: told(earning?.amount),
    price: told(price),
    rounding: told(rounding?.amount),
    net: told(net),
    taxes: taxes.map(({ amount }) => told(amount)),
    total: told(total),
  };
}

/** A picture in a frame of 16 x 20 in that fits tightly, of moulding 2 in wide without a lip. */
export const PLAIN: Contents = {
  title: 'Lady fern',
  pictures: [{ title: 'Lady fern', size: '8 x 10 in' }],
  frame: { size: '16 x 20 in', allowance: 0, lip: 0, mouldingWidth: '2 in', name: 'Ash' },
  mat: { layers: [{ board: 'Soft white' }] },
  package: {
    mountBoard: { board: 'Mount' },
    backing: { material: 'none' },
    dustCover: false,
  },
  hanging: { hanger: 'rings on hooks' },
};

export const PLAIN_SHELF = [
  'moulding,Ash,,,,,2,,,,,,1.80,ft',
  'board,Soft white,32,40,,,,,,,,,11.00,sheet',
  'board,Mount,32,40,,,,,,,,,8.00,sheet',
  'glazing,Clear,,,,glass,,,,,,,9,sq ft',
  'ring,Ring,,,,,,,,,,20 lb,0.20,',
  'hook,Hook,,,,,,,,,,30 lb,0.35,',
] as const;

export const PLAIN_PRICES = [
  'currency,EUR',
  'mitre waste,8 x face',
  'first opening,4.00',
  'layout,5.00',
  'part,0.60,m,points',
  'part,0.25,frame,hinges',
  'hour,36.00',
  'cut straight,2 min,opening',
  'fit,12 min',
  'hang,5 min',
  'overhead,12.5 %',
  'margin,50 %',
  'rounding,up to 0.05',
  'tax,8 %,,Sales tax',
] as const;
