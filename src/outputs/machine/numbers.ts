/** Numbers and texts as machines read them: a point for the decimal mark, no exponent, no needless zeros, ASCII alone. */
import { decimalText, type Unit } from '../../core/units';

/** Decimals of a length that lose less than a thousandth of a hundredth of a millimetre, or about that. */
const DIGITS: Readonly<Record<Unit, number>> = { in: 6, cm: 6, mm: 5 };

/** A length given in mm as a number in a unit. */
export function lengthNumber(mm: number, unit: Unit): string {
  return withoutZeros(decimalText(mm, unit, DIGITS[unit]));
}

/** Any other number, such as an angle. */
export function plainNumber(value: number, digits: number): string {
  const text = withoutZeros(value.toFixed(digits));
  return text === '-0' ? '0' : text;
}

function withoutZeros(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** Radians to degrees. */
export function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}

/**
 * A text in ASCII that can stand in parentheses: accents go, and `_` stands for other signs as well as for `! ? ~ % ;`,
 * which some controls obey wherever they stand. It is not over-long.
 */
export function asciiText(text: string, most: number): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[([{]/g, '[')
    .replace(/[)\]}]/g, ']')
    .replace(/\s+/g, ' ')
    .replace(/[^\x20-\x7e]|[!?~%;]/gu, '_')
    .slice(0, most);
}
