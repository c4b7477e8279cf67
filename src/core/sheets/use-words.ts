/** What using a plan takes from the stock and puts back, in words; and a row of the stock. */
import { moneyText } from '../money';
import { counted, listed } from '../phrases';
import { lengthText, sizeText, type Showing } from '../units';
import { countOf, hasGrain, type StockSheet } from './stock-sheet';
import type { BoardUse, StockAmount } from './use-plan';

/** A line for each board, such as `Warm white: takes 2 sheets 32 x 40 in; puts back 1 strip 4 x 40 in`. */
export function useWords(uses: readonly BoardUse[], showing: Showing): string[] {
  return uses.map(({ board, takes, puts, buys }) => {
    const put = puts.map(
      ({ row, count, keeping }) =>
        `${counted(count, keeping === 'strip' ? 'strip' : 'remnant')} ${sizeText(row, showing)}`,
    );
    const parts = [
      `takes ${takes.length === 0 ? 'nothing' : listed(takes.map((one) => takenWords(one, showing)))}`,
      `puts back ${put.length === 0 ? 'nothing' : listed(put)}`,
      ...(buys.length === 0 ? [] : [`not in the stock, to be bought or taken off the shelf: ${listed(buys.map((one) => amountWords(one, showing)))}`]), // prettier-ignore
    ];
    return `${board}: ${parts.join('; ')}`;
  });
}

function takenWords(amount: StockAmount, showing: Showing): string {
  return `${amountWords(amount, showing)}${countOf(amount.row) === undefined ? ' (not counted)' : ''}`;
}

function amountWords({ row, count }: StockAmount, showing: Showing): string {
  return `${counted(count, row.kind)} ${sizeText(row, showing)}`;
}

/** Such as `remnant, 16 x 40 in, 2 there`: all that a row says but its board. */
export function stockRowWords(sheet: StockSheet, showing: Showing): string {
  const count = countOf(sheet);
  const there = count === undefined ? [] : [`${count} there`];
  return [sheet.kind, sizeText(sheet, showing), ...there, ...stockDetails(sheet, showing)].join(', ');
}

/** Price, grain, kerf, trim and note, as far as they are said. */
export function stockDetails(sheet: StockSheet, showing: Showing): string[] {
  const { price, grain, kerf, trim, note } = sheet;
  return [
    ...(price === undefined ? [] : [`${moneyText(price)} each`]),
    ...(hasGrain(sheet) ? [`grain along the ${grain}`] : []),
    ...(kerf === undefined ? [] : [`kerf ${lengthText(kerf, showing)}`]),
    ...(trim === undefined ? [] : [`trim ${lengthText(trim, showing)}`]),
    ...(note === undefined ? [] : [note]),
  ];
}
