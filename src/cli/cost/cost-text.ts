/** Cost sheets as text for the terminal: each by itself, or side by side. */
import { compareSheets } from '../../core/cost/compare';
import type { CostSheet } from '../../core/cost/cost-sheet';
import {
  COMPARED_HEAD,
  comparedRow,
  GROUP_WORDS,
  groupsOf,
  lineRow,
  roundingNote,
  sumRows,
  togetherWords,
} from '../../core/cost/cost-words';
import { columns, wrap } from '../print/text';

/** @param names of the jobs or variants, in their order. */
export function costText(sheets: readonly CostSheet[], names: readonly string[], width: number): string {
  const [first] = sheets;
  if (!first) return '';
  const blocks = [
    ...sheets.map((sheet, index) => sheetLines(sheet, names[index] ?? '', width)),
    ...(sheets.length > 1 ? [[togetherWords(sheets)]] : []),
    wrap(roundingNote(first), width),
  ];
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

function sheetLines(sheet: CostSheet, name: string, width: number): string[] {
  const rows = groupsOf(sheet).flatMap(({ group, lines }) => [
    `  ${GROUP_WORDS[group]}`,
    ...columns(
      lines.map((line) => lineRow(line, sheet)),
      { indent: 4, width, right: [2] },
    ),
  ]);
  return [...wrap(name, width), ...rows, '  Sums', ...columns(sumRows(sheet), { indent: 4, width, right: [1] })];
}

export function comparedText(sheets: readonly CostSheet[], names: readonly string[], width: number): string {
  const [first] = sheets;
  if (!first) return '';
  const numbers = names.map((_, index) => String(index + 1));
  // The last column of a table wraps, and ends at no one place: an empty one after the amounts.
  const rows = compareSheets(sheets).map((row) => comparedRow(row, first));
  const tableRows = [[COMPARED_HEAD, ...numbers], ...rows].map((row) => [...row, '']);
  const blocks = [
    columns(names.map((name, index) => [numbers[index] ?? '', name]), { indent: 0, width }), // prettier-ignore
    columns(tableRows, { indent: 2, width, right: numbers.map((_, index) => index + 1) }),
    wrap(roundingNote(first), width),
  ];
  return `${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}
