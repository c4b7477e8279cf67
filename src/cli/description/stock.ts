/** A stock as a table for people: a heading for each board, a row for each size. */
import { counted } from '../../core/phrases';
import { countOf, plainName, type StockSheet } from '../../core/sheets/stock-sheet';
import { stockDetails } from '../../core/sheets/use-words';
import { sizeText, type Showing } from '../../core/units';
import { columns } from '../print/text';

export function stockText(list: readonly StockSheet[], showing: Showing, width: number): string {
  const boards = [...new Set(list.map(plainName))].map((name) => list.filter((one) => plainName(one) === name));
  const sections = boards.flatMap((rows) => [
    '',
    rows[0]?.board ?? '',
    ...columns([['', 'size', 'count', ''], ...rows.map((row) => rowOf(row, showing))], {
      indent: 2,
      width,
      right: [2],
    }),
  ]);
  return `${[`${counted(list.length, 'row')} of stock.`, ...sections].join('\n')}\n`;
}

function rowOf(sheet: StockSheet, showing: Showing): string[] {
  const count = countOf(sheet);
  return [
    sheet.kind,
    sizeText(sheet, showing),
    count === undefined ? 'any' : String(count),
    stockDetails(sheet, showing).join('; '),
  ];
}
