/** Uses planned boards: takes their sheets from the user's stock, puts back what is worth keeping, and says what it did. */
import type { PlannedBoard } from '../../core/sheets/planned-board';
import type { KeepRule } from '../../core/sheets/remnants';
import type { StockSheet } from '../../core/sheets/stock-sheet';
import { stockWork } from '../../core/sheets/stock-work';
import { stepsOf, usePlans } from '../../core/sheets/use-plan';
import { useWords } from '../../core/sheets/use-words';
import type { Showing } from '../../core/units';
import type { Workbench } from '../workbench';
import { changeKeptBy } from './change-kept';

export interface SheetsToUse {
  readonly planned: readonly PlannedBoard[];
  /** The stock that was planned from. */
  readonly stock: readonly StockSheet[];
  readonly rule: KeepRule;
  readonly showing: Showing;
}

/** True where it was done; where others have used a sheet meanwhile, nothing is changed and it is told which. */
export function useSheets(bench: Workbench, { planned, stock, rule, showing }: SheetsToUse): Promise<boolean> {
  const uses = usePlans(planned, stock, rule);
  const lines = useWords(uses, showing);
  const work = stockWork(stepsOf(uses), showing, 'use', lines);
  return changeKeptBy(bench, bench.stock, work, `${lines.join('. ')}.`);
}
