/** Costs of one job, of variants and by a plan of sheets: the shares of a plan add up, and names tell variants apart. */
import { describe, expect, it } from 'vitest';
import { boardsFrom, plainBoards } from '../../../src/core/cost/boards-used';
import { lackingOf } from '../../../src/core/cost/line';
import { makeCosts } from '../../../src/core/cost/make-costs';
import { boardsOf } from '../../../src/core/cost/planned-boards';
import { amountText } from '../../../src/core/cost/price-text';
import { boardAsks } from '../../../src/core/sheets/board-asks';
import { planBoard } from '../../../src/core/sheets/planned-board';
import type { StockSheet } from '../../../src/core/sheets/stock-sheet';
import { money } from '../../../src/core/money';
import { planned } from '../open';
import { must, PLAIN, PLAIN_PRICES, PLAIN_SHELF, pricesOf, shelfOf } from './costed';

const shelf = shelfOf(...PLAIN_SHELF);
const plain = planned(PLAIN);
/** Two from a sheet of 16 x 40 in. */
const half = planned({ ...PLAIN, title: 'Half as large', pictures: [{ size: '5 x 7 in' }], frame: { ...PLAIN.frame, size: '10 x 16 in' } }); // prettier-ignore

function plansOf(jobs: readonly (typeof plain & { readonly copies?: number })[], stock: readonly StockSheet[] = []) {
  const choice = { stock, shelf, kerf: 0, trim: 0, upright: new Set<string>(), fallouts: false, aim: 'cost', seed: 1 } as const; // prettier-ignore
  return boardAsks(jobs, choice).asks.map((ask) => planBoard(ask, { goOn: (rounds) => rounds < 500 })!);
}

/** Codes of what is told of costs that could be reckoned. */
function toldOf(made: ReturnType<typeof makeCosts>): string[] {
  must(made);
  return made.problems.map(({ code }) => code);
}

function matLine(rows: readonly string[], boards: ReturnType<typeof boardsOf>) {
  const prices = pricesOf(...rows);
  const made = must(makeCosts({ how: 'by itself', jobs: [plain], shelf, prices, boards }));
  return made.costed[0]!.sheet.lines.find(({ what }) => what === 'Mat layer 1')!;
}

describe('boards by a plan of sheets', () => {
  it('cost one of four copies a quarter of the sheet, and one alone all of it where waste is shared', () => {
    const four = boardsOf(plansOf([{ ...plain, copies: 4 }]), plain);
    // A sheet of 32 x 40 in at 11.00 gives four of 16 x 20 in: 2.75 each.
    expect(matLine(PLAIN_PRICES, four)).toMatchObject({ basis: expect.stringContaining('25 %') as string });
    expect(amountText(matLine(PLAIN_PRICES, four).amount!, { code: 'EUR', places: 2 })).toBe('2.75');
    const alone = boardsOf(plansOf([plain]), plain);
    expect(matLine(PLAIN_PRICES, alone).amount!.toFixed(2)).toBe('11.00');
    expect(matLine([...PLAIN_PRICES, 'waste,not shared'], alone).amount!.toFixed(2)).toBe('2.75');
  });

  it('are shared with another job by area', () => {
    const boards = boardsOf(plansOf([plain, half]), plain);
    // 320 of 320 + 160 sq in: two thirds of 11.00.
    expect(matLine(PLAIN_PRICES, boards).amount!.toFixed(2)).toBe('7.33');
  });

  it('add up to what the sheet costs, the same by the plan of the jobs and by a plan of sheets', () => {
    const prices = pricesOf(...PLAIN_PRICES);
    const together = must(makeCosts({ how: 'by itself', jobs: [plain, plain, plain], shelf, prices }));
    const lines = together.costed.map(({ sheet }) => sheet.lines.find(({ what }) => what === 'Mat layer 1')!);
    expect(lines.map(({ amount }) => amount!.toFixed(2))).toEqual(['3.67', '3.67', '3.66']);
    expect(lines[2]!.basis).toContain('waste shared; rounded down, so that all shares make the whole');
    for (const jobs of [[{ ...plain, copies: 3 }], [plain, { ...plain, copies: 2 }]]) {
      const boards = boardsOf(plansOf(jobs), plain);
      expect(matLine(PLAIN_PRICES, boards)).toEqual(lines[0]);
    }
  });

  it('cost nothing where they come from a remnant', () => {
    const remnant: StockSheet = { board: 'Soft white', kind: 'remnant', width: 16 * 25.4, height: 20 * 25.4, count: 1 };
    const sheet: StockSheet = { board: 'Soft white', kind: 'sheet', width: 32 * 25.4, height: 40 * 25.4, price: money(11) }; // prettier-ignore
    const boards = boardsOf(plansOf([plain], [remnant, sheet]), plain);
    expect(matLine(PLAIN_PRICES, boards)).toMatchObject({ basis: expect.stringMatching(/^1 remnant of “Soft white”, 16 x 20 in, that is paid for already: 100 %/) as string }); // prettier-ignore
    expect(matLine(PLAIN_PRICES, boards).amount!.toFixed(2)).toBe('0.00');
    expect(boardsFrom(plainBoards(boards))).toEqual(boards);
  });

  it('are the same once they were sent as plain data', () => {
    const boards = boardsOf(plansOf([plain, half]), plain);
    const sent = JSON.parse(JSON.stringify(plainBoards(boards))) as ReturnType<typeof plainBoards>;
    expect(boardsFrom(sent)).toEqual(boards);
  });
});

