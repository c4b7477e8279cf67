/** What is told of a plan as a whole: shares and areas that add up as they are shown, settings of sheets cut together, sums of money. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { accountOf, AREA_UNITS, apportioned, squareMmText } from '../../../src/core/sheets/account';
import { areaWords, shareWords } from '../../../src/core/sheets/account-words';
import { alikeSheets } from '../../../src/core/sheets/alike-sheets';
import { totalWords } from '../../../src/core/sheets/plan-total';
import type { PlannedBoard } from '../../../src/core/sheets/planned-board';
import { alikeWords, settingsWords } from '../../../src/core/sheets/sheet-words';
import { askOf, piece, planned, sheet } from './sheet-asks';

function boardOf(ask: Parameters<typeof planned>[0], board = 'White', isPriced = true): PlannedBoard {
  return { board, isPriced, ask, plan: planned(ask)! };
}

const numbersIn = (words: string) => (words.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);

describe('shares of a board', () => {
  it('add up to 100 where each rounded by itself would not', () => {
    // 80, 1024 and 176 of 1280 sq in: 6.25, 80 and 13.75 %.
    const board = boardOf(askOf([piece(8, 10, 1)], [sheet(32, 40)]));
    expect(shareWords(board)).toBe('Pieces 6.3 %, kept 80 %, waste 13.7 %');
    expect(areaWords(board, { unit: 'in', inchStep: 16, metricStep: 0.5 })).toBe('Sheets 1280.00 sq in: pieces 80.00 sq in, kept 1024.00 sq in, waste 176.00 sq in'); // prettier-ignore
  });

  it('and areas in every unit add up as they are shown, whatever is cut', () => {
    const size = fc.integer({ min: 30, max: 130 }).map((eighths) => eighths / 8);
    fc.assert(
      fc.property(size, size, fc.integer({ min: 1, max: 6 }), fc.constantFrom(0, 1.3, 3), (wide, high, count, kerf) => {
        const board = boardOf(askOf([piece(wide, high, count)], [sheet(32, 40)], { kerf, trim: kerf }));
        const tenths = numbersIn(shareWords(board)).map((percent) => Math.round(10 * percent));
        expect(tenths.reduce((sum, one) => sum + one, 0)).toBe(1000);
        for (const unit of ['in', 'mm', 'cm'] as const) {
          const [whole, ...parts] = numbersIn(areaWords(board, { unit, inchStep: 16, metricStep: 0.5 }).replaceAll('cm²', '').replaceAll('mm²', '')).map((area) => Math.round(100 * area)); // prettier-ignore
          expect(parts.reduce((sum, one) => sum + one, 0)).toBe(whole);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('are never further than a step from what they are', () => {
    const amounts = fc.array(fc.bigInt({ min: 0n, max: 10n ** 20n }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(amounts, fc.bigInt({ min: 1n, max: 10n ** 9n }), (parts, steps) => {
        const whole = parts.reduce((sum, one) => sum + one, 0n);
        const shares = apportioned(parts, steps);
        expect(shares.reduce((sum, one) => sum + one, 0n)).toBe(whole === 0n ? 0n : steps);
        parts.forEach((part, index) => {
          const off = shares[index]! * whole - part * steps;
          expect(off < whole && off > -whole).toBe(whole !== 0n);
        });
      }),
    );
  });

  it('are exact in square millimetres', () => {
    const { plan } = boardOf(askOf([piece(8, 10, 1)], [sheet(32, 40)]));
    const { sheet: whole, pieces } = accountOf(plan.sheets[0]!);
    expect([squareMmText(whole), squareMmText(pieces)]).toEqual(['825804.8', '51612.8']);
    const one = BigInt(AREA_UNITS);
    expect([0n, one / 10n ** 6n, (one * 5n) / 2n].map(squareMmText)).toEqual(['0', '0.000001', '2.5']);
  });
});

describe('sheets that are cut alike', () => {
  // Twelve of one job: three sheets of four.
  const { plan } = boardOf(askOf([piece(16, 20, 12)], [sheet(32, 40)]));

  it('are one with all their cuts, and each setting is set once for all of them', () => {
    expect(plan.sheets).toHaveLength(3);
    expect(alikeSheets(plan.sheets).map(({ places }) => places)).toEqual([[0, 1, 2]]);
    expect(settingsWords(plan.sheets.slice(0, 1))).toBe('3 cuts, 2 settings of the guide');
    expect(settingsWords(plan.sheets)).toBe('9 cuts, 2 settings of the guide');
  });

  it('are said to be cut together', () => {
    const [alike] = alikeSheets(plan.sheets);
    expect(alikeWords(plan.sheets, alike!)).toMatch(
      /^3 sheets like this\. Make each cut on all of them before the guide is moved\. The numbers/,
    );
    const whole = boardOf(askOf([piece(32, 40, 2)], [sheet(32, 40)])).plan;
    expect(alikeWords(whole.sheets, alikeSheets(whole.sheets)[0]!)).not.toContain('guide');
  });
});

describe('the sum of money', () => {
  const ask = askOf([piece(16, 20, 4)], [sheet(32, 40, { cost: 11_500_000 })], { perSheet: 3_000_000 });
  const [white, moss, grey] = [boardOf(ask), boardOf(ask, 'Moss'), boardOf(ask, 'Grey', false)];

  it('is of what is paid for all boards', () => {
    expect(totalWords([white, moss])).toBe('All boards together: 23.00.');
    expect(totalWords([white])).toBe('');
    expect(totalWords([grey, grey])).toBe('');
  });

  it('is none where a board has no price, which is named', () => {
    expect(totalWords([white, grey, moss])).toBe('All boards together: no sum, since there is no price of Grey.');
  });
});
