/** Variants side by side, and one job ready-made against made to size. */
import { describe, expect, it } from 'vitest';
import { compareSheets, countProblems, type ComparedRow } from '../../../src/core/cost/compare';
import { comparedRow, variantName } from '../../../src/core/cost/cost-words';
import { costSheets, type CostSheet } from '../../../src/core/cost/cost-sheet';
import { planBoards } from '../../../src/core/cost/plan-boards';
import { readyOrMade } from '../../../src/core/cost/ready-or-made';
import { planned, type Contents } from '../open';
import { costedOf, must, PLAIN, PLAIN_PRICES, PLAIN_SHELF, pricesOf, sheetOf, shelfOf } from './costed';

const shelf = shelfOf(...PLAIN_SHELF);
const prices = pricesOf(...PLAIN_PRICES);
const small: Contents = {
  ...PLAIN,
  title: 'Small',
  pictures: [{ size: '5 x 7 in' }],
  frame: { ...PLAIN.frame, size: '11 x 14 in' },
};
const double: Contents = { ...PLAIN, title: 'Double', mat: { layers: [{ board: 'Soft white' }, { board: 'Gold', reveal: '1/4 in' }] } }; // prettier-ignore

const sheets = [PLAIN, small, double].map((job) => sheetOf(job, shelf, prices));

function told(rows: readonly ComparedRow[], sheet: CostSheet) {
  return new Map(rows.map((row) => comparedRow(row, sheet)).map(([what, ...cells]) => [what, cells]));
}

describe('side by side', () => {
  const rows = told(compareSheets(sheets), sheets[0]!);

  it('each line has its difference from the first', () => {
    // 11 x 14 in is 154 of 144 sq in: 1.06944 sq ft at 9.00 = 9.63; the same sheets.
    expect(rows.get('Glazing')!.slice(0, 2)).toEqual(['20.00', '9.63 (−10.37)']);
    expect(rows.get('Boards')!.slice(0, 2)).toEqual(['19.00', '19.00 (same)']);
    // 2 x (11 + 14) + 16 = 66 in: 5.5 ft at 1.80 = 9.90.
    expect(rows.get('Frame')!.slice(0, 2)).toEqual(['13.20', '9.90 (−3.30)']);
  });

  it('what is not counted is told as open, in its row and in the sums', () => {
    expect(rows.get('Boards')![2]).toBe('at least 19.00');
    // Twice the cuts: 4 min at 36.00 an hour.
    expect(rows.get('Cutting, straight')![2]).toBe('2.40 (+1.20)');
    expect(rows.get('Total')![2]).toMatch(/^at least \d+\.\d\d$/);
  });

  it('another order changes no amount', () => {
    const order = [2, 0, 1];
    const turned = compareSheets(order.map((index) => sheets[index]!));
    const amounts = (all: readonly ComparedRow[]) =>
      all.map(({ what, cells }) => ({
        what,
        cells: cells.map(({ amount, isOpen }) => `${amount?.toString()} ${isOpen}`),
      }));
    expect(amounts(turned)).toEqual(
      amounts(compareSheets(sheets)).map(({ what, cells }) => ({ what, cells: order.map((index) => cells[index]) })),
    );
  });

  it('differences of sums are those of the sums shown', () => {
    const [first, second] = sheets;
    const total = compareSheets([first!, second!]).at(-1)!;
    expect(total.cells[1]!.more!.eq(second!.total.minus(first!.total))).toBe(true);
  });

  it('takes two or more, and one for frames against each other', () => {
    expect(countProblems(1, 'compared').map(({ code }) => code)).toEqual(['variants-too-few']);
    expect(countProblems(2, 'against custom').map(({ code }) => code)).toEqual(['variants-too-many']);
    expect(
      [countProblems(2, 'compared'), countProblems(1, 'against custom'), countProblems(3, 'by itself')].flat(),
    ).toEqual([]);
  });
});

describe('ready-made against made to size', () => {
  const job = planned({ ...PLAIN, frame: { size: '16 x 20 in', allowance: 0, lip: '1/4 in', mouldingWidth: '2 in' } });
  const stock = shelfOf(
    ...PLAIN_SHELF,
    'moulding,Elm,,,,,2,1/4,,,,,1.00,ft',
    'frame,Ready,16,20,,,2,1/4,,,,,12.50,',
    'frame,Gone,16,20,,,2,1/4,,,,,11.00,',
    'frame,Tiny,4,5,,,1,1/4,,,,,2.00,',
  );
  const without = stock.map((item) => (item.name === 'Gone' ? { ...item, count: 0 } : item));

  it('has the frames that work and are there, then the cheapest moulding', () => {
    const found = must(readyOrMade(job.job, without));
    expect(found.map(variantName)).toEqual(['Ready-made “Ready”, 16 x 20 in', 'Made to size of “Elm”, 16 x 20 in']);
    const costed = must(costSheets({ jobs: found, shelf: without, prices }));
    const rows = told(compareSheets(costed.map(({ sheet }) => sheet)), costed[0]!.sheet);
    // 88 in at 1.00 a foot is 7.33: all else being alike, 5.17 less.
    expect(rows.get('Frame')).toEqual(['12.50', '7.33 (−5.17)']);
    expect(rows.get('Glazing')).toEqual(['20.00', '20.00 (same)']);
  });

  it('of the moulding that is named, or none of that name', () => {
    expect(
      must(readyOrMade(job.job, without, 'ash'))
        .map(variantName)
        .at(-1),
    ).toBe('Made to size of “Ash”, 16 x 20 in');
    expect(readyOrMade(job.job, without, 'oak').problems[0]!.code).toBe('moulding-unknown');
  });

  it('says where there is none of a kind, and fails where there is neither', () => {
    const codes = (rows: readonly string[]) => readyOrMade(job.job, shelfOf(...rows)).problems.map(({ code }) => code);
    expect(codes(['moulding,Elm,,,,,2,1/4,,,,,1.00,ft', 'frame,Tiny,4,5,,,1,1/4,,,,,2.00,'])).toContain(
      'no-frame-works',
    );
    expect(codes(['frame,Ready,16,20,,,2,1/4,,,,,12.50,'])).toEqual(['no-moulding-works']);
    expect(readyOrMade(job.job, shelfOf('hook,Hook,,,,,,,,,,30 lb,0.35,')).ok).toBe(false);
  });
});

describe('several jobs', () => {
  it('are cut from sheets planned together, which cost no more than each its own', () => {
    const jobs = [PLAIN, PLAIN, PLAIN].map((job) => planned(job));
    // Three of 16 x 20 in come from one sheet of 32 x 40 in.
    const boards = planBoards(jobs, shelf);
    expect(boards.map(({ board, sheets: used }) => [board, used.map(({ count }) => count)])).toEqual([['Soft white', [1]], ['Mount', [1]]]); // prettier-ignore
    const together = costedOf([PLAIN, PLAIN, PLAIN], shelf, prices, { boards });
    expect(together.map(({ sheet }) => sheet.lines[1]!.amount!.toFixed(2))).toEqual(['3.67', '3.67', '3.66']);
  });
});
