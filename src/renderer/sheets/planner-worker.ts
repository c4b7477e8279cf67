/** Plans sheets beside the screen, so that it goes on moving; whoever no longer wants the answer ends the worker. */
import type { BoardAsk } from '../../core/sheets/board-asks';
import { planInTurn } from '../../core/sheets/plan-in-turn';

/** What a worker is handed. */
export interface PlannerOrder {
  readonly asks: readonly BoardAsk[];
  /** Time for each board, ms. */
  readonly each: number;
}

/** Between two words on the way, ms. */
const BETWEEN = 100;

onmessage = ({ data: { asks, each } }: MessageEvent<PlannerOrder>) =>
  planInTurn(asks, { now: () => performance.now(), each, between: BETWEEN, tell: (news) => postMessage(news) });
