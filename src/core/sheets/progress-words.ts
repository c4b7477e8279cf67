/** How far the planning of sheets has come, in words. */
import { counted } from '../phrases';
import type { PlannedBoard } from './planned-board';

/** Such as `board 2 of 4, 3 sheets, not proven yet`. @param board counted from 0. */
export function progressWords(board: number, boards: readonly (PlannedBoard | undefined)[]): string {
  const sheets = boards[board]?.plan.sheets.length;
  const which = boards.length === 1 ? '' : `board ${board + 1} of ${boards.length}, `;
  return `${which}${sheets === undefined ? 'looking for a plan' : `${counted(sheets, 'sheet')}, not proven yet`}`;
}
