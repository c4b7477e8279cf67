/** Lengths in tables for spreadsheets: a decimal to calculate with, and a text to read. */
import { decimalText, lengthText, type Showing } from '../units';
import type { Cell } from './csv-text';

/** Decimals of a unit that lose less than a thousandth of a hundredth of a millimetre. */
const DIGITS: Readonly<Record<Showing['unit'], number>> = { in: 7, cm: 6, mm: 5 };

/** A length in mm as a number in the unit shown. */
export function decimalCell(mm: number, { unit }: Pick<Showing, 'unit'>): number {
  return Number(decimalText(mm, unit, DIGITS[unit]));
}

/** `about` where the step of showing rounds; quoted, so that no spreadsheet takes a fraction for a date. */
export function shownCell(mm: number, showing: Showing): Cell {
  return { quoted: lengthText(mm, showing).replace('≈', 'about') };
}
