/** The screen's side of planning: one worker at work at most, another that waits, and nothing heard of one that was ended. */
import type { PlannerNews } from '../../core/sheets/plan-in-turn';
import type { PlannerOrder } from './planner-worker';

export class Planner {
  #busy: Worker | undefined;
  /** Started before it is wanted, since starting one takes longer than a first plan. */
  #spare: Worker | undefined;

  /** Gets a worker ready. */
  warm(): void {
    this.#spare ??= new Worker(new URL('./planner-worker.ts', import.meta.url), { type: 'module' });
  }

  /** Ends what goes on and begins anew. @param fail with what kept the worker from answering. */
  start(order: PlannerOrder, hear: (news: PlannerNews) => void, fail: (why: string) => void): void {
    this.stop();
    this.warm();
    const worker = this.#spare!;
    this.#spare = undefined;
    this.#busy = worker;
    worker.onmessage = ({ data }: MessageEvent<PlannerNews>) => {
      if (this.#busy !== worker) return;
      hear(data);
      if (data.kind === 'first') this.warm();
      if (data.kind === 'done') this.stop();
    };
    worker.onerror = ({ message }) => {
      if (this.#busy !== worker) return;
      this.stop();
      fail(message);
    };
    worker.postMessage(order);
  }

  stop(): void {
    this.#busy?.terminate();
    this.#busy = undefined;
  }
}
