/** Plans the sheets of several jobs together, and tells what of each board that takes. */
import { jobPieces } from '../pieces/job-pieces';
import type { LaidJob } from '../pieces/pieces';
import { isBoard, type Piece } from '../pieces/piece';
import { boardAsks } from '../sheets/board-asks';
import type { SheetPlan } from '../sheets/plan';
import { planSheets } from '../sheets/plan-sheets';
import { ofKind, type Shelf } from '../shelf/shelf';
import type { BoardsUsed, BoardUsed, UsedSheets } from './boards-used';

/** Of the search for each board: the same rounds and seed find the same plan. */
const ROUNDS = 5000;
const SEED = 1;

/** New sheets of the shelf, cut with a knife; a board that no sheet is large enough for is left out. */
export function planBoards(jobs: readonly LaidJob[], shelf: Shelf): BoardsUsed {
  const choice = { stock: [], shelf, kerf: 0, trim: 0, upright: new Set<string>(), fallouts: false, aim: 'cost', seed: SEED } as const; // prettier-ignore
  return boardAsks(jobs, choice).asks.flatMap(({ board, ask }): BoardUsed[] => {
    const plan = planSheets(ask, { goOn: (rounds) => rounds < ROUNDS });
    return plan
      ? [{ board, sheets: usedSheets(plan, board, shelf), areas: jobs.map((one) => areaOfBoard(one, board)) }]
      : [];
  });
}

function usedSheets({ sheets }: SheetPlan, board: string, shelf: Shelf): UsedSheets[] {
  const known = ofKind(shelf, 'board').find(({ name }) => name.toLowerCase() === board.toLowerCase());
  const price = known?.price?.per === 'sheet' ? { price: known.price.amount } : {};
  const alike = new Map<string, UsedSheets>();
  for (const { stock } of sheets) {
    const { width, height } = stock;
    alike.set(stock.id, { size: { width, height }, count: (alike.get(stock.id)?.count ?? 0) + 1, ...price });
  }
  return [...alike.values()];
}

/** Of all pieces of a job that are cut from a board, mm². */
export function areaOfBoard({ job, layout }: LaidJob, board: string): number {
  const isOf = (piece: Piece) =>
    !piece.comesWithFrame && isBoard(piece) && piece.material.toLowerCase() === board.toLowerCase();
  return jobPieces(job, layout)
    .pieces.filter(isOf)
    .reduce((sum, piece) => sum + piece.count * piece.area.full, 0);
}
