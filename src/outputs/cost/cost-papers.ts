/** The papers of costs by their kinds: a proposal with prices or without, and the cost sheets. */
import type { CostPaperKind, PaperName, Progress } from '../../bridge';
import type { CostsMade } from '../../core/cost/make-costs';
import type { OfferHead } from '../../core/cost/offer-words';
import { good, isError, type Problem, type Result } from '../../core/problem';
import type { Showing } from '../../core/units';
import type { Fonts, MakerHooks } from '../context';
import { makeCostSheets } from './cost-sheets';
import type { CostsOnPaper } from './costs-on-paper';
import { makeProposal } from './proposal';

export interface CostPaper {
  readonly kind: CostPaperKind;
  readonly name: string;
  readonly bytes: Uint8Array;
}

interface PapersAsk {
  readonly only: readonly CostPaperKind[];
  readonly paper: PaperName;
  readonly showing: Showing;
  readonly baseName: string;
  readonly head: OfferHead;
}

interface PapersHooks {
  readonly fonts: Fonts;
  readonly onProgress?: (progress: Progress) => void;
  readonly signal?: AbortSignal;
}

interface Kind {
  /** Ends the file's name. */
  readonly ending: string;
  readonly make: (context: CostsOnPaper, isCompared: boolean, hooks: MakerHooks) => Promise<Result<Uint8Array>>;
}

const KINDS: Readonly<Record<CostPaperKind, Kind>> = {
  proposal: {
    ending: '-proposal.pdf',
    make: (context, isCompared, hooks) => makeProposal(context, { withPrices: true, isCompared }, hooks),
  },
  'proposal-without-prices': {
    ending: '-proposal-without-prices.pdf',
    make: (context, isCompared, hooks) => makeProposal(context, { withPrices: false, isCompared }, hooks),
  },
  'cost-sheet': {
    ending: '-cost-sheet.pdf',
    make: (context, isCompared, hooks) => makeCostSheets(context, { isCompared }, hooks),
  },
};

export function costPaperName(kind: CostPaperKind, baseName: string): string {
  return baseName + KINDS[kind].ending;
}

/** With warnings of signs that the type on paper does not have. Rejects with the signal's reason when cancelled. */
export async function makeCostPapers(
  { costed, names, isCompared }: CostsMade,
  { only, paper, showing, baseName, head }: PapersAsk,
  { fonts, onProgress, signal }: PapersHooks,
): Promise<Result<readonly CostPaper[]>> {
  const variants = costed.map((one, index) => ({ ...one, name: names[index] ?? '' }));
  const context: CostsOnPaper = { variants, showing, paper, fonts, head };
  const papers: CostPaper[] = [];
  const problems: Problem[] = [];
  for (const [index, kind] of only.entries()) {
    signal?.throwIfAborted();
    const report = (done: number, step: string) => onProgress?.({ done: (index + done) / only.length, step });
    const made = await KINDS[kind].make(context, isCompared, {
      onProgress: report,
      ...(signal ? { signal } : {}),
    });
    if (!made.ok) return { ok: false, problems: made.problems.filter(isError) };
    problems.push(...made.problems.filter(({ message }) => !problems.some((one) => one.message === message)));
    papers.push({ kind, name: costPaperName(kind, baseName), bytes: made.value });
  }
  return good(papers, problems);
}
