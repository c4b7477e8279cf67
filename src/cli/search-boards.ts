/** Plans boards one after another, with progress told and Ctrl-C heard between rounds. */
import type { BoardAsk } from '../core/sheets/board-asks';
import type { PlannedBoard } from '../core/sheets/planned-board';
import { planSteps, type PlanStep } from '../core/sheets/plan-sheets';
import { tellProgress } from './print/progress';
import type { World } from './world';

/** Between two looks at the signal, ms. */
const SLICE = 50;

/** Of each board that there are sheets enough of; undefined where Ctrl-C ended it. */
export function searchBoards(
  world: World,
  asks: readonly BoardAsk[],
  rounds: number,
): Promise<readonly PlannedBoard[] | undefined> {
  const progress = tellProgress(world);
  return world.interruptible(async (signal) => {
    const planned: PlannedBoard[] = [];
    let next = performance.now() + SLICE;
    for (const [index, { board, isPriced, ask }] of asks.entries()) {
      const which = asks.length === 1 ? '' : `, board ${index + 1} of ${asks.length}`;
      let last: PlanStep | undefined;
      for (const step of planSteps(ask)) {
        last = step;
        if (step.rounds >= rounds) break;
        if (performance.now() < next) continue;
        await new Promise((resolve) => setImmediate(resolve));
        if (signal.aborted) return undefined;
        progress({
          done: (index + Math.min(1, step.rounds / rounds)) / asks.length,
          step: `Planning the sheets of ${board}${which}`,
        });
        next = performance.now() + SLICE;
      }
      if (last) planned.push({ board, isPriced, ask, plan: last.draw() });
    }
    progress({ done: 1, step: 'Done' });
    return planned;
  });
}
