/** How far the planning of sheets has come, and how it ended, in words. */
import { counted } from '../phrases';
import type { PlannedBoard } from './planned-board';
import { isProven } from './sheet-words';

/** Such as `board 2 of 4, 3 sheets, not proven yet`. @param board counted from 0. */
export function progressWords(board: number, boards: readonly (PlannedBoard | undefined)[]): string {
  const sheets = boards[board]?.plan.sheets.length;
  const which = boards.length === 1 ? '' : `board ${board + 1} of ${boards.length}, `;
  return `${which}${sheets === undefined ? 'looking for a plan' : `${counted(sheets, 'sheet')}, not proven yet`}`;
}

/** A board whose search is over: by itself, or for now. */
interface Rested {
  readonly planned: Pick<PlannedBoard, 'plan' | 'ask'> | undefined;
  readonly isEnded: boolean;
}

/** Of boards that are at rest; nothing where none has a plan. @param hasOthers whether there are boards that can have none. */
export function restWords(boards: readonly Rested[], isStopped: boolean, hasOthers: boolean): string {
  if (boards.length === 0) return '';
  const isProvenAll = boards.every(({ planned }) => planned && isProven(planned));
  if (isStopped) return isProvenAll ? 'Stopped; every plan is proven.' : 'Stopped; the best so far is shown.';
  const done = hasOthers ? 'Done with the others' : 'Done';
  return boards.every(({ isEnded }) => isEnded)
    ? `${done}; no plan is better.`
    : `${done}; it is not proven that there is none better.`;
}
