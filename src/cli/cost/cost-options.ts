/** The words that `cost` takes. */
import type { PaperName } from '../../bridge';

export const COST_PAPERS = ['letter', 'legal', 'tabloid', 'a4', 'a3'] as const satisfies readonly PaperName[];

export interface CostOptions {
  readonly shelf?: string;
  readonly prices: string;
  readonly moulding?: string;
  readonly compare?: true;
  readonly againstCustom?: true;
  readonly proposal?: string;
  readonly withoutPrices?: true;
  readonly sheet?: string;
  readonly paper?: (typeof COST_PAPERS)[number];
  readonly replace?: true;
  readonly json?: true;
  readonly csv?: true;
}
