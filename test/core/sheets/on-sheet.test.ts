/** Where cuts and windows lie on a sheet, and which sheets are alike. */
import { describe, expect, it } from 'vitest';
import { alikeSheets } from '../../../src/core/sheets/alike-sheets';
import { cutLines } from '../../../src/core/sheets/cut-lines';
import type { CutStep, PlannedSheet } from '../../../src/core/sheets/plan';
import { planSheets } from '../../../src/core/sheets/plan-sheets';
import { windowsOnSheet } from '../../../src/core/sheets/windows-on-sheet';

const part = { left: 5, bottom: 10, right: 105, top: 70 };
const step: CutStep = { kind: 'cut', part, of: '', way: 'upright', setting: 20, times: 3, stage: 1, guideStays: false, gives: ['1', '2', '3'] }; // prettier-ignore

describe('cut lines', () => {
  it('run from edge to edge of the part, a kerf further each time', () => {
    const xs = cutLines(step, 2).map(([from, to]) => [from.x, from.y, to.x, to.y]);
    expect(xs).toEqual([25, 47, 69].map((x) => [x, 10, x, 70]));
    const ys = cutLines({ ...step, way: 'lying', times: 2 }, 0).map(([from, to]) => [from.x, from.y, to.x, to.y]);
    expect(ys).toEqual([30, 50].map((y) => [5, y, 105, y]));
  });

  it('go all round where a sheet is trimmed', () => {
    const lines = cutLines({ ...step, kind: 'trim', setting: 3, times: 4 }, 2);
    expect(lines.map(([from, to]) => [from.x, from.y, to.x, to.y])).toEqual([
      [8, 10, 8, 70],
      [5, 67, 105, 67],
      [102, 10, 102, 70],
      [5, 13, 105, 13],
    ]);
  });
});

describe('windows on a sheet', () => {
  const window = { name: 'A', title: '', box: { left: 10, bottom: 15, right: 30, top: 45 }, isRectangle: true };
  const piece = { id: 'Mat', width: 40, height: 50, count: 1, mayTurn: true, from: { job: 0, title: '', kind: 'mat' as const, name: 'Mat', windows: [window] } }; // prettier-ignore

  it('lie in their piece', () => {
    const box = { left: 100, bottom: 200, right: 140, top: 250 };
    const [found] = windowsOnSheet({ piece, box, turned: false, number: 1 });
    expect(found?.box).toEqual({ left: 110, bottom: 215, right: 130, top: 245 });
  });

  it('turn with it, so that its top lies at the left', () => {
    const box = { left: 100, bottom: 200, right: 150, top: 240 };
    const [found] = windowsOnSheet({ piece, box, turned: true, number: 1 });
    // 5 below the top edge, which is now 5 from the left one; 10 from the left edge, which is now the lower one.
    expect(found?.box).toEqual({ left: 105, bottom: 210, right: 135, top: 230 });
  });
});

describe('sheets that are alike', () => {
  const plan = planSheets(
    { pieces: [{ id: 'Chart', width: 400, height: 500, count: 11, mayTurn: false }], stock: [{ id: 'sheet 1', kind: 'sheet', width: 800, height: 1000, cost: 1 }], kerf: 0, trim: 0, aim: 'sheets', seed: 1 },
    { goOn: (rounds) => rounds < 200 },
  )!; // prettier-ignore

  it('are told once, whatever the numbers of their pieces', () => {
    expect(alikeSheets(plan.sheets).map(({ places }) => places)).toEqual([[0, 1], [2]]);
  });

  it('are not those that differ in a piece, in what is left, or in a setting', () => {
    const [one] = plan.sheets as readonly [PlannedSheet];
    const [piece] = one.pieces;
    const [cut, ...cuts] = one.steps;
    const others: readonly PlannedSheet[] = [
      { ...one, pieces: [{ ...piece!, piece: { ...piece!.piece, id: 'Other' } }, ...one.pieces.slice(1)] },
      { ...one, left: [part] },
      { ...one, steps: [{ ...cut!, setting: 399 }, ...cuts] },
      { ...one, stock: { ...one.stock, id: 'sheet 2' } },
    ];
    for (const other of others) expect(alikeSheets([one, other])).toHaveLength(2);
    expect(alikeSheets([one, one])).toHaveLength(1);
  });
});
