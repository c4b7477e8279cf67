/** Reading a price list: what it holds, and every wrong row told with its line and column. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CURRENCY_CODES, currencyOf } from '../../../src/core/cost/currencies';
import { PRICE_COLUMNS, PRICE_ROWS } from '../../../src/core/cost/price-rows';
import { readPrices } from '../../../src/core/cost/read-prices';
import { codesIn, tablesIn } from '../../helpers/markdown';
import { must, pricesOf } from './costed';

/** Problems as `code at: message`. */
function wrong(...rows: readonly string[]): string[] {
  const read = readPrices(`what,value,per,name,note\n${rows.join('\n')}`);
  expect(read.ok).toBe(false);
  return read.problems.map(({ code, at, message }) => `${code} ${at}: ${message}`);
}

describe('a list', () => {
  it('of a currency alone has the rules that hold where nothing is said', () => {
    expect(pricesOf('currency,eur')).toMatchObject({
      currency: { code: 'EUR', places: 2 },
      board: { charge: 'by sheet used', sharesWaste: true },
      mitreWaste: { rule: 'as cut' },
      openings: { counted: 'by window' },
      taxes: [],
      includesTax: false,
    });
  });

  it('keeps every digit: 0.1 and 0.2 are three tenths', () => {
    const { taxes, hour } = pricesOf('currency,EUR', 'hour,123456789012.123456', 'tax,0.1,,One', 'tax,"0,2 %",,Other');
    expect(hour!.toString()).toBe('123456789012.123456');
    expect(taxes[0]!.percent.plus(taxes[1]!.percent).toString()).toBe('0.3');
  });

  it('may have semicolons, capitals, and its columns in any order', () => {
    const list = must(
      readPrices('\uFEFFNote;Per;Amount;What;Name\n;;CHF;Currency;\nx;Opening;"1,5 min";Cut Straight;\n;;24;hour;\n'),
    );
    expect(list.currency.code).toBe('CHF');
    expect(list.steps.get('cut straight')).toMatchObject({ per: 'opening' });
    expect(list.steps.get('cut straight')!.minutes.toString()).toBe('1.5');
  });

  it.each([
    ['nearest 0.05', 'nearest', '0.05'],
    ['to the nearest 1', 'nearest', '1'],
    ['Up to 0.5', 'up', '0.5'],
  ])('rounding %s', (written, way, step) => {
    const { rounding } = pricesOf('currency,EUR', `rounding,${written}`);
    expect([rounding!.way, rounding!.step.toString()]).toEqual([way, step]);
  });

  it('may say what holds anyway: that no tax is included', () => {
    expect(pricesOf('currency,EUR', 'tax included,no').includesTax).toBe(false);
  });

  it('has the shop’s name and address as they are written', () => {
    const { shop } = pricesOf('currency,EUR', 'shop,Village library', 'shop address,"Mill Lane 4, 12 Fernham"');
    expect(shop).toEqual({ name: 'Village library', address: 'Mill Lane 4, 12 Fernham' });
    expect(pricesOf('currency,EUR').shop).toEqual({});
  });

  it('the example is one', () => {
    expect(must(readPrices(readFileSync('resources/prices.csv', 'utf8'))).taxes).toHaveLength(1);
  });
});

