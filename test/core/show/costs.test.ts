/** What a framed picture costs: by the shelf's prices, exactly; or by its frame's size, which is said to be no money. */
import { describe, expect, it } from 'vitest';
import { inParts, money, ofParts } from '../../../src/core/money';
import { ofKind, type Shelf } from '../../../src/core/shelf/shelf';
import { costsOf, costText, type Costs } from '../../../src/core/show/costs';
import { pricesOf } from '../../../src/core/show/prices';
import type { Contents } from '../open';
import { pattern, pictures, plan, shelf, valueOf } from './shows';

const HEAD = 'kind,name,width,height,comes with,price,per,material,uv filter\n';
const mat: Contents = {
  mat: { layers: [{ board: 'White' }, { board: 'Blue', reveal: '1/4 in' }] },
  package: { mountBoard: { board: 'Mount' } },
};

function priceOf(rows: string, contents: Contents = mat): string {
  const from = shelf(HEAD + rows);
  const price = pricesOf(from, pattern(contents).job).of(ofKind(from, 'frame')[0]!);
  return price.ok ? price.amount.toFixed() : price.why;
}

describe('the price of a picture in a frame', () => {
  // 8 x 10 from 32 x 40: sixteen one way, fifteen the other; 16 x 20: four (practitioners' cases, common practice).
  it.each([
    ['8 in,10 in', '24', '1.5'],
    ['10 in,8 in', '24', '1.5'],
    ['16 in,20 in', '24', '6'],
    ['32 in,40 in', '24', '24'],
    ['11 in,14 in', '24', '4'],
  ])('a board for %s takes its part of a sheet that costs %s', (size, sheet, part) => {
    const rows = `frame,A,${size},,10,,,\nboard,white,32 in,40 in,,${sheet},sheet,,`;
    expect(
      money(priceOf(rows, { mat: { layers: [{ board: 'White' }] } }))
        .minus(10)
        .toFixed(),
    ).toBe(part);
  });

  it('each layer and the mount board are counted by their names, glazing by its material', () => {
    const rows =
      'frame,A,500 mm,400 mm,,10,,,\nboard,White,,,,20,m2,,\nboard,Blue,,,,30,m2,,\nboard,Mount,,,,5,m2,,\n' +
      'glazing,Clear,,,,40,m2,glass,no\nglazing,Shop,,,,45,m2,glass,no\nglazing,Filter,,,,90,m2,glass,yes\nglazing,Light,,,,1,m2,acrylic,no\n';
    // 0.2 m² at 20, 30, 5 and 40 for each.
    expect(priceOf(rows)).toBe('29');
    const filtered: Contents = { ...mat, package: { ...mat.package, glazing: { material: 'glass', uvFilter: true } } };
    expect(priceOf(rows, filtered)).toBe('39');
    expect(priceOf(rows, { ...mat, package: { ...mat.package, glazing: { material: 'none' } } })).toBe('21');
  });

  it('what comes with the frame costs nothing more', () => {
    const rows = 'board,Mount,,,,5,m2,,\nglazing,Clear,,,,40,m2,glass,no\n';
    expect(priceOf(`frame,A,500 mm,400 mm,glazing; mount board,10,,,\n${rows}`)).toBe('10');
    expect(priceOf(`frame,A,500 mm,400 mm,glazing,10,,,\n${rows}`)).toBe('11');
  });

  it('what the shelf says no price of is named, and never taken for nothing', () => {
    const from = shelf(
      `${HEAD}frame,A,500 mm,400 mm,,10,,,\nboard,White,,,,20,m2,,\nboard,Blue,,,,,,,\nboard,Mount,,,,9,sheet,,\n`,
    );
    const { counted, notCounted } = pricesOf(from, pattern(mat).job);
    expect(counted).toEqual(['board “White”']);
    expect(notCounted).toEqual(['board “Blue”', 'mount board “Mount”', 'glass']);
  });

  it('a frame without a price, or larger than any sheet, has none', () => {
    expect(priceOf('frame,A,8 in,10 in,,,,,\n')).toBe('it has no price');
    const rows = 'board,White,32 in,40 in,,24,sheet,,\nboard,Blue,,,,,,,\n';
    expect(priceOf(`frame,A,41 in,32 in,,10,,,\n${rows}`)).toBe('no sheet of board “White” is as large');
    expect(priceOf(`frame,A,41 in,32 in,,10,,,\nboard,White,32 in,40 in,,24,m2,,\n`)).toContain('no sheet');
  });
});

describe('whole parts', () => {
  const costs = (from: Shelf, count: number, by?: Costs['by']) => valueOf(costsOf(from, pattern(mat).job, count, by));

  it('of money add up exactly: a third of a sheet to a millionth, half up', () => {
    const from = shelf(`${HEAD}frame,A,10 in,20 in,,0.10,,,\nboard,White,10 in,60 in,,0.2,sheet,,\n`);
    const { partsOf, costOf, by } = costs(from, 500);
    const parts = partsOf(ofKind(from, 'frame')[0]!);
    expect([by, parts]).toEqual(['money', 166667]);
    const three = costOf(3 * Number(parts));
    expect(three).toEqual({ by: 'money', amount: money('0.500001') });
    expect(costText(three, { unit: 'in', inchStep: 16, metricStep: 0.5 })).toBe('0.50');
    // 0.1 + 0.2 and its like have no last bits here.
    expect(ofParts(inParts(money('0.1'), 6) + inParts(money('0.2'), 6), 6).toFixed()).toBe('0.3');
  });

  it('are fewer where amounts are large, and refused where cents would be lost', () => {
    const from = (price: string) => shelf(`${HEAD}frame,A,10 in,20 in,,${price},,,\n`);
    expect(costs(from('150000.25'), 500).partsOf(ofKind(from('150000.25'), 'frame')[0]!)).toBe(15000025000);
    expect(costsOf(from('900000000.5'), pattern(mat).job, 500)).toMatchObject({
      ok: false,
      problems: [{ code: 'price-too-large' }],
    });
    expect(costs(from('900000000.5'), 2).partsOf(ofKind(from('900000000.5'), 'frame')[0]!)).toBe(900000000500000);
  });

  it('of size where no frame has a price, or on wish; the two are never mixed', () => {
    const bare = shelf(`${HEAD}frame,A,11 in,14 in,,,,,\n`);
    expect(costs(bare, 9).by).toBe('size');
    expect(costs(bare, 9).costOf(Number(costs(bare, 9).partsOf(ofKind(bare, 'frame')[0]!)))).toEqual({
      by: 'size',
      length: 635,
    });
    const some = shelf(`${HEAD}frame,A,11 in,14 in,,9,,,\nframe,B,11 in,14 in,,,,,\n`);
    const show = pictures('Fern,8 in,10 in', 'Moss,8 in,10 in');
    const byMoney = plan(show, pattern({}), some);
    expect([byMoney.by, byMoney.leftOut.map(({ frame }) => frame.name)]).toEqual(['money', ['B']]);
    expect(byMoney.problems.map(({ code }) => code)).toContain('frame-left-out');
    const bySize = plan(show, pattern({}), some, { by: 'size' });
    expect([bySize.by, bySize.leftOut, bySize.chosen.cost]).toEqual(['size', [], { by: 'size', length: 1270 }]);
    expect(bySize.problems.find(({ code }) => code === 'cost-by-size')?.message).toContain('no money');
  });
});
