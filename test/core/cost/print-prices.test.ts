/** The price list as a list that is kept: printed and read again, changed row by row, and told at its rows what is at odds. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CURRENCY_CODES, currencyOf } from '../../../src/core/cost/currencies';
import { KEPT_PRICES } from '../../../src/core/cost/kept-prices';
import { readPriceCells } from '../../../src/core/cost/price-cells';
import { priceName, type PriceEntry } from '../../../src/core/cost/price-entry';
import { PRICE_GROUPS, priceRowTitle, priceRowWords, valueChoices } from '../../../src/core/cost/price-row-words';
import { PRICE_WHATS, rowOf, type PriceWhat } from '../../../src/core/cost/price-rows';
import { placesOf, priceCells, printPrices } from '../../../src/core/cost/print-prices';
import { readPriceRows } from '../../../src/core/cost/read-price-rows';
import { readPrices, understandPrices } from '../../../src/core/cost/read-prices';
import { rowsWithProblems } from '../../../src/core/cost/row-problems';
import { changeList, reversed } from '../../../src/core/kept-list';
import { money } from '../../../src/core/money';
import { must } from './costed';

/** Of six decimals at the most, as amounts are. */
const amounts = (most: number) => fc.integer({ min: 0, max: most * 1e6 }).map((parts) => money(parts).div(1e6));
const texts = fc.oneof(
  fc.constantFrom('=2+2', '-Grey, "8"', 'two\nlines', 'a;b\tc', '@work', 'Größe 3'),
  fc.string({ minLength: 1, maxLength: 30 }),
).map((text) => text.replace(/^[\s']+|[\s\0]+$/g, '')).filter((text) => text.trim() === text && text !== ''); // prettier-ignore

type Value = Omit<PriceEntry, 'what' | 'per' | 'name' | 'note'>;

function valueOf(what: PriceWhat): fc.Arbitrary<Value> {
  const { value } = rowOf(what);
  const percent = (most: number) => amounts(most).map((amount) => ({ amount }));
  switch (value) {
    case 'currency':
      return fc.constantFrom(...CURRENCY_CODES).map((code) => ({ currency: currencyOf(code)! }));
    case 'amount':
      return amounts(1e6).map((amount) => ({ amount }));
    case 'percent':
      return what === 'margin' ? percent(99) : percent(100);
    case 'minutes':
      return percent(9000);
    case 'waste':
      return fc.oneof(
        fc.constantFrom({ waste: { rule: 'as cut' as const } }, { waste: { rule: '8 x face' as const } }),
        amounts(100).map((part) => ({ waste: { rule: 'percent' as const, percent: part } })),
      );
    case 'rounding':
      return fc.record({ way: fc.constantFrom('nearest' as const, 'up' as const), step: amounts(9).filter((step) => step.gt(0)) }).map((rounding) => ({ rounding })); // prettier-ignore
    case 'text':
      return texts.map((word) => ({ word }));
    case 'yes or no':
      return fc.boolean().map((yes) => ({ yes }));
    default:
      return fc.constantFrom(...value).map((word) => ({ word }));
  }
}

const someRow: fc.Arbitrary<PriceEntry> = fc.constantFrom(...PRICE_WHATS).chain((what) => {
  const { per, name } = rowOf(what);
  const names = typeof name === 'object' ? fc.constantFrom(...name) : texts;
  return fc.record({
    value: valueOf(what),
    per: per ? fc.constantFrom(...per) : fc.constant(undefined),
    name: name === undefined ? fc.constant(undefined) : name === 'may' ? fc.option(names, { nil: undefined }) : names,
    note: fc.option(texts, { nil: undefined }),
  }).map(({ value, ...cells }) => ({ what, ...value, ...Object.fromEntries(Object.entries(cells).filter(([, cell]) => cell !== undefined)) })); // prettier-ignore
});
const someList = fc.uniqueArray(someRow, { maxLength: 12, selector: priceName });

/** Amounts as decimals in text. */
const plain = (rows: readonly PriceEntry[]): unknown => JSON.parse(JSON.stringify(rows));

describe('a list as text', () => {
  it('reads back to the same rows, whatever stands in them', () => {
    fc.assert(
      fc.property(someList, (rows) => {
        expect(plain(must(readPriceRows(printPrices(rows))))).toEqual(plain(rows));
      }),
      { numRuns: 500 },
    );
  });

  it('of the example is the example, and means the same', () => {
    const text = readFileSync('resources/prices.csv', 'utf8');
    const rows = must(readPriceRows(text));
    const lines = (csv: string) => csv.trim().split(/\r?\n/);
    expect(lines(printPrices(rows))).toEqual(lines(text));
    expect(must(readPrices(printPrices(rows)))).toEqual(must(readPrices(text)));
  });

  it('has amounts with the decimals of its currency, or more', () => {
    const rows = (code: string) => must(readPriceRows(`what,value\ncurrency,${code}\nhour,24\nlayout,5.125\n`));
    const values = (code: string) => printPrices(rows(code)).split('\r\n').slice(2, 4).map((line) => line.split(',')[1]); // prettier-ignore
    expect(values('EUR')).toEqual(['24.00', '5.125']);
    expect(values('JPY')).toEqual(['24', '5.125']);
    expect(values('KWD')).toEqual(['24.000', '5.125']);
  });
});

describe('rows', () => {
  it('that say the same are refused in one list, though it may still lack some', () => {
    expect(readPriceRows('what,value\nhour,24').ok).toBe(true);
    const codes = (...rows: readonly string[]) => readPriceRows(['what,value,per,name', ...rows].join('\n')).problems.map(({ code, at }) => `${code} ${at}`); // prettier-ignore
    expect(codes('hour,24', 'hour,25')).toEqual(['price-twice line 3, column what']);
    expect(codes('markup,50 %', 'margin,25 %')).toEqual(['prices-conflict line 3, column what']);
  });

  it('of markup and of margin take each other’s place, and come back', () => {
    const before = must(readPriceRows('what,value\ncurrency,EUR\nmarkup,100 %\nhour,24'));
    const [margin] = must(readPriceRows('what,value\nmargin,40 %'));
    const change = { keep: [margin!] };
    const after = changeList(before, change, KEPT_PRICES);
    expect(after.map(({ what }) => what)).toEqual(['currency', 'margin', 'hour']);
    expect(changeList(after, reversed(before, change, KEPT_PRICES), KEPT_PRICES)).toEqual(before);
  });

  it('are told what is at odds at the row itself', () => {
    const rows = must(readPriceRows('what,value,per\nboard,30.00,m2\ncut straight,2 min,cut\n'));
    const { problems } = understandPrices(rows);
    const told = rowsWithProblems(rows, problems);
    expect(told.general.map(({ message }) => message)).toEqual([expect.stringMatching(/^No row says the currency/)]);
    expect(told.of(rows[0]!)[0]!.message).toMatch(/^Boards are charged by sheet used, and a price for m2 has no use/);
    expect(told.of(rows[1]!)[0]!.message).toMatch(/^“cut straight” needs a row “hour” beside it/);
  });

  it('typed by hand are held to what a file is held to, cell by cell', () => {
    const read = readPriceCells({ what: 'tax', value: 'eight', name: '' });
    expect(read.entry).toBeUndefined();
    expect([...read.wrong.keys()].sort()).toEqual(['name', 'value']);
    expect(read.wrong.get('value')).toMatch(/^“eight” is not a number from 0 to 100/);
    const [row] = must(readPriceRows('what,value,per,name,note\ncut straight,1.5 min,cut,,by hand'));
    expect(readPriceCells(priceCells(row!, 2)).entry).toEqual(row);
  });

  it('typed by hand are refused where they are at odds with the others, at the cell, as the whole list would be', () => {
    const others = must(readPriceRows('what,value\ncurrency,EUR\nboard charged,by united inches'));
    const fine = readPriceCells({ what: 'rounding', value: 'up to 0.003' }, others);
    expect([fine.entry, fine.wrong.get('value')]).toEqual([undefined, 'EUR has 2 decimals (ISO 4217), and nothing can be rounded to 0.003; the least is 0.01.']); // prettier-ignore
    expect(readPriceCells({ what: 'rounding', value: 'up to 0.01' }, others).entry).toBeDefined();
    const board = readPriceCells({ what: 'board', value: '0.35', per: 'm2' }, others);
    expect([board.entry, board.wrong.get('per')]).toEqual([undefined, 'Boards are charged by united inches, and a price for m2 has no use then; it would be for united in.']); // prettier-ignore
    expect(readPriceCells({ what: 'board', value: '0.35', per: 'united in' }, others).entry).toBeDefined();
    // What the list yet lacks is no fault of the row.
    expect(readPriceCells({ what: 'fit', value: '15 min' }, others).entry).toBeDefined();
  });

  it('all have a group, a meaning and words', () => {
    expect(PRICE_GROUPS.flatMap<string>(({ whats }) => whats).sort()).toEqual([...PRICE_WHATS].sort());
    const [tax, part] = must(readPriceRows('what,value,per,name\ntax,8 %,,Sales tax\npart,0.6,m,points'));
    expect([priceRowTitle(tax!), priceRowWords(tax!, 2)]).toEqual(['Sales tax', '8 %']);
    expect([priceRowTitle(part!), priceRowWords(part!, 2)]).toEqual(['Part: points', '0.60 per m']);
    expect(placesOf([])).toBe(2);
    expect(valueChoices('waste')).toEqual(['shared', 'not shared']);
  });
});
