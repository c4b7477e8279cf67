/** What is wrong between the rows of a price list: said twice, at odds with one another, or lacking another row. */
import { money } from '../money';
import type { Problem } from '../problem';
import { BOARD_BASES, type BoardCharge } from './price-list';
import type { PlacedEntry, PriceEntry } from './price-entry';

type Entries = readonly PlacedEntry[];

export function pricesProblems(entries: Entries): Problem[] {
  return [...doubleProblems(entries), ...lacking(entries), ...oddsProblems(entries)];
}

/** Rows that can't stand beside another as they are, whatever else the list may yet get. */
export function oddsProblems(entries: Entries): Problem[] {
  return [...otherBases(entries), ...unfitRounding(entries)];
}

/** Rows that say the same thing, of which one has to go. */
export function doubleProblems(entries: Entries): Problem[] {
  return [...saidTwice(entries), ...bothEarnings(entries)];
}

function saidTwice(entries: Entries): Problem[] {
  const seen = new Map<string, number>();
  return entries.flatMap(({ what, name = '', line }): Problem[] => {
    const key = `${what} ${name.trim().toLowerCase()}`;
    const before = seen.get(key);
    if (before === undefined) {
      seen.set(key, line);
      return [];
    }
    const named = name === '' ? '' : ` of “${name.slice(0, 40)}”`;
    return [fault('price-twice', line, 'what', `“${what}”${named} stands on line ${before} too; keep one of them`)];
  });
}

function bothEarnings(entries: Entries): Problem[] {
  const [first, second] = entries.filter(({ what }) => what === 'markup' || what === 'margin');
  if (!first || !second || first.what === second.what) return [];
  return [
    fault('prices-conflict', second.line, 'what', `“${second.what}” and “${first.what}” (line ${first.line}) say the same thing in two ways; keep one of them`),
  ]; // prettier-ignore
}

function otherBases(entries: Entries): Problem[] {
  const charge = chargeOf(entries);
  const bases: readonly string[] = BOARD_BASES[charge];
  return entries.flatMap(({ what, per, line }): Problem[] => {
    if (what !== 'board' || per === undefined || bases.includes(per)) return [];
    const right = bases.length === 0 ? 'a sheet’s price stands on the shelf' : `it would be for ${bases.join(' or ')}`;
    return [fault('prices-conflict', line, 'per', `boards are charged ${charge}, and a price for ${per} has no use then; ${right}`)]; // prettier-ignore
  });
}

export function chargeOf(entries: readonly PriceEntry[]): BoardCharge {
  return (entries.find(({ what }) => what === 'board charged')?.word ?? 'by sheet used') as BoardCharge;
}

/** A row that needs another, and which. */
function lacking(entries: Entries): Problem[] {
  const has = (what: PriceEntry['what']) => entries.some((one) => one.what === what);
  const needs = (what: PriceEntry['what'], other: PriceEntry['what'], example: string) => {
    // A tax that is not included is what goes for all who say nothing.
    const found = entries.find((one) => one.what === what && one.yes !== false);
    return found && !has(other) ? [needing(found.line, what, other, example)] : [];
  };
  const minutes = entries.find(({ what, amount }) => STEPPED.has(what) && amount?.gt(0));
  const united = entries.find(({ what, word }) => what === 'board charged' && word === 'by united inches');
  return [
    ...(has('currency') ? [] : [lackingCurrency()]),
    ...(minutes && !has('hour') ? [needing(minutes.line, minutes.what, 'hour', 'hour,36.00')] : []),
    ...(united && !has('board') ? [needing(united.line, 'board charged', 'board', 'board,0.35,united in')] : []),
    ...needs('further opening', 'first opening', 'first opening,4.00'),
    ...needs('tax included', 'tax', 'tax,8 %,,Sales tax'),
  ];
}

const STEPPED: ReadonlySet<string> = new Set(['cut straight', 'cut curve', 'fit', 'hang']);

function needing(line: number, what: string, other: string, example: string): Problem {
  return fault('price-row-missing', line, 'what', `“${what}” needs a row “${other}” beside it, such as ${example}`);
}

function lackingCurrency(): Problem {
  return {
    code: 'price-row-missing',
    severity: 'error',
    at: '',
    message: 'No row says the currency; add one with its code of ISO 4217, such as currency,EUR.',
    remedy: 'a row “currency”',
  };
}

/** What can't be paid can't be rounded to. */
function unfitRounding(entries: Entries): Problem[] {
  const currency = entries.find(({ what }) => what === 'currency')?.currency;
  const found = entries.find(({ what }) => what === 'rounding');
  if (!currency || !found?.rounding || found.rounding.step.decimalPlaces() <= currency.places) return [];
  const has = currency.places === 0 ? 'no decimals' : `${currency.places} decimals`;
  const least = money(10).pow(-currency.places).toFixed();
  return [fault('rounding-unfit', found.line, 'value', `${currency.code} has ${has} (ISO 4217), and nothing can be rounded to ${found.rounding.step.toFixed()}; the least is ${least}`)]; // prettier-ignore
}

function fault(code: string, line: number, column: string, message: string): Problem {
  return {
    code,
    severity: 'error',
    at: `line ${line}, column ${column}`,
    message: `Line ${line}, column “${column}”: ${message}.`,
  };
}
