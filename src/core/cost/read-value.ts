/** Reads the value of one row of a price list: amounts, percents, minutes and rules, exact; says what would be right. */
import { readMoney, type Money } from '../money';
import { nearestWord } from '../nearest-word';
import type { Cells } from '../tables/cells';
import { CURRENCY_CODES, currencyOf, type Currency } from './currencies';
import type { MitreWaste, PriceRounding } from './price-list';
import type { PriceColumn } from './price-rows';

export type PriceCells = Cells<PriceColumn>;

/** Undefined after a problem. */
export function readCurrency(cells: PriceCells): Currency | undefined {
  const written = cells.text('value') ?? '';
  const found = currencyOf(written.toUpperCase());
  if (found) return found;
  const near = nearestWord(written.toUpperCase(), CURRENCY_CODES);
  const meant = near === undefined ? '' : `; perhaps “${near}” is meant`;
  cells.wrong(
    'currency-unknown',
    'value',
    `“${written.slice(0, 40)}” is no code of ISO 4217, such as EUR or JPY${meant}`,
  );
  return undefined;
}

interface Limits {
  /** Word or sign that may stand behind the number. */
  readonly unit: '%' | 'min';
  readonly most: number;
  /** True where the number has to be less than the greatest. */
  readonly below?: true;
}

/** A number with its unit or without, exact; never below 0. */
export function readNumber(cells: PriceCells, { unit, most, below }: Limits): Money | undefined {
  const written = cells.text('value') ?? '';
  const bare = written.endsWith(unit) ? written.slice(0, -unit.length).trimEnd() : written;
  const reading = readMoney(bare);
  const isWithin = reading.ok && (below ? reading.value.lt(most) : reading.value.lte(most));
  if (reading.ok && isWithin) return reading.value;
  const range = below ? `from 0 to less than ${most}` : `from 0 to ${most}`;
  cells.wrong('number-unreadable', 'value', `“${written.slice(0, 40)}” is not a number ${range}, such as 15 ${unit}`);
  return undefined;
}

const MOST_WASTE = 1000;

export function readMitreWaste(cells: PriceCells): MitreWaste | undefined {
  const written = (cells.text('value') ?? '').toLowerCase().replace(/\s+/g, ' ').replace('×', 'x');
  if (written === 'as cut') return { rule: 'as cut' };
  if (/^8 ?x ?face$/.test(written)) return { rule: '8 x face' };
  const reading = readMoney(written.replace(/\s*%$/, ''));
  if (reading.ok && reading.value.lte(MOST_WASTE)) return { rule: 'percent', percent: reading.value };
  cells.wrong(
    /^\d/.test(written) ? 'number-unreadable' : 'word-unknown',
    'value',
    `“${written.slice(0, 40)}” is not one of as cut, 8 x face, or a percent from 0 to ${MOST_WASTE} such as 12 %`,
  );
  return undefined;
}

export function readRounding(cells: PriceCells): PriceRounding | undefined {
  const written = cells.text('value') ?? '';
  const [, way, step = ''] = /^(?:to the )?(nearest|up to) +(\S+)$/i.exec(written) ?? [];
  const reading = readMoney(step);
  if (way !== undefined && reading.ok && reading.value.gt(0)) {
    return { way: way.toLowerCase() === 'nearest' ? 'nearest' : 'up', step: reading.value };
  }
  cells.wrong(
    'rounding-unfit',
    'value',
    `“${written.slice(0, 40)}” is no rule of rounding; write nearest 0.05, or up to 1`,
  );
  return undefined;
}

/** Letters of a name or an address at the head of a paper. */
export const LONGEST = 200;

export function readText(cells: PriceCells): string | undefined {
  const written = (cells.text('value') ?? '').trim();
  if (written.length <= LONGEST) return written;
  cells.wrong('text-too-long', 'value', `it has ${written.length} letters, where there is room for ${LONGEST} at the most`); // prettier-ignore
  return undefined;
}

export function readYes(cells: PriceCells): boolean | undefined {
  return cells.yes('value');
}
