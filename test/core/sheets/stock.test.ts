/** The stock as a list: printed and read again, its counts up and down as differences, and what using a plan does to it. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { money } from '../../../src/core/money';
import { accountOf, totalOf } from '../../../src/core/sheets/account';
import type { SheetsAsk } from '../../../src/core/sheets/ask';
import { boardStock } from '../../../src/core/sheets/board-stock';
import { toGrid } from '../../../src/core/sheets/grid';
import { keepRule } from '../../../src/core/sheets/keep-rule';
import { KEPT_STOCK } from '../../../src/core/sheets/kept-stock';
import { planBoard, type PlannedBoard } from '../../../src/core/sheets/planned-board';
import { printStock } from '../../../src/core/sheets/print-stock';
import { readStock, STOCK_COLUMNS } from '../../../src/core/sheets/read-stock';
import { USUAL_KEEP } from '../../../src/core/sheets/remnants';
import { countOf, stockName, type StockSheet } from '../../../src/core/sheets/stock-sheet';
import { stepStock, type StockStep } from '../../../src/core/sheets/stock-steps';
import { stockWork } from '../../../src/core/sheets/stock-work';
import { stepsOf, usePlans } from '../../../src/core/sheets/use-plan';
import { useWords } from '../../../src/core/sheets/use-words';
import { MM_PER_INCH, type Showing } from '../../../src/core/units';
import { codesIn, tablesIn } from '../../helpers/markdown';

const showing: Showing = { unit: 'in', inchStep: 16, metricStep: 0.5 };
const row = (kind: StockSheet['kind'], width: number, height: number, more: Partial<StockSheet> = {}): StockSheet => ({ board: 'Warm white', kind, width: width * MM_PER_INCH, height: height * MM_PER_INCH, ...more }); // prettier-ignore

function read(text: string): readonly StockSheet[] {
  const result = readStock(text);
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('\n'));
  return result.value;
}

function stepped(list: readonly StockSheet[], steps: readonly StockStep[]) {
  const result = stepStock(list, steps, 'use', showing);
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('\n'));
  return result.value;
}

/** As text, in which no last bits count. */
const told = (list: readonly StockSheet[]) => printStock(list, 'mm');

const sides = fc.oneof(fc.integer({ min: 64, max: 64 * 60 }).map((n) => (n * MM_PER_INCH) / 64), fc.integer({ min: 300, max: 20_000 }).map((n) => n / 10)); // prettier-ignore
const words = fc.constantFrom('left from the fern cyanotypes', '=2+2', 'a "quote", and a comma', 'two\nlines');
const someRow = fc.record(
  {
    board: fc.constantFrom('Warm white', 'Mount board', '-Grey, "8"'),
    kind: fc.constantFrom('sheet' as const, 'remnant' as const),
    width: sides,
    height: sides,
    count: fc.nat(9),
    price: fc.nat(9000).map((cents) => money(cents).div(100)),
    trim: fc.constantFrom(0, 6.35, 5),
    grain: fc.constantFrom('none' as const, 'width' as const, 'height' as const),
    note: words,
  },
  { requiredKeys: ['board', 'kind', 'width', 'height'] },
);
const someStock = fc.uniqueArray(someRow, { maxLength: 8, selector: stockName });

describe('the list as text', () => {
  it('reads back to the same, in its own units or in any', () => {
    fc.assert(
      fc.property(someStock, fc.constantFrom(undefined, 'in' as const, 'mm' as const, 'cm' as const), (list, unit) => {
        const back = read(printStock(list, unit));
        expect(back.map(stockName)).toEqual(list.map(stockName));
        expect(back.every((one, index) => KEPT_STOCK.isSame(one, list[index]!))).toBe(true);
      }),
    );
  });

  it('says grain, kerf and trim, and one remnant where none was counted', () => {
    const list = [row('sheet', 32, 40, { grain: 'height', kerf: 3.175, trim: 6.35 }), row('remnant', 16, 40)];
    expect(printStock(list)).toBe(
      'board,kind,width,height,count,grain,kerf,trim\r\nWarm white,sheet,"32 in","40 in",,height,"1/8 in","1/4 in"\r\nWarm white,remnant,"16 in","40 in",1,,,\r\n',
    );
  });
});