describe('variants', () => {
  it('of one title are told apart, others keep theirs', () => {
    const prices = pricesOf(...PLAIN_PRICES);
    const made = must(makeCosts({ how: 'compared', jobs: [plain, half, plain], shelf, prices }));
    expect(made.names).toEqual(['Lady fern (1)', 'Half as large', 'Lady fern (2)']);
    expect(made.isCompared).toBe(true);
  });

  it('of one picture are that; jobs of others are told apart from them, whatever they are called', () => {
    const prices = pricesOf(...PLAIN_PRICES);
    const codes = (...jobs: (typeof plain)[]) => toldOf(makeCosts({ how: 'compared', jobs, shelf, prices }));
    const renamed = planned({ ...PLAIN, title: 'On grey', mat: { layers: [{ board: 'Mount' }] } });
    expect(codes(plain, renamed)).toEqual([]);
    expect(codes(plain, half)).toEqual(['variants-differ']);
    const other = planned({ ...PLAIN, pictures: [{ title: 'Royal fern', size: '8 x 10 in' }] });
    expect(codes(plain, other)).toEqual(['variants-differ']);
    const together = makeCosts({ how: 'together', jobs: [plain, half], shelf, prices });
    expect([together.problems, together.ok && together.value.isCompared]).toEqual([[], false]);
  });

  it('of one job alone are refused', () => {
    const made = makeCosts({ how: 'compared', jobs: [plain], shelf, prices: pricesOf(...PLAIN_PRICES) });
    expect(made.problems.map(({ code }) => code)).toEqual(['variants-too-few']);
  });
});

describe('what is not counted', () => {
  it('says where its price would stand', () => {
    const bare = shelfOf('board,Soft white,32,40,,,,,,,,,,');
    const prices = pricesOf('currency,EUR', 'board charged,by area', 'board,9.00,m2,Mount');
    const made = must(makeCosts({ how: 'by itself', jobs: [plain], shelf: bare, prices }));
    const lacking = made.costed[0]!.sheet.lines.filter(({ amount }) => !amount).map((line) => [
      line.what,
      lackingOf(line),
    ]);
    expect(Object.fromEntries(lacking)).toMatchObject({
      'Mat layer 1': { in: 'prices', what: 'board', name: 'Soft white' },
      Points: { in: 'prices', what: 'part', name: 'points' },
      Glazing: { in: 'shelf' },
      Moulding: { in: 'job', at: 'frame.name' },
    });
  });
});
