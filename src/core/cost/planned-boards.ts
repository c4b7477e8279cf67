/** What a plan of sheets for several jobs used of each board, as the cost sheet of one copy of the first of them takes it. */
import { NO_MONEY, ofParts } from '../money';
import type { LaidJob } from '../pieces/pieces';
import { COST_PLACES } from '../sheets/board-stock';
import type { PlannedBoard } from '../sheets/planned-board';
import type { BoardsUsed, BoardUsed, UsedSheets } from './boards-used';
import { areaOfBoard } from './plan-boards';

/** In the areas the job comes first, then all else that is cut from the same sheets. */
export function boardsOf(planned: readonly PlannedBoard[], job: LaidJob): BoardsUsed {
  return planned.map(({ board, isPriced, plan }): BoardUsed => {
    const own = areaOfBoard(job, board);
    const all = plan.sheets
      .flatMap(({ pieces }) => pieces)
      .reduce((sum, { piece: { width, height } }) => sum + width * height, 0);
    return { board, sheets: sheetsOf(plan.sheets, isPriced), areas: [own, Math.max(0, all - own)] };
  });
}

function sheetsOf(sheets: PlannedBoard['plan']['sheets'], isPriced: boolean): UsedSheets[] {
  const alike = new Map<string, UsedSheets>();
  for (const { stock } of sheets) {
    const { id, width, height, cost, kind } = stock;
    // What falls out of windows lies on a sheet that is counted already.
    if (kind === 'fallout') continue;
    const amount = kind === 'remnant' ? NO_MONEY : isPriced ? ofParts(cost, COST_PLACES) : undefined;
    const count = (alike.get(id)?.count ?? 0) + 1;
    const left = kind === 'remnant' ? ({ isRemnant: true } as const) : {};
    alike.set(id, { size: { width, height }, count, ...left, ...(amount ? { price: amount } : {}) });
  }
  return [...alike.values()];
}