describe('what is refused, by line and column', () => {
  it.each([
    [
      ['currency,EUO'],
      /^currency-unknown line 2, column value: .*“EUO” is no code of ISO 4217, .*perhaps “EUR” is meant/,
    ],
    [['currency,€'], /^currency-unknown line 2, column value/],
    [['hour,3'], /^price-row-missing : No row says the currency/],
    [
      ['currency,EUR', 'hours,3'],
      /^word-unknown line 3, column what: .*“hours” is not one of .*perhaps “hour” is meant/,
    ],
    [['currency,EUR', ',3'], /^cell-empty line 3, column what/],
    [['currency,EUR', 'hour,'], /^cell-empty line 3, column value: .*A row “hour” needs it/],
    [['currency,EUR', 'hour,€ 24'], /^amount-unreadable line 3, column value: .*write a plain number like 12\.50/],
    [
      ['currency,EUR', 'hour,"1,000.00"'],
      /^amount-unreadable line 3, column value: .*mark between thousands; write 1000\.00\.$/,
    ],
    [['currency,EUR', 'hour,"1,000"'], /write 1000, or 1\.000 where it parts a fraction/],
    [['currency,EUR', 'hour,"12.345.678,90"'], /write 12345678\.90\.$/],
    [['currency,EUR', 'hour,-3'], /^amount-unreadable line 3, column value/],
    [
      ['currency,EUR', 'board charged,by sheets used'],
      /^word-unknown line 3, column value: .*perhaps “by sheet used” is meant/,
    ],
    [
      ['currency,EUR', 'mitre waste,9 x face'],
      /^number-unreadable line 3, column value: .*not one of as cut, 8 x face, or a percent from 0 to 1000/,
    ],
    [['currency,EUR', 'mitre waste,1001 %'], /^number-unreadable line 3, column value: .*not one of as cut/],
    [
      ['currency,EUR', `part,2,frame,"hinges\u0007"`],
      /^sign-unprintable line 3, column name: .*U\+0007\) behind “hinges”/,
    ],
    [
      ['currency,EUR', `tax,2,,${'x'.repeat(201)}`],
      /^text-too-long line 3, column name: .*has 201 letters; a name has 200/,
    ],
    [
      ['currency,EUR', `hour,2,,,${'x'.repeat(2001)}`],
      /^text-too-long line 3, column note: .*it has 2001 letters; a cell has 2000/,
    ],
    [
      ['currency,EUR', 'mitre waste,none'],
      /^word-unknown line 3, column value: .*not one of as cut, 8 x face, or a percent/,
    ],
    [['currency,EUR', 'overhead,ten %'], /^number-unreadable line 3, column value: .*such as 15 %/],
    [['currency,EUR', 'margin,100 %'], /^number-unreadable line 3, column value: .*from 0 to less than 100/],
    [['currency,EUR', 'tax,101 %,,Sales tax'], /^number-unreadable line 3, column value: .*from 0 to 100/],
    [['currency,EUR', 'tax,8 %'], /^cell-empty line 3, column name: .*A row “tax” needs it/],
    [['currency,EUR', 'hour,24', 'fit,an hour'], /^number-unreadable line 4, column value: .*such as 15 min/],
    [['currency,EUR', 'hour,24', 'cut straight,2'], /^cell-empty line 4, column per: .*\(opening, cut\)/],
    [['currency,EUR', 'hour,24', 'cut straight,2,cuts'], /^word-unknown line 4, column per: .*perhaps “cut” is meant/],
    [['currency,EUR', 'part,2,frame,pins'], /^word-unknown line 3, column name/],
    [['currency,EUR', 'rounding,0.05'], /^rounding-unfit line 3, column value: .*write nearest 0\.05, or up to 1/],
    [['currency,EUR', 'rounding,up to 0'], /^rounding-unfit line 3, column value/],
    [
      ['currency,JPY', 'rounding,up to 0.50'],
      /^rounding-unfit line 3, column value: .*JPY has no decimals \(ISO 4217\)/,
    ],
    [['currency,EUR', 'rounding,nearest 0.005'], /^rounding-unfit line 3, column value: .*EUR has 2 decimals/],
    [
      ['currency,EUR', 'shop address,Mill Lane 4,12 Fernham'],
      /^price-cell-unused line 3, column per: .*a text with a comma is quoted: "Mill Lane 4, 12 Fernham"/,
    ],
    [
      ['currency,EUR', `shop,${'a'.repeat(201)}`],
      /^text-too-long line 3, column value: .*201 letters.*200 at the most/,
    ],
    [['currency,EUR', 'tax included,perhaps'], /^word-unknown line 3, column value/],
    [['currency,EUR', 'tax included,yes'], /^price-row-missing line 3, column what: .*needs a row “tax”/],
    [['currency,EUR', 'hang,5'], /^price-row-missing line 3, column what: .*“hang” needs a row “hour” beside it/],
    [['currency,EUR', 'further opening,5'], /^price-row-missing line 3, column what/],
    [
      ['currency,EUR', 'board charged,by united inches'],
      /^price-row-missing line 3, column what: .*board,0\.35,united in/,
    ],
    [['currency,EUR', 'hour,24,frame'], /^price-cell-unused line 3, column per: .*leave out “frame”/],
    [['currency,EUR', 'hour,24,,Ann'], /^price-cell-unused line 3, column name/],
    [['currency,EUR', 'hour,24', 'note,,', 'hour,25'], /^word-unknown line 4, column what/],
    [['currency,EUR', 'hour,24', 'hour,25'], /^price-twice line 4, column what: .*“hour” stands on line 3 too/],
    [['currency,EUR', 'tax,1,,Town', 'tax,2,,town'], /^price-twice line 4, column what: .*“tax” of “town”/],
    [
      ['currency,EUR', 'markup,100 %', 'margin,50 %'],
      /^prices-conflict line 4, column what: .*“margin” and “markup” \(line 3\)/,
    ],
    [['currency,EUR', 'board,3,m2'], /^prices-conflict line 3, column per: .*a sheet’s price stands on the shelf/],
    [
      ['currency,EUR', 'board charged,by area', 'board,3,united in'],
      /^prices-conflict line 4, column per: .*it would be for m2 or sq ft/,
    ],
  ] as const)('%j', (rows, expected) => {
    expect(wrong(...rows)[0]).toMatch(expected);
  });

  it('all of them at once', () => {
    expect(wrong('currency,EUR', 'hour,x', 'overhead,x', 'tax,x,,y')).toHaveLength(3);
  });

  it('tables without the columns, or with one that is not known', () => {
    expect(readPrices('what,per\nhour,3').problems[0]!.code).toBe('column-missing');
    const read = readPrices('what,value,persons\ncurrency,EUR,2');
    expect([read.ok, read.problems[0]!.code]).toEqual([true, 'column-unknown']);
  });
});

