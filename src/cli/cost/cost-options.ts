/** The words that `cost` takes. */
import type { PaperName } from '../../bridge';
import { LONGEST } from '../../core/cost/read-value';
import type { Problem } from '../../core/problem';

export const COST_PAPERS = ['letter', 'legal', 'tabloid', 'a4', 'a3'] as const satisfies readonly PaperName[];

export interface CostOptions {
  readonly shelf?: string;
  readonly prices: string;
  readonly moulding?: string;
  readonly compare?: true;
  readonly againstCustom?: true;
  readonly proposal?: string;
  readonly withoutPrices?: true;
  readonly for?: string;
  readonly sheet?: string;
  readonly paper?: (typeof COST_PAPERS)[number];
  readonly replace?: true;
  readonly json?: true;
  readonly csv?: true;
}

/** Words that mean nothing as they stand. */
export function misusedWords({ for: customer, proposal }: CostOptions): Problem[] {
  if (customer === undefined) return [];
  const wrong = (message: string): Problem => ({ code: 'option-misused', severity: 'error', at: '--for', message });
  if (proposal === undefined) return [wrong('--for names the customer, whom only a proposal tells; give --proposal FILE too.')]; // prettier-ignore
  const { length } = customer.trim();
  return length <= LONGEST ? [] : [wrong(`The customer’s name has ${length} letters, where there is room for ${LONGEST} at the most.`)]; // prettier-ignore
}
