/** The door to the planner: a plan for pieces and stock, better the longer it may take. */
import type { SheetsAsk } from './ask';
import { drawPlan } from './draw-plan';
import type { Found } from './climb';
import { searchAll } from './search-all';
import { searchPinned } from './search-pinned';
import type { SheetPlan } from './plan';
import { isPlannedTurned, turnedAsk, turnedBack } from './turned';

export interface PlanHooks {
  /** Asked every few rounds; false ends the search with the best so far. */
  readonly goOn: (rounds: number) => boolean;
  /** Each plan that is better than the last; the first within a few milliseconds. */
  readonly onBetter?: (plan: SheetPlan) => void;
}

/** Undefined where some piece is larger than every sheet, or there are too few of them. */
export function planSheets(ask: SheetsAsk, { goOn, onBetter }: PlanHooks): SheetPlan | undefined {
  const turned = isPlannedTurned(ask) ? turnedAsk(ask) : undefined;
  let told: Found | undefined;
  let last: SheetPlan | undefined;
  const asked = turned ?? ask;
  const search = asked.pins?.length ? searchPinned(asked) : searchAll(asked);
  for (const progress of search) {
    const { best, rounds, bound } = progress;
    if (best && best !== told) {
      told = best;
      const drawn = drawPlan(asked, progress);
      last = drawn && turned ? turnedBack(drawn, ask, turned) : drawn;
      if (last) onBetter?.(last);
    }
    if (last) last = { ...last, rounds, atLeast: bound };
    if (!goOn(rounds)) break;
  }
  return last;
}