describe('counts up and down', () => {
  const sheets = row('sheet', 32, 40, { count: 2, price: money(11) });
  const remnant = row('remnant', 16, 40, { count: 1, note: 'from the sea charts' });
  const last = row('remnant', 20, 24, { count: 3 });
  const list = [sheets, remnant, last];

  it('a remnant that is used up goes, a sheet’s row stays, and what is not counted stays so', () => {
    const free = row('sheet', 40, 60);
    const { list: now } = stepped([...list, free], [{ row: sheets, takes: 2, puts: 0 }, { row: remnant, takes: 1, puts: 0 }, { row: free, takes: 4, puts: 0 }]); // prettier-ignore
    expect(now).toEqual([{ ...sheets, count: 0 }, last, free]);
  });

  it('what is put back counts where it is listed either way round, but not across the grain', () => {
    const other = row('remnant', 40, 16);
    expect(stepped(list, [{ row: other, takes: 0, puts: 2 }]).list[1]).toEqual({ ...remnant, count: 3 });
    const grained = row('remnant', 16, 40, { grain: 'height' });
    const [, now, ...more] = stepped([sheets, { ...grained, count: 1 }], [{ row: { ...other, grain: 'height' }, takes: 0, puts: 1 }]).list; // prettier-ignore
    expect([now, more]).toEqual([{ ...grained, count: 1 }, [{ ...other, grain: 'height', count: 1 }]]);
    expect(stepped([{ ...grained, count: 1 }], [{ row: { ...other, grain: 'width' }, takes: 0, puts: 1 }]).list).toEqual([{ ...grained, count: 2 }]); // prettier-ignore
  });

  it('a row that is used up and put back again stays where it is; what is put first is not there to be taken', () => {
    const again = [{ row: row('remnant', 40, 16, { note: 'new' }), takes: 0, puts: 1 }, { row: remnant, takes: 1, puts: 0 }]; // prettier-ignore
    expect(stepped(list, again).list).toEqual(list);
    expect(stepStock([sheets, last], again, 'use', showing)).toMatchObject({ ok: false, problems: [{ value: '0', limit: '1' }] }); // prettier-ignore
  });

  it('too few are told with both numbers, and nothing is changed', () => {
    const result = stepStock(
      list,
      [
        { row: last, takes: 1, puts: 0 },
        { row: sheets, takes: 3, puts: 0 },
      ],
      'use',
      showing,
    );
    expect(result).toMatchObject({ ok: false, problems: [{ code: 'stock-used-up', value: '2', limit: '3', message: expect.stringContaining('Of the sheet of “Warm white”, 32 x 40 in, 3 are wanted, and the stock has 2.') as string }] }); // prettier-ignore
    expect(stepStock([], [{ row: last, takes: 1, puts: 0 }], 'use', showing)).toMatchObject({ ok: false, problems: [{ value: '0', limit: '1' }] }); // prettier-ignore
  });

  it('a row that comes back has the blade that its board has now', () => {
    const sawn = { ...remnant, kerf: 3 };
    const used = stepped([{ ...sheets, kerf: 3 }, sawn], [{ row: sawn, takes: 1, puts: 0 }]);
    const now = used.list.map((one) => ({ ...one, kerf: 2 }));
    const { list: back } = stepped(now, used.back);
    expect(readStock(printStock(back)).ok).toBe(true);
    expect(back).toEqual([
      { ...sheets, kerf: 2 },
      { ...sawn, kerf: 2 },
    ]);
  });

  it('taken back, the list is as it was, also where the same row was gone or new', () => {
    const change = fc.record({ index: fc.nat(11), by: fc.integer({ min: -3, max: 3 }).filter((by) => by !== 0) });
    fc.assert(
      fc.property(someStock, fc.array(someRow, { maxLength: 4 }), fc.array(change, { maxLength: 8 }), (rows, others, changes) => {
        const all = [...rows, ...others];
        fc.pre(all.length > 0);
        const steps = changes.map(({ index, by }): StockStep => ({ row: all[index % all.length]!, takes: Math.max(0, -by), puts: Math.max(0, by) }));
        const done = stepStock(rows, steps, 'use', showing);
        if (!done.ok) return;
        for (const one of done.value.list) expect(countOf(one) ?? 0).toBeGreaterThanOrEqual(0);
        expect(new Set(done.value.list.map(stockName)).size).toBe(done.value.list.length);
        const back = stepped(done.value.list, done.value.back);
        expect(told(back.list)).toBe(told(rows));
        expect(told(stepped(back.list, back.back).list)).toBe(told(done.value.list));
      }),
      { numRuns: 400 },
    ); // prettier-ignore
  });

  it('taken back, what others did meanwhile stays, in other rows and in the same', () => {
    const work = stockWork([{ row: sheets, takes: 1, puts: 0 }, { row: remnant, takes: 1, puts: 0 }, { row: row('remnant', 12, 40), takes: 0, puts: 1 }], showing); // prettier-ignore
    const used = work(list);
    if (!used.ok) throw new Error('refused');
    const others = used.value.list.map((one) => (stockName(one) === stockName(sheets) ? { ...one, count: 7, price: money(12) } : one)); // prettier-ignore
    const back = used.value.back(others.filter((one) => stockName(one) !== stockName(last)));
    expect(back).toMatchObject({ ok: true, value: { list: [{ ...sheets, count: 8, price: money(12) }, remnant] } });
  });

  it('a remnant that was put back and has been used since keeps a use from being taken back', () => {
    const work = stockWork(
      [
        { row: sheets, takes: 1, puts: 0 },
        { row: row('remnant', 12, 40), takes: 0, puts: 1 },
      ],
      showing,
    );
    const used = work(list);
    if (!used.ok) throw new Error('refused');
    const back = used.value.back(used.value.list.filter(({ width }) => width !== 12 * MM_PER_INCH));
    expect(back).toMatchObject({ ok: false, problems: [{ code: 'put-back-used', value: '0', limit: '1', message: expect.stringContaining('has been used since. Nothing was taken back') as string }] }); // prettier-ignore
  });
});

