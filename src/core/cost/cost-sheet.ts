/** The cost sheet of a framing job: lines with their basis, and what they come to by the shop's own prices and rules. */
import { NO_MONEY, sumOf, type Money } from '../money';
import { chooseMoulding, mouldingProblems, ownMoulding } from '../pieces/choose-moulding';
import { jobPieces, type JobPieces } from '../pieces/job-pieces';
import type { LaidJob } from '../pieces/pieces';
import { bad, good, isError, type Result } from '../problem';
import type { Moulding, Shelf } from '../shelf/shelf';
import { showingOf } from '../units';
import type { BoardsUsed } from './boards-used';
import type { LinesAsk } from './cost-ask';
import type { Currency } from './currencies';
import { fixingLines } from './fixing-lines';
import { GROUPS, linesIn, type CostGroup, type PricedLine } from './line';
import { materialLines } from './material-lines';
import type { PriceList } from './price-list';
import { sumUp, type Sums } from './sum-up';
import { labourLines, matWorkLines } from './work-lines';

export interface CostSheet extends Sums {
  readonly title: string;
  readonly currency: Currency;
  readonly lines: readonly PricedLine[];
  /** Of the lines of each group. */
  readonly groups: Readonly<Record<CostGroup, Money>>;
  /** What is in no sum, as the lines name it. */
  readonly notCounted: readonly string[];
  /** True where there is such a thing: then all sums but the rounding are the least that they can be. */
  readonly isOpen: boolean;
}

/** A job with what it is made of and what that costs. */
export interface Costed extends LaidJob {
  readonly made: JobPieces;
  readonly sheet: CostSheet;
}

export interface CostAsk {
  readonly jobs: readonly LaidJob[];
  readonly shelf: Shelf;
  readonly prices: PriceList;
  /** Name of a moulding of the shelf, in place of the jobs' own. */
  readonly moulding?: string;
  /** What a plan of sheets for all these jobs used; without one each is cut from sheets of its own. */
  readonly boards?: BoardsUsed;
}

/** In the order of the jobs. Fails only where no such moulding is there, or it can't hold a frame. */
export function costSheets({ jobs, shelf, prices, moulding: name, boards }: CostAsk): Result<readonly Costed[]> {
  const chosen = name === undefined ? good(undefined) : chooseMoulding(name, shelf);
  if (!chosen.ok) return chosen;
  const mouldings = jobs.map(({ job }) => chosen.value ?? ownMoulding(job, shelf));
  const problems = jobs.flatMap((one, index) => {
    const moulding = mouldings[index];
    return moulding ? mouldingProblems(moulding, one) : [];
  });
  if (problems.some(isError)) return bad(problems);
  const costed = jobs.map((one, index) => {
    const share = boards ? { boards: { used: boards, job: index } } : {};
    return costOne(one, { shelf, prices, ...share }, mouldings[index]);
  });
  return good(costed, problems);
}

function costOne(
  { job, layout }: LaidJob,
  beside: Pick<LinesAsk, 'shelf' | 'prices' | 'boards'>,
  moulding: Moulding | undefined,
): Costed {
  const chosen = moulding ? { moulding } : {};
  const made = jobPieces(job, layout, chosen);
  return { job, layout, made, sheet: sheetOf({ job, layout, made, ...beside, ...chosen, showing: showingOf(job) }) };
}

function sheetOf(ask: LinesAsk): CostSheet {
  const { currency } = ask.prices;
  const lines = [
    ...linesIn('materials', currency, materialLines(ask)),
    ...linesIn('fixings', currency, fixingLines(ask)),
    ...linesIn('mat work', currency, matWorkLines(ask)),
    ...linesIn('labour', currency, labourLines(ask)),
  ];
  return {
    title: ask.job.title,
    currency,
    lines,
    groups: groupSums(lines),
    isOpen: lines.some(({ amount }) => !amount),
    notCounted: lines.flatMap(({ what, amount }) => (amount ? [] : [what])),
    ...sumUp(lines, ask.prices),
  };
}

function groupSums(lines: readonly PricedLine[]): CostSheet['groups'] {
  const sum = (of: CostGroup) =>
    lines.reduce((all, { group, amount }) => (group === of ? all.plus(amount ?? NO_MONEY) : all), NO_MONEY);
  return Object.fromEntries(GROUPS.map((group) => [group, sum(group)])) as Record<CostGroup, Money>;
}

/** What several jobs come to together: each is rounded by itself. */
export function totalOf(sheets: readonly CostSheet[]): Money {
  return sumOf(sheets.map(({ total }) => total));
}
