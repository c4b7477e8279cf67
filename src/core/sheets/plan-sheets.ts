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
  /** Of each plan that is better than the last, the first within a few milliseconds; drawing one takes some, too. */
  readonly onBetter?: (draw: () => SheetPlan) => void;
}

export interface PlanStep {
  readonly rounds: number;
  /** True where the best so far is better than that of the step before. */
  readonly isBetter: boolean;
  /** The best so far; drawn when it is asked for, since that takes longer than many rounds. */
  readonly draw: () => SheetPlan;
}

/** Undefined where some piece is larger than every sheet, or there are too few of them. */
export function planSheets(ask: SheetsAsk, { goOn, onBetter }: PlanHooks): SheetPlan | undefined {
  let last: PlanStep | undefined;
  for (const step of planSteps(ask)) {
    last = step;
    if (step.isBetter) onBetter?.(step.draw);
    if (!goOn(step.rounds)) break;
  }
  return last?.draw();
}

/** A step every few rounds, for whoever does something else between them; none where there is no plan. */
export function* planSteps(ask: SheetsAsk): Generator<PlanStep, void> {
  const turned = isPlannedTurned(ask) ? turnedAsk(ask) : undefined;
  const asked = turned ?? ask;
  let last: Found | undefined;
  for (const progress of asked.pins?.length ? searchPinned(asked) : searchAll(asked)) {
    const { best, rounds } = progress;
    if (!best) continue;
    const isBetter = best !== last;
    last = best;
    const draw = () => {
      const plan = drawPlan(asked, { ...progress, best });
      return turned ? turnedBack(plan, ask, turned) : plan;
    };
    yield { rounds, isBetter, draw };
  }
}
