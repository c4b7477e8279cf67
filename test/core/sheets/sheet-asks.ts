/** Asks of sheets in inches, for tests, and plans of them that the judge has looked at. */
import { expect } from 'vitest';
import type { SheetsAsk, Stock, WantedPiece } from '../../../src/core/sheets/ask';
import type { SheetPlan } from '../../../src/core/sheets/plan';
import { planSheets } from '../../../src/core/sheets/plan-sheets';
import { MM_PER_INCH } from '../../../src/core/units';
import { wrongInPlan } from './check-sheet-plan';

export const inches = (value: number) => value * MM_PER_INCH;

export function piece(width: number, height: number, count: number, mayTurn = true): WantedPiece {
  return { id: `${width} x ${height}`, width: inches(width), height: inches(height), count, mayTurn };
}

export function sheet(width: number, height: number, more: Partial<Stock> = {}): Stock {
  return {
    id: `${width} x ${height}`,
    kind: 'sheet',
    width: inches(width),
    height: inches(height),
    cost: 1100,
    ...more,
  };
}

export function askOf(
  pieces: readonly WantedPiece[],
  stock: readonly Stock[],
  more: Partial<SheetsAsk> = {},
): SheetsAsk {
  return { pieces, stock, kerf: 0, trim: 0, aim: 'cost', seed: 1, ...more };
}

/** Undefined where there is no plan; fails where a plan is wrong. */
export function planned(ask: SheetsAsk, rounds = 3000): SheetPlan | undefined {
  const found = planSheets(ask, { goOn: (done) => done < rounds });
  if (found) expect(wrongInPlan(ask, found)).toEqual([]);
  return found;
}
