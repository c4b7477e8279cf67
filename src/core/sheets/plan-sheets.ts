/** The door to the planner: a plan for pieces and stock, better the longer it may take. */
import type { SheetsAsk } from './ask';
import type { Found } from './climb';
import { drawPlan } from './draw-plan';
import type { SheetPlan } from './plan';
import { searchAll } from './search-all';
import { searchPinned } from './search-pinned';
import { isPlannedTurned, turnedAsk, turnedBack } from './turned';

export interface PlanHooks {
  /** Asked every few rounds; false ends the search with the best so far. */
  readonly goOn: (rounds: number) => boolean;
  /** Each plan that is better than the last; the first within a few milliseconds. */
  readonly onBetter?: (plan: SheetPlan) => void;
}

export interface PlanStep {
  readonly rounds: number;
  /** The best so far. */
  readonly plan: SheetPlan;
  /** True where it is better than that of the step before. */
  readonly isBetter: boolean;
}

/** Undefined where some piece is larger than every sheet, or there are too few of them. */
export function planSheets(ask: SheetsAsk, { goOn, onBetter }: PlanHooks): SheetPlan | undefined {
  let last: SheetPlan | undefined;
  for (const { plan, rounds, isBetter } of planSteps(ask)) {
    last = plan;
    if (isBetter) onBetter?.(plan);
    if (!goOn(rounds)) break;
  }
  return last;
}

/** A step every few rounds, for whoever does something else between them; none where there is no plan. */
export function* planSteps(ask: SheetsAsk): Generator<PlanStep, void> {
  const turned = isPlannedTurned(ask) ? turnedAsk(ask) : undefined;
  const asked = turned ?? ask;
  let told: Found | undefined;
  let drawn: SheetPlan | undefined;
  for (const progress of asked.pins?.length ? searchPinned(asked) : searchAll(asked)) {
    const { best, rounds, bound } = progress;
    const isBetter = best !== undefined && best !== told;
    if (isBetter) {
      told = best;
      const plan = drawPlan(asked, progress);
      drawn = plan && turned ? turnedBack(plan, ask, turned) : plan;
    }
    if (drawn) yield { rounds, plan: { ...drawn, rounds, atLeast: bound }, isBetter };
  }
}
