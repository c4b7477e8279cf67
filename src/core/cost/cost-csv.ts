/** Cost sheets of one job or of several as comma-separated values: a row for each line and for each sum. */
import { csvText, type Cell } from '../tables/csv-text';
import type { CostSheet } from './cost-sheet';
import { GROUP_WORDS, sumRows } from './cost-words';
import { amountText, AT_LEAST } from './price-text';

const HEADING = ['job', 'title', 'group', 'what', 'quantity', 'basis', 'amount', 'currency'] as const;

export function costCsv(sheets: readonly CostSheet[]): string {
  return csvText([HEADING, ...sheets.flatMap((sheet, index) => rowsOf(sheet, index + 1))]);
}

function rowsOf(sheet: CostSheet, job: number): Cell[][] {
  const { title, currency, lines } = sheet;
  const row = (group: string, what: string, quantity: string, basis: string, amount: string): Cell[] => [
    job,
    title,
    group,
    what,
    // Quoted, so that no spreadsheet takes a fraction for a date.
    { quoted: quantity.replace('≈', 'about') },
    basis,
    plain(amount),
    currency.code,
  ];
  return [
    ...lines.map(({ group, what, quantity, basis, amount }) =>
      row(GROUP_WORDS[group], what, quantity, basis, amount ? amountText(amount, currency) : ''),
    ),
    ...sumRows(sheet).map(([what, amount, how]) => {
      // The amount stays a number; that it is the least is told beside it.
      const isLeast = amount.startsWith(AT_LEAST);
      const number = amount.replace(AT_LEAST, '').replace(`${currency.code} `, '');
      return row('Sums', what, '', isLeast ? [AT_LEAST.trim(), how].filter(Boolean).join('; ') : how, number);
    }),
  ];
}

/** A number as spreadsheets read it: with a hyphen for its sign, which no text needs to be kept from. */
function plain(amount: string): Cell {
  return amount.startsWith('−') ? { quoted: amount.replace('−', '-') } : amount;
}
