/** What a plan of sheets for several jobs used of each board, as the cost sheet of one copy of the first of them takes it. */
import { NO_MONEY, ofParts } from '../money';
import type { LaidJob } from '../pieces/pieces';
import { COST_PLACES } from '../sheets/board-stock';
import type { PlannedBoard } from '../sheets/planned-board';
import type { BoardsUsed, BoardUsed, UsedSheets } from './boards-used';
import { areaOfBoard } from './plan-boards';

/** In the areas the job comes first, then its other copies, each other job, and what is cut from the same sheets for no mat. */
export function boardsOf(planned: readonly PlannedBoard[], job: LaidJob): BoardsUsed {
  return planned.map(({ board, isPriced, plan }): BoardUsed => {
    const own = areaOfBoard(job, board);
    return { board, sheets: sheetsOf(plan.sheets, isPriced), areas: partsOf(plan.sheets, own) };
  });
}

/** The parts among which the sheets are shared are those that the jobs' own cost sheets have, so that each pays the same there. */
function partsOf(sheets: PlannedBoard['plan']['sheets'], own: number): number[] {
  const areas = new Map<number, number>();
  for (const { piece } of sheets.flatMap(({ pieces }) => pieces)) {
    const job = piece.from?.job ?? 0;
    areas.set(job, (areas.get(job) ?? 0) + piece.width * piece.height);
  }
  const { 0: ofJob = 0, ...others } = Object.fromEntries(areas);
  const copies = own > 0 ? Math.max(1, Math.floor(ofJob / own + LAST_BITS)) : 1;
  const rest = ofJob - copies * own;
  return [...Array.from({ length: copies }, () => own), ...Object.values(others), ...(rest > LAST_BITS * ofJob ? [rest] : [])]; // prettier-ignore
}

/** Of sums of areas. */
const LAST_BITS = 1e-9;

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
