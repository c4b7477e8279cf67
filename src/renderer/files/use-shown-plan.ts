/** Uses the plan on the screen once it was said what that takes from the stock, and takes that back again. */
import type { PlannedBoard } from '../../core/sheets/planned-board';
import { usePlans } from '../../core/sheets/use-plan';
import { useWords } from '../../core/sheets/use-words';
import type { Workbench } from '../workbench';
import { takeBack } from './change-kept';
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
  desk.use({ lines });
  const isDone = await useSheets(bench, { planned, stock: stock.list, rule: desk.keep, showing });
  const { lastChange } = stock;
  desk.use(isDone && lastChange !== undefined ? { lines, change: lastChange } : undefined);
}

export async function takeUseBack(bench: Workbench): Promise<void> {
  const { desk, stock } = bench;
  const number = desk.used?.change;
  if (number !== undefined) await takeBack(bench, stock, { number, words: 'What the plan took and put was taken back.' }); // prettier-ignore
}
