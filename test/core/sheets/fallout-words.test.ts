/** What falls out of windows, in words: which window is cut first, what is in hand, and what is to be kept. */
import { describe, expect, it } from 'vitest';
import { boardAsks, type SheetsChoice } from '../../../src/core/sheets/board-asks';
import { cutLines } from '../../../src/core/sheets/cut-lines';
import { cutFirstWords, falloutWords, keepFalloutWords } from '../../../src/core/sheets/fallout-words';
import { planBoard } from '../../../src/core/sheets/planned-board';
import { readStock } from '../../../src/core/sheets/read-stock';
import { sheetWords, stepRows } from '../../../src/core/sheets/sheet-words';
import { lengthText, sizeText } from '../../../src/core/units';
import { planned } from '../open';
import { wrongInPlan } from './check-sheet-plan';

const IN = 25.4;
const SHOWING = { unit: 'in', inchStep: 16, metricStep: 0.5 } as const;
const CHOICE: SheetsChoice = { stock: [], shelf: [], kerf: 0, trim: 0, upright: new Set(), fallouts: true, aim: 'cost', seed: 1 }; // prettier-ignore

const mat = (title: string, frame: string, picture: string, shape: 'rectangle' | 'oval' = 'rectangle') =>
  planned({ title, pictures: [{ size: picture }], frame: { size: frame }, mat: { layers: [{ board: 'Moss', thickness: '1/16 in' }] }, windows: { kind: 'window', picture: 1, shape }, package: { mountBoard: { without: true } } }); // prettier-ignore

/** Two large mats that are a sheet each, and two small ones that come out of their windows. */
function nested(shape: 'rectangle' | 'oval' = 'rectangle') {
  const list = readStock('board,width,height\nMoss,20 in,24 in\n');
  const stock = list.ok ? list.value : [];
  const jobs = [
    { ...mat('Chart', '20 x 24 in', '12 x 16 in', shape), copies: 2 },
    { ...mat('Shell', shape === 'oval' ? '7 x 9 in' : '8 x 10 in', '4 x 5 in'), copies: 2 },
  ];
  const { asks } = boardAsks(jobs, { ...CHOICE, stock });
  return planBoard(
    asks.find(({ board }) => board === 'Moss')!,
    { goOn: (rounds) => rounds < 400 },
  )!;
}

