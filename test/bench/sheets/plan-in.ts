/** Plans within so much processor time, judged; and the same pieces by the best open packer on npm that cuts edge to edge. */
import { packer } from 'guillotine-packer';
import type { SheetsAsk } from '../../../src/core/sheets/ask';
import type { SheetPlan } from '../../../src/core/sheets/plan';
import { planSteps, type PlanStep } from '../../../src/core/sheets/plan-sheets';
import { wrongInPlan } from '../../core/sheets/check-sheet-plan';

export interface Timed {
  readonly plan: SheetPlan;
  readonly firstMs: number;
  /** The most of this process's memory that was seen meanwhile, MB. */
  readonly memory: number;
}

/** Of this process alone, so that a busy machine does not count, ms. */
export function stopwatch(): () => number {
  const before = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  };
}

export function planIn(ask: SheetsAsk, limit: number): Timed {
  const spent = stopwatch();
  let [firstMs, memory] = [NaN, 0];
  let last: PlanStep | undefined;
  for (const step of planSteps(ask)) {
    if (!last) {
      step.draw();
      firstMs = spent();
    }
    last = step;
    memory = Math.max(memory, process.memoryUsage.rss() / 1e6);
    if (spent() >= limit) break;
  }
  const plan = last?.draw();
  if (!plan) throw new Error('the bench has a set that no sheets hold');
  const wrong = wrongInPlan(ask, plan);
  if (wrong.length > 0) throw new Error(wrong[0]);
  return { plan, firstMs, memory };
}

/** What the peer's sheets of the one size cost that is best for it, since it knows but one; a saw is added on all sides. */
export function peerCost({ pieces, stock, kerf, aim }: SheetsAsk): number {
  const items = pieces.flatMap(({ width, height, count }) =>
    Array.from({ length: count }, () => ({ name: '', width: width + kerf, height: height + kerf })),
  );
  const allowRotation = pieces.every(({ mayTurn }) => mayTurn);
  const costs = stock.map(({ width, height, cost }) => {
    const fits = items.every((item) => (item.width <= width + kerf && item.height <= height + kerf) || (allowRotation && item.height <= width + kerf && item.width <= height + kerf)); // prettier-ignore
    if (!fits) return Infinity;
    const sheets = packer({ binWidth: width + kerf, binHeight: height + kerf, items }, { kerfSize: 0, allowRotation });
    const packed = (sheets ?? []).reduce((sum, sheet) => sum + sheet.length, 0);
    if (packed !== items.length) throw new Error('the peer has left pieces out');
    return (sheets?.length ?? 0) * (aim === 'sheets' ? 1 : cost);
  });
  return Math.min(...costs);
}