const piece = (width: number, height: number, count: number, title = '', mayTurn = true) => ({ id: `${width} x ${height}`, width: width * MM_PER_INCH, height: height * MM_PER_INCH, count, mayTurn, ...(title === '' ? {} : { from: { job: 0, title, kind: 'mat' as const, name: 'Mat layer 1', windows: [] } }) }); // prettier-ignore

function planned(
  pieces: SheetsAsk['pieces'],
  list: readonly StockSheet[],
  more: Partial<SheetsAsk> = {},
): PlannedBoard | undefined {
  // prettier-ignore
  const known = boardStock(list, [], 'in');
  const ask: SheetsAsk = { pieces: known.hasGrain ? pieces.map((one) => ({ ...one, mayTurn: false })) : pieces, stock: known.stock, kerf: known.kerf ?? 0, trim: 0, aim: 'cost', seed: 1, ...more }; // prettier-ignore
  return planBoard({ board: 'Warm white', isPriced: known.isPriced, ask }, { goOn: (rounds) => rounds < 100 });
}

describe('using a plan', () => {
  it('takes sheets and remnants, and puts back what is worth keeping with where it is from', () => {
    const list = [row('sheet', 32, 40, { count: 3, kerf: 0 }), row('remnant', 16, 20, { count: 1 })];
    const plan = planned([piece(32, 24, 1, 'Fern cyanotypes'), piece(16, 20, 1, 'Sea chart')], list);
    const uses = usePlans([plan!], list);
    expect(useWords(uses, showing)).toEqual(['Warm white: takes 1 sheet 32 x 40 in and 1 remnant 16 x 20 in; puts back 1 remnant 16 x 32 in']); // prettier-ignore
    const { list: now } = stepped(list, stepsOf(uses));
    expect(now).toEqual([{ ...list[0], count: 2 }, row('remnant', 16, 32, { count: 1, kerf: 0, note: 'left from Fern cyanotypes' })]); // prettier-ignore
  });

  it('tells what is in no list, and puts back what is left of it', () => {
    const uses = usePlans([planned([piece(32, 36, 2)], [])!], []);
    expect(useWords(uses, showing)).toEqual(['Warm white: takes nothing; puts back 2 strips 4 x 32 in; not in the stock, to be bought or taken off the shelf: 2 sheets 32 x 40 in']); // prettier-ignore
    expect(stepped([], stepsOf(uses)).list).toEqual([row('remnant', 4, 32, { count: 2 })]);
  });

  it('keeps by the user’s rule', () => {
    const rule = { least: 25.4, board: { width: 254, height: 254 }, strip: 40 * MM_PER_INCH };
    const uses = usePlans([planned([piece(32, 36, 2)], [])!], [], rule);
    expect(uses[0]?.puts).toEqual([]);
  });

  it.each([
    // A sheet of 40 x 32 with its grain along the width stands 32 x 40: what is left above 32 x 24 is 32 across and 16 up.
    ['width' as const, row('remnant', 16, 32, { grain: 'width', count: 1 })],
    ['height' as const, row('remnant', 40, 8, { grain: 'height', count: 1 })],
  ])('keeps the grain along the %s', (grain, left) => {
    const list = [row('sheet', 40, 32, { grain, count: 1 })];
    const wanted = grain === 'width' ? piece(32, 24, 1) : piece(40, 24, 1);
    const { list: now } = stepped(list, stepsOf(usePlans([planned([wanted], list)!], list)));
    expect(now).toEqual([{ ...list[0], count: 0 }, left]);
    // The remnant gives the very piece that was left, and not one across the grain.
    const [wide, high] = grain === 'width' ? [32, 16] : [40, 8];
    expect(planned([piece(wide, high, 1)], now)?.plan.sheets[0]?.stock.kind).toBe('remnant');
    expect(planned([piece(high, wide, 1)], now)).toBeUndefined();
  });

  it('a board that was said to lie upright leaves remnants with their grain', () => {
    const list = [row('sheet', 40, 32)];
    const uses = usePlans([planned([piece(40, 16, 1, '', false)], list)!], list);
    expect(uses[0]?.puts[0]?.row).toEqual(row('remnant', 40, 16, { grain: 'height' }));
  });

  it('balances to the last bit, never goes below nothing, and is undone exactly', () => {
    const side = fc.integer({ min: 5, max: 30 });
    const pieces = fc.array(fc.tuple(side, side, fc.integer({ min: 1, max: 2 })), { minLength: 1, maxLength: 4 });
    const stock = fc.uniqueArray(
      fc.tuple(fc.constantFrom('sheet' as const, 'remnant' as const), fc.integer({ min: 30, max: 48 }), fc.integer({ min: 30, max: 48 }), fc.integer({ min: 1, max: 6 })).map(([kind, width, height, count]) => row(kind, width, height, { count })),
      { minLength: 1, maxLength: 4, selector: stockName },
    ); // prettier-ignore
    const grains = fc.constantFrom(undefined, 'width' as const, 'height' as const);
    fc.assert(
      fc.property(pieces, stock, grains, fc.constantFrom(0, 3), fc.constantFrom(0, 6), (wanted, rows, grain, kerf, trim) => {
        const list = rows.map((one) => ({ ...one, ...(grain ? { grain } : {}), kerf, ...(one.kind === 'sheet' ? { trim } : {}) }));
        const plan = planned(wanted.map(([width, height, count]) => piece(width, height, count)), list);
        if (!plan) return;
        const uses = usePlans([plan], list);
        const done = stepped(list, stepsOf(uses));
        const area = (amounts: readonly { readonly row: StockSheet; readonly count: number }[]) =>
          amounts.reduce((sum, one) => sum + BigInt(one.count) * BigInt(toGrid(one.row.width)) * BigInt(toGrid(one.row.height)), 0n);
        const account = totalOf(plan.plan.sheets.map((sheet) => accountOf(sheet)));
        const cut = wanted.reduce((sum, [width, height, count]) => sum + BigInt(count) * BigInt(toGrid(width * MM_PER_INCH)) * BigInt(toGrid(height * MM_PER_INCH)), 0n);
        // Of a list of remnants alone a usual sheet is bought where they don't do.
        const [use] = uses;
        const bought = area(use!.buys);
        expect(cut + area(use!.puts) + account.waste + account.cuts).toBe(area(use!.takes) + bought);
        // What the list lost by area is what is cut, waste and sawdust.
        const whole = (rowsNow: readonly StockSheet[]) => area(rowsNow.map((one) => ({ row: one, count: countOf(one) ?? 0 })));
        expect(whole(list) + bought - whole(done.list)).toBe(cut + account.waste + account.cuts);
        for (const one of done.list) expect(one.count).toBeGreaterThanOrEqual(0);
        expect(readStock(printStock(done.list)).problems).toEqual([]);
        expect(told(stepped(done.list, done.back).list)).toBe(told(list));
      }),
      { numRuns: 40 },
    ); // prettier-ignore
  });
});

describe('the user’s rule of what is kept', () => {
  it('is the usual one where nothing is said', () => {
    expect(keepRule({}, showing)).toMatchObject({ ok: true, value: USUAL_KEEP });
    expect(keepRule({ strip: 500 }, showing)).toMatchObject({ ok: true, value: { ...USUAL_KEEP, strip: 500 } });
  });

  it('may not throw away what it keeps', () => {
    expect(keepRule({ least: 300 }, { ...showing, unit: 'mm' })).toMatchObject({
      ok: false,
      problems: [{ code: 'keep-rule-contradicts', value: '300 mm', limit: '254 mm' }],
    });
  });
});

test('the reference names every column, each with all its names', () => {
  const page = readFileSync('resources/stock.md', 'utf8');
  const table = tablesIn(page).find(({ heads }) => heads[0] === 'column');
  expect(table?.rows.map(([column]) => codesIn(column!)[0]).sort()).toEqual(STOCK_COLUMNS.map(({ names: [name] }) => name).sort()); // prettier-ignore
  for (const { names } of STOCK_COLUMNS) for (const name of names) expect(page).toContain(`\`${name}\``);
});
