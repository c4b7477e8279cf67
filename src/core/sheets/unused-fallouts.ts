/** What falls out of windows and no piece is cut from: board that is there once the plan is cut. */
import type { Stock } from './ask';
import type { PlannedBoard } from './planned-board';
import { keepingOf, type KeepRule, type Keeping } from './remnants';

export interface UnusedFallout {
  /** Of full thickness as far as its size, mm. */
  readonly stock: Stock;
  /** How many of it are left, from 1. */
  readonly count: number;
  readonly keeping: Keeping;
}

/** In the order in which they were asked for. */
export function unusedFallouts({ ask, plan }: Pick<PlannedBoard, 'ask' | 'plan'>, rule: KeepRule): UnusedFallout[] {
  return ask.stock.flatMap((stock): UnusedFallout[] => {
    if (stock.kind !== 'fallout') return [];
    const used = plan.sheets.filter((sheet) => sheet.stock.kind === 'fallout' && sheet.stock.id === stock.id).length;
    const count = (stock.count ?? 1) - used;
    const box = { left: 0, bottom: 0, right: stock.width, top: stock.height };
    return count > 0 ? [{ stock, count, keeping: keepingOf(box, rule) }] : [];
  });
}
