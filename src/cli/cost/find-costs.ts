/** Finds the jobs, the shelf and the price list that were named, and reckons what is asked of them. */
import { countProblems, type CostWay } from '../../core/cost/compare';
import { makeCosts, type CostsAsk, type CostsMade } from '../../core/cost/make-costs';
import type { Shop } from '../../core/cost/price-list';
import { good, type Problem } from '../../core/problem';
import type { CostOptions } from './cost-options';
import { understandJob, type NoJob } from '../read-job';
import { findJobs, oneByOne } from '../read-jobs';
import { findShelf } from '../shelf-option';
import type { World } from '../world';
import { machineProblem } from '../refuse';
import { findPrices } from './prices-option';

export interface CostsFound extends CostsMade {
  readonly ok: true;
  readonly shop: Shop;
  readonly problems: readonly Problem[];
}

export async function findCosts(
  names: readonly string[],
  options: CostOptions,
  world: World,
): Promise<CostsFound | NoJob> {
  const { compare, againstCustom, moulding } = options;
  const several = names.length > 1 ? 'together' : 'by itself';
  const how = againstCustom ? 'against custom' : compare ? 'compared' : several;
  const wrong = [...countProblems(names.length, how), ...pageMissing(options)];
  if (wrong.length > 0) return { ok: false, code: 2, problems: wrong };
  // What is wrong with a job is told before anything beside it.
  const found = await findSubject(how, names, world);
  if (!found.ok) return found;
  const shelf = options.shelf === undefined ? good([]) : await findShelf(options.shelf, world);
  const prices = await findPrices(options.prices, world);
  const beside = [...shelf.problems, ...prices.problems];
  if (!shelf.ok || !prices.ok) return { ok: false, code: 2, problems: beside };
  const made = makeCosts({ ...found.subject, shelf: shelf.value, prices: prices.value, moulding });
  const problems = [...beside, ...found.problems, ...made.problems];
  if (made.ok) return { ok: true, ...made.value, shop: prices.value.shop, problems };
  // A job for which no frame is there is right as it is; a moulding that is named is not.
  return { ok: false, code: againstCustom && moulding === undefined ? 1 : 2, problems };
}

function pageMissing({ withoutPrices, proposal }: CostOptions): Problem[] {
  if (!withoutPrices || proposal !== undefined) return [];
  return [machineProblem('failed', 'Which page is without prices? Name its file with --proposal, or leave out --without-prices.')]; // prettier-ignore
}

type Subject = Pick<Extract<CostsAsk, { how: 'against custom' }>, 'how' | 'job'> | Pick<Exclude<CostsAsk, { how: 'against custom' }>, 'how' | 'jobs'>; // prettier-ignore

async function findSubject(
  how: CostWay,
  names: readonly string[],
  world: World,
): Promise<{ readonly ok: true; readonly subject: Subject; readonly problems: readonly Problem[] } | NoJob> {
  if (how === 'against custom') {
    const opened = await understandJob(names[0] ?? '', world);
    return opened.ok ? { ok: true, subject: { how, job: opened.job }, problems: opened.problems } : opened;
  }
  const found = await findJobs(names, world);
  return found.ok ? { ok: true, subject: { how, jobs: oneByOne(found.jobs) }, problems: found.problems } : found;
}
