/** `--use`: takes what a plan needs from the file of the stock, and puts back what is worth keeping. */
import { Option } from 'commander';
import { bad, good, type Problem, type Result } from '../core/problem';
import type { PlannedBoard } from '../core/sheets/planned-board';
import type { KeepRule } from '../core/sheets/remnants';
import type { StockSheet } from '../core/sheets/stock-sheet';
import { stepsOf, usePlans, type BoardUse, type StockAmount } from '../core/sheets/use-plan';
import { useWords } from '../core/sheets/use-words';
import type { Showing } from '../core/units';
import { machineProblem } from './refuse';
import { useStockFile } from './stock-file';
import type { World } from './world';

export function useOption(): Option {
  return new Option('--use', 'take the sheets from the file of the stock, and put back what is kept of them');
}

/** What is wrong with asking for it. @param file of the stock, as it was named. */
export function useMisused(file: string | undefined): Problem[] {
  if (file === undefined) return [machineProblem('failed', 'Whose stock is used? Name its file with --stock.')];
  return file === '-' ? [machineProblem('failed', 'Standard input can’t be changed: name the stock’s file.')] : [];
}

export interface Used {
  readonly uses: readonly BoardUse[];
  readonly words: readonly string[];
}

interface ToUse {
  readonly planned: readonly PlannedBoard[];
  /** That was planned from. */
  readonly stock: readonly StockSheet[];
  readonly rule: KeepRule;
  readonly showing: Showing;
}

export async function usePlanned(
  file: string,
  { planned, stock, rule, showing }: ToUse,
  world: World,
): Promise<Result<Used>> {
  const uses = usePlans(planned, stock, rule);
  const words = useWords(uses, showing);
  const done = await useStockFile(file, stepsOf(uses), words, showing, world);
  return done.ok ? good({ uses, words }) : bad(done.problems);
}

/** 1 where the stock is not as it was, 2 where its file can't be used. */
export function stockExit(problems: readonly Problem[]): 1 | 2 {
  return problems.some(({ code }) => IN_THE_STOCK.has(code)) ? 1 : 2;
}

const IN_THE_STOCK = new Set(['stock-used-up', 'put-back-used', 'no-use-to-take-back']);

/** As data, lengths in mm. */
export function usedData({ uses }: Used): object[] {
  const amounts = (list: readonly StockAmount[]) =>
    list.map(({ row: { price: _, count: __, ...row }, ...more }) => ({ ...row, ...more }));
  return uses.map(({ board, takes, puts, buys }) => ({
    board,
    takes: amounts(takes),
    puts: amounts(puts),
    buys: amounts(buys),
  }));
}