describe('what falls out of a window', () => {
  it('is told with the window that is cut first, by the copy of its mat', () => {
    const board = nested();
    const kinds = board.plan.sheets.map(({ stock }) => stock.kind);
    expect(kinds).toEqual(['sheet', 'sheet', 'fallout', 'fallout']);
    expect(board.plan.sheets.map((_, place) => cutFirstWords(board, [place], SHOWING))).toEqual([
      '',
      '',
      'Cut window A of piece 1 (1 Chart: Mat layer 1) first; what falls out is this part.',
      'Cut window A of piece 2 (1 Chart: Mat layer 1) first; what falls out is this part.',
    ]);
    expect(cutFirstWords(board, [2, 3], SHOWING)).toBe('Cut window A of pieces 1 and 2 (1 Chart: Mat layer 1) first; what falls out are these 2 parts.'); // prettier-ignore
  });

  it('is kept, as the sheet of its mat says, though nothing is cut off that', () => {
    const board = nested();
    expect(board.plan.sheets[0]!.steps).toEqual([]);
    expect(board.plan.sheets.map((_, place) => keepFalloutWords(board, [place]))).toEqual([
      'Keep what falls out of window A of piece 1 (sheet 3).',
      'Keep what falls out of window A of piece 2 (sheet 4).',
      '',
      '',
    ]);
  });

  it('is told together where no piece comes from it and it is of one size, with how many there are', () => {
    const list = readStock('board,width,height\nMoss,32 in,40 in\n');
    const names = ['Heron', 'Owl', 'Kite', 'Wren', 'Lark'];
    const jobs = [...names.map((name) => mat(name, '16 x 20 in', '12 x 16 in')), mat('Gull', '18 x 20 in', '14 x 16 in')]; // prettier-ignore
    const { asks } = boardAsks(jobs, { ...CHOICE, stock: list.ok ? list.value : [] });
    const board = planBoard(asks[0]!, { goOn: (rounds) => rounds < 200 })!;
    expect(falloutWords(board, SHOWING)).toBe(
      'Falls out of windows and is kept: 5 of 11 3/4 x 15 3/4 in (window A of 1 Heron: Mat layer 1, window A of 2 Owl: Mat layer 1, window A of 3 Kite: Mat layer 1 and 2 more); 13 3/4 x 15 3/4 in (window A of 6 Gull: Mat layer 1).',
    );
  });

  it('is told the same of a plan that was sent elsewhere', () => {
    const sent = JSON.parse(JSON.stringify(nested())) as ReturnType<typeof nested>;
    expect(cutFirstWords(sent, [3], SHOWING)).toBe(cutFirstWords(nested(), [3], SHOWING));
  });

  it('has its bevels round it until they are off', () => {
    const board = nested();
    const sheet = board.plan.sheets[2]!;
    // The window is 11 3/4 x 15 3/4 in: the picture less 1/8 in at each side. A bevel of 45° runs 1/16 in.
    expect(stepRows(sheet, SHOWING)[0]).toEqual(['1', 'cut the bevel off, 1/16 in', 'all round', 'the fallout, 11 7/8 in x 15 7/8 in', '']); // prettier-ignore
    expect(stepRows(sheet, SHOWING)[1]![3]).toBe('the fallout, 11 3/4 in x 15 3/4 in');
    const [left, top, right, bottom] = cutLines(sheet.steps[0]!, 0);
    const { width, height } = sheet.stock;
    const near = (found: number, wanted: number) => expect(found).toBeCloseTo(wanted, 9);
    near(left![0].x, 0);
    near(right![0].x, width);
    near(bottom![0].y, 0);
    near(top![0].y, height);
  });

  it('gives spacer strips that are cut from the same board', () => {
    const list = readStock('board,width,height\nMoss,20 in,24 in\n');
    const small = planned({ title: 'Shell', pictures: [{ size: '4 x 5 in' }], frame: { size: '8 x 10 in', lip: '3/8 in' }, mat: { layers: [{ board: 'Sand' }] }, package: { mountBoard: { without: true }, spacer: { thickness: '1/16 in', board: 'Moss' } } }); // prettier-ignore
    const { asks, unplanned } = boardAsks([mat('Chart', '20 x 24 in', '12 x 16 in'), small], { ...CHOICE, stock: list.ok ? list.value : [] }); // prettier-ignore
    expect(unplanned.some(({ name }) => name.startsWith('Spacer'))).toBe(false);
    const board = planBoard(
      asks.find((one) => one.board === 'Moss')!,
      { goOn: (rounds) => rounds < 400 },
    )!;
    expect(wrongInPlan(board.ask, board.plan)).toEqual([]);
    const [, drop] = board.plan.sheets;
    expect(drop?.stock.kind).toBe('fallout');
    expect(drop?.pieces.map(({ piece }) => piece.from?.kind)).toEqual(['spacer', 'spacer', 'spacer', 'spacer']);
  });

  it('of an oval is the largest rectangle in it, in whole steps of the rule, and told where it lies', () => {
    const board = nested('oval');
    expect(board.plan.sheets.map(({ stock }) => stock.kind)).toEqual(['sheet', 'sheet', 'fallout', 'fallout']);
    const { stock, steps } = board.plan.sheets[2]!;
    const { x, y } = stock.window!.within!;
    // The opening is an ellipse of 11 3/4 x 15 3/4 in, round the middle of a fallout that is larger by its bevel of 1/16 in.
    const [a, b] = [(11.75 / 2) * IN, (15.75 / 2) * IN];
    const middle = { x: a + IN / 16, y: b + IN / 16 };
    const far = [x, x + stock.width].map((at) => Math.abs(at - middle.x) / a);
    const high = [y, y + stock.height].map((at) => Math.abs(at - middle.y) / b);
    expect(Math.max(...far) ** 2 + Math.max(...high) ** 2).toBeLessThan(1);
    // The largest rectangle in an ellipse has half the area of the box round it.
    expect((stock.width * stock.height) / (2 * a * b)).toBeGreaterThan(0.97);
    for (const length of [x, y, stock.width, stock.height]) expect((length / IN) * 16).toBeCloseTo(Math.round((length / IN) * 16), 9); // prettier-ignore
    expect(steps.every(({ kind }) => kind === 'cut')).toBe(true);
    const words = cutFirstWords(board, [2], SHOWING);
    expect(words).toMatch(
      /^Cut window A of piece 1 \(1 Chart: Mat layer 1\) first\. Out of what falls out cut a rectangle of /,
    );
    expect(words).toContain(`${sizeText(stock, SHOWING)}: seen from the front it begins ${lengthText(x, SHOWING)} from the furthest left of it and ${lengthText(y, SHOWING)} from its lowest point.`); // prettier-ignore
    expect(words).not.toContain('≈');
    expect(sheetWords(board.plan.sheets[2]!, SHOWING)).toMatch(/^a rectangle in what falls out of window A/);
  });
});