describe('currencies', () => {
  it('have the decimals of ISO 4217 (from memory)', () => {
    const places = (code: string) => currencyOf(code)?.places;
    expect(['EUR', 'USD', 'JPY', 'KRW', 'VND', 'BHD', 'KWD', 'TND', 'CLF', 'EURO'].map(places)).toEqual([2, 2, 0, 0, 0, 3, 3, 3, 4, undefined]); // prettier-ignore
  });

  it('stand once each, in three capitals', () => {
    expect(new Set(CURRENCY_CODES).size).toBe(CURRENCY_CODES.length);
    expect(CURRENCY_CODES.filter((code) => !/^[A-Z]{3}$/.test(code))).toEqual([]);
  });

  it('agree with another table wherever that gives decimals at all', () => {
    // ICU follows what is paid in practice, and so knows none of some that have two on paper; from the rest it can’t differ.
    const known = CURRENCY_CODES.filter((code) => Intl.supportedValuesOf('currency').includes(code));
    expect(known.length).toBeGreaterThan(140);
    const digits = (currency: string) => new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits; // prettier-ignore
    const other = known.filter((code) => digits(code) !== currencyOf(code)!.places);
    expect(other.filter((code) => digits(code) !== 0)).toEqual([]);
  });
});

describe('the reference', () => {
  const tables = tablesIn(readFileSync('resources/prices.md', 'utf8'));

  it('has every column and every row, and no other', () => {
    const columns = tables.find(({ heads }) => heads[0] === 'column')!.rows;
    expect(columns.map(([cell]) => codesIn(cell!)[0])).toEqual(PRICE_COLUMNS.map(({ key }) => key));
    const rows = tables.find(({ heads }) => heads[0] === 'what')!.rows;
    expect(rows.map(([cell]) => codesIn(cell!)[0])).toEqual(Object.keys(PRICE_ROWS));
  });

  it('has the words that values, bases and names may be', () => {
    const rows = tables.find(({ heads }) => heads[0] === 'what')!.rows;
    Object.entries(PRICE_ROWS).forEach(([what, row], index) => {
      const [, , value, per] = rows[index]!.map(codesIn);
      if (typeof row.value === 'object') expect([what, value]).toEqual([what, [...row.value]]);
      expect([what, per]).toEqual([what, 'per' in row ? [...row.per] : []]);
    });
    const text = readFileSync('resources/prices.md', 'utf8').replace(/\s+/g, ' ');
    for (const part of PRICE_ROWS.part.name) expect(text).toContain(`\`${part}\``);
  });
});
