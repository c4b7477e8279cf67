/** A board with what was asked of it and what came out: what screen, terminal and paper tell. Plain data, so that it can be sent. */
import type { SheetsAsk } from './ask';
import type { BoardAsk } from './board-asks';
import type { SheetPlan } from './plan';
import { planSheets, type PlanHooks } from './plan-sheets';

export interface PlannedBoard {
  readonly board: string;
  /** Whether costs are money, in hundredths of the currency's unit. */
  readonly isPriced: boolean;
  readonly ask: SheetsAsk;
  readonly plan: SheetPlan;
}

/** Undefined where there are too few sheets, or each is too small. */
export function planBoard({ board, isPriced, ask }: BoardAsk, hooks: PlanHooks): PlannedBoard | undefined {
  const plan = planSheets(ask, hooks);
  return plan && { board, isPriced, ask, plan };
}
