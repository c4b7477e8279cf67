/** What all boards of a plan cost together. */
import { moneyText, ofParts, sumOf, type Money } from '../money';
import { listed } from '../phrases';
import { COST_PLACES } from './board-stock';
import type { PlannedBoard } from './planned-board';

type Paid = Pick<PlannedBoard, 'plan' | 'isPriced'>;

/** What the sheets of one board cost together; undefined where they have no prices. */
export function paidFor({ plan, isPriced }: Paid): Money | undefined {
  if (!isPriced) return undefined;
  return ofParts(plan.sheets.reduce((sum, { stock }) => sum + stock.cost, 0), COST_PLACES); // prettier-ignore
}

/** The same in words; empty where they have no prices. */
export function paidText(board: Paid): string {
  const paid = paidFor(board);
  return paid ? moneyText(paid) : '';
}

export interface PlanTotal {
  /** Of all boards; undefined where one has no price. */
  readonly cost?: Money;
  /** Boards that have no price. */
  readonly unpriced: readonly string[];
}

export function planTotal(boards: readonly PlannedBoard[]): PlanTotal {
  const unpriced = boards.filter(({ isPriced }) => !isPriced).map(({ board }) => board);
  return unpriced.length > 0 ? { unpriced } : { cost: sumOf(boards.flatMap((one) => paidFor(one) ?? [])), unpriced };
}

/** Such as `All boards together: 39.00.`; which boards have no price where some have none. Empty of a single board, and where none has. */
export function totalWords(boards: readonly PlannedBoard[]): string {
  const { cost, unpriced } = planTotal(boards);
  if (boards.length < 2 || unpriced.length === boards.length) return '';
  if (cost) return `All boards together: ${moneyText(cost)}.`;
  return `All boards together: no sum, since there is no price of ${listed(unpriced)}.`;
}
