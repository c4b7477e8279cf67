/** Plans several boards one after another, each for its time, with word of how it goes; the first plans of all come first. */
import type { BoardAsk } from './board-asks';
import type { SheetPlan } from './plan';
import { planBoard, type PlannedBoard } from './planned-board';

/** What is told on the way; plain data, so that it can be sent. */
export type PlannerNews =
  /** In the order of what was asked; undefined where there are too few sheets. */
  | { readonly kind: 'first'; readonly boards: readonly (PlannedBoard | undefined)[] }
  /** `board` counts from 0; `spent` is the part of its time that is gone; a plan only where it is better than the last. */
  | { readonly kind: 'at-work'; readonly board: number; readonly spent: number; readonly planned?: PlannedBoard }
  | { readonly kind: 'board-done'; readonly board: number; readonly planned: PlannedBoard; readonly isEnded: boolean }
  | { readonly kind: 'done' };

export interface TurnSetup {
  /** ms, from any beginning. */
  readonly now: () => number;
  /** Time for each board, ms; less where its best is proven before. */
  readonly each: number;
  /** Between two words on the way, ms. */
  readonly between: number;
  readonly tell: (news: PlannerNews) => void;
}

export function planInTurn(asks: readonly BoardAsk[], { now, each, between, tell }: TurnSetup): void {
  const first = asks.map((one) => planBoard(one, { goOn: () => false }));
  tell({ kind: 'first', boards: first });
  asks.forEach((one, board) => {
    if (!first[board]) return;
    const began = now();
    let told = began;
    let isEnded = true;
    let better: (() => SheetPlan) | undefined;
    const planned = planBoard(one, {
      onBetter: (draw) => (better = draw),
      goOn: () => {
        const time = now();
        if (time - began >= each) return (isEnded = false);
        if (time - told >= between) {
          told = time;
          const { board: name, isPriced, ask } = one;
          const news = better ? { planned: { board: name, isPriced, ask, plan: better() } } : {};
          better = undefined;
          tell({ kind: 'at-work', board, spent: (time - began) / each, ...news });
        }
        return true;
      },
    });
    if (planned) tell({ kind: 'board-done', board, planned, isEnded });
  });
  tell({ kind: 'done' });
}
