/** Finds the jobs, the shelf and the price list that were named, and reckons what is asked of them. */
import type { BoardsUsed } from '../../core/cost/boards-used';
import { countProblems } from '../../core/cost/compare';
import { costSheets, type CostAsk, type Costed } from '../../core/cost/cost-sheet';
import { planBoards } from '../../core/cost/plan-boards';
import { readyOrMade } from '../../core/cost/ready-or-made';
import { variantName } from '../../core/cost/cost-words';
import type { Problem } from '../../core/problem';
import type { CostOptions } from './cost-options';
import { understandJob, type NoJob } from '../read-job';
import { findJobs } from '../read-jobs';
import { findShelf } from '../shelf-option';
import type { World } from '../world';
import { findPrices } from './prices-option';

export interface CostsFound {
  readonly ok: true;
  readonly costed: readonly Costed[];
  /** Of the jobs or variants. */
  readonly names: readonly string[];
  readonly isCompared: boolean;
  readonly problems: readonly Problem[];
}

type Beside = Pick<CostAsk, 'shelf' | 'prices'>;

export async function findCosts(
  names: readonly string[],
  options: CostOptions,
  world: World,
): Promise<CostsFound | NoJob> {
  const { compare, againstCustom, moulding } = options;
  const how = againstCustom ? 'against custom' : compare ? 'compared' : 'by itself';
  const wrong = countProblems(names.length, how);
  if (wrong.length > 0) return { ok: false, code: 2, problems: wrong };
  const shelf = await findShelf(options.shelf, world);
  const prices = await findPrices(options.prices, world);
  const beside = [...shelf.problems, ...prices.problems];
  if (!shelf.ok || !prices.ok) return { ok: false, code: 2, problems: beside };
  const given = { shelf: shelf.value, prices: prices.value };
  const found = againstCustom ? await variants(names[0] ?? '', given, moulding, world) : await jobs(names, given, options, world); // prettier-ignore
  return { ...found, problems: [...beside, ...found.problems] };
}

async function jobs(
  names: readonly string[],
  beside: Beside,
  { moulding, compare }: CostOptions,
  world: World,
): Promise<CostsFound | NoJob> {
  const found = await findJobs(names, world);
  if (!found.ok) return found;
  const isShared = found.jobs.length > 1 && !compare && beside.prices.board.charge === 'by sheet used';
  const boards: { boards?: BoardsUsed } = isShared ? { boards: planBoards(found.jobs, beside.shelf) } : {};
  const made = costSheets({ jobs: found.jobs, ...beside, ...boards, ...(moulding === undefined ? {} : { moulding }) });
  if (!made.ok) return { ok: false, code: 2, problems: made.problems };
  const titles = found.jobs.map(({ job }, index) =>
    found.jobs.length === 1 ? job.title : `${index + 1}  ${job.title}`,
  );
  return {
    ok: true,
    costed: made.value,
    names: compare ? found.jobs.map(({ job }) => job.title) : titles,
    isCompared: compare ?? false,
    problems: [...found.problems, ...made.problems],
  };
}

/** The frame that the job has of its own is not asked, and need not fit. */
async function variants(
  name: string,
  beside: Beside,
  moulding: string | undefined,
  world: World,
): Promise<CostsFound | NoJob> {
  const opened = await understandJob(name, world);
  if (!opened.ok) return opened;
  const found = readyOrMade(opened.job, beside.shelf, moulding);
  if (!found.ok)
    return { ok: false, code: moulding === undefined ? 1 : 2, problems: [...opened.problems, ...found.problems] };
  const made = costSheets({ jobs: found.value, ...beside });
  if (!made.ok) return { ok: false, code: 2, problems: made.problems };
  return {
    ok: true,
    costed: made.value,
    names: found.value.map(variantName),
    isCompared: true,
    problems: [...opened.problems, ...found.problems, ...made.problems],
  };
}
