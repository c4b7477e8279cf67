/** Cost sheets of one job or of several as comma-separated values: a row for each line and for each sum. */
import { csvText, type Cell } from '../tables/csv-text';
import type { CostSheet } from './cost-sheet';
import { GROUP_WORDS, sumRows } from './cost-words';
import { amountText } from './price-text';

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
    ...sumRows(sheet).map(([what, amount, how]) => row('Sums', what, '', how, amount.replace(`${currency.code} `, ''))),
  ];
}

/** A number as spreadsheets read it: with a hyphen for its sign, which no text needs to be kept from. */
function plain(amount: string): Cell {
  return amount.startsWith('−') ? { quoted: amount.replace('−', '-') } : amount;
}
