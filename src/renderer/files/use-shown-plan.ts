/** Uses the plan on the screen once it was said what that takes from the stock, and takes that back again. */
import type { PlannedBoard } from '../../core/sheets/planned-board';
import { stockWork, type StockStep } from '../../core/sheets/stock-steps';
import { stepsOf, usePlans } from '../../core/sheets/use-plan';
import { useWords } from '../../core/sheets/use-words';
import type { Workbench } from '../workbench';
import { changeKeptBy, takeBack } from './change-kept';
import { useSheets } from './use-sheets';

export async function useShownPlan(bench: Workbench): Promise<void> {
  const { desk, stock, session, dialogs } = bench;
  const { showing } = session;
  desk.planning.stop();
  const planned = desk.boards.filter((one): one is PlannedBoard => one !== undefined);
  const uses = usePlans(planned, stock.list, desk.keep);
  const lines = useWords(uses, showing);
  const answer = await dialogs.choose({
    title: 'Use this plan?',
    text: 'This is what it does to your stock; it can be taken back.',
    lines,
    choices: [
      { value: 'use', label: 'Use it', weight: 'main' },
      { value: 'stay', label: 'Not now' },
    ],
  });
  if (answer !== 'use') return;
  // The stock with these sheets taken would at once be planned anew.
  desk.used = { steps: stepsOf(uses), lines, change: stock.changes + 1 };
  if (!(await useSheets(bench, { planned, stock: stock.list, rule: desk.keep, showing }))) desk.used = undefined;
}

/** As the last change of the stock where it is that, else by what it took and put. */
export async function takeUseBack(bench: Workbench): Promise<void> {
  const { desk, stock, session } = bench;
  const { used } = desk;
  if (!used) return;
  if (stock.changes === used.change) {
    await takeBack(bench, stock);
    if (stock.changes > used.change) desk.used = undefined;
    return;
  }
  const back = used.steps.map(({ row, takes, puts }): StockStep => ({ row, takes: puts, puts: takes }));
  const words = 'What the plan took and put was taken back.';
  if (await changeKeptBy(bench, stock, stockWork(back, session.showing, 'take back'), words)) desk.used = undefined;
}
