/** Finds the jobs, the shelf and the price list that were named, and reckons what is asked of them. */
import type { BoardsUsed } from '../../core/cost/boards-used';
import { countProblems } from '../../core/cost/compare';
import { costSheets, type CostAsk, type Costed } from '../../core/cost/cost-sheet';
import { planBoards } from '../../core/cost/plan-boards';
import { readyOrMade } from '../../core/cost/ready-or-made';
import { variantName } from '../../core/cost/cost-words';
import type { Job } from '../../core/job/job';
import type { LaidJob } from '../../core/pieces/pieces';
import { good, type Problem } from '../../core/problem';
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
  // What is wrong with a job is told before anything beside it.
  const given = againstCustom ? await understandJob(names[0] ?? '', world) : await findJobs(names, world);
  if (!given.ok) return given;
  const shelf = options.shelf === undefined ? good([]) : await findShelf(options.shelf, world);
  const prices = await findPrices(options.prices, world);
  const beside = [...shelf.problems, ...prices.problems];
  if (!shelf.ok || !prices.ok) return { ok: false, code: 2, problems: beside };
  const by = { shelf: shelf.value, prices: prices.value };
  const found = 'jobs' in given ? jobs(given.jobs, by, options) : variants(given.job, by, moulding);
  return { ...found, problems: [...beside, ...given.problems, ...found.problems] };
}

function jobs(found: readonly LaidJob[], beside: Beside, { moulding, compare }: CostOptions): CostsFound | NoJob {
  const isShared = found.length > 1 && !compare && beside.prices.board.charge === 'by sheet used';
  const boards: { boards?: BoardsUsed } = isShared ? { boards: planBoards(found, beside.shelf) } : {};
  const made = costSheets({ jobs: found, ...beside, ...boards, ...(moulding === undefined ? {} : { moulding }) });
  if (!made.ok) return { ok: false, code: 2, problems: made.problems };
  const titles = found.map(({ job }, index) => (found.length === 1 ? job.title : `${index + 1}  ${job.title}`));
  return {
    ok: true,
    costed: made.value,
    names: compare ? found.map(({ job }) => job.title) : titles,
    isCompared: compare ?? false,
    problems: made.problems,
  };
}

/** The frame that the job has of its own is not asked, and need not fit. */
function variants(job: Job, beside: Beside, moulding: string | undefined): CostsFound | NoJob {
  const found = readyOrMade(job, beside.shelf, moulding);
  if (!found.ok) return { ok: false, code: moulding === undefined ? 1 : 2, problems: found.problems };
  const made = costSheets({ jobs: found.value, ...beside });
  if (!made.ok) return { ok: false, code: 2, problems: made.problems };
  return {
    ok: true,
    costed: made.value,
    names: found.value.map(variantName),
    isCompared: true,
    problems: [...found.problems, ...made.problems],
  };
}
