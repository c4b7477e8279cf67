/** The door to the planner: a plan for pieces and stock, better the longer it may take. */
import type { SheetsAsk } from './ask';
import { drawPlan } from './draw-plan';
import { searchSheets } from './plan-search';
import type { SheetPlan } from './plan';

export interface PlanHooks {
  /** Asked every few rounds; false ends the search with the best so far. */
  readonly goOn: (rounds: number) => boolean;
  /** Each plan that is better than the last; the first within a few milliseconds. */
  readonly onBetter?: (plan: SheetPlan) => void;
}

/** Undefined where some piece is larger than every sheet, or there are too few of them. */
export function planSheets(ask: SheetsAsk, { goOn, onBetter }: PlanHooks): SheetPlan | undefined {
  let told: number | undefined;
  let last: ReturnType<typeof drawPlan>;
  for (const progress of searchSheets(ask)) {
    const { best, rounds } = progress;
    if (best && best.cost !== told) {
      told = best.cost;
      last = drawPlan(ask, progress);
      if (last) onBetter?.(last);
    }
    if (last) last = { ...last, rounds, atLeast: progress.bound };
    if (!goOn(rounds)) break;
  }
  return last;
}
