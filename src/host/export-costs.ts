/** Puts what jobs cost on paper: reckons it from their texts, the shelf and the price list, then writes all files or none. */
import type { HostCalls, Reply } from '../bridge';
import { boardsFrom } from '../core/cost/boards-used';
import { countProblems } from '../core/cost/compare';
import { makeCosts, type CostsAsk, type CostsMade } from '../core/cost/make-costs';
import type { Shop } from '../core/cost/price-list';
import { readPrices } from '../core/cost/read-prices';
import { bad, good, isError, type Problem, type Result } from '../core/problem';
import { parseJobText } from '../core/job/text';
import { readShelf } from '../core/shelf/read-shelf';
import type { Shelf } from '../core/shelf/shelf';
import { costPaperName, makeCostPapers } from '../outputs/cost/cost-papers';
import { checkBaseName } from './base-name';
import { done, failed } from './failure';
import { layJob } from './laid-job';
import { writePapers, type PaperHooks } from './write-papers';
import { checkFree } from './write-together';

type Call = HostCalls['exportCosts'];
export type CostsRequest = Omit<Call['request'], 'id'>;

/** The files made, or the problems of jobs and price list, or why they could not be written. */
export async function exportCosts(request: CostsRequest, hooks: PaperHooks): Promise<Reply<Call['reply']>> {
  const { options, folder, baseName, replace } = request;
  const name = checkBaseName(baseName);
  if (!name.ok) return name;
  const names = options.only.map((kind) => costPaperName(kind, baseName));
  const free = await checkFree(folder, names, replace);
  if (!free.ok) return free;
  const costs = reckon(request);
  if (!costs.ok) return costs;
  const { only, paper, showing, customer } = options;
  const head = { shop: costs.value.shop, customer };
  return writePapers({ folder, replace }, hooks, async (setup) => {
    const papers = await makeCostPapers(costs.value, { only, paper, showing, baseName, head }, setup);
    if (!papers.ok) return failed('failed', firstOf(papers.problems));
    return done({ files: papers.value, problems: [...costs.value.problems, ...papers.problems] });
  });
}

type Reckoned = CostsMade & { readonly problems: readonly Problem[]; readonly shop: Shop };

function reckon(request: CostsRequest): Reply<Reckoned> {
  const shelf = readShelf(request.shelf);
  if (!shelf.ok) return failed('failed', `The shelf can’t be read: ${firstOf(shelf.problems)}`);
  const prices = readPrices(request.prices);
  if (!prices.ok) return failed('failed', `The price list can’t be read: ${firstOf(prices.problems)}`);
  const found = subjectOf(request, shelf.value);
  if (!found.ok) return withErrors('A job has errors; mend them, then export again', found.problems);
  const { moulding } = request.options;
  const made = makeCosts({ ...found.value, shelf: shelf.value, prices: prices.value, moulding });
  if (!made.ok) return withErrors('The costs can’t be reckoned', made.problems);
  return done({ ...made.value, shop: prices.value.shop, problems: [...found.problems, ...made.problems] });
}

type Subject =
  | Pick<Extract<CostsAsk, { how: 'against custom' }>, 'how' | 'job'>
  | Pick<Exclude<CostsAsk, { how: 'against custom' }>, 'how' | 'jobs' | 'boards'>;

function subjectOf({ jobs, options: { how }, boards }: CostsRequest, shelf: Shelf): Result<Subject> {
  const wrong = countProblems(jobs.length, how);
  if (wrong.length > 0) return bad(wrong);
  if (how === 'against custom') {
    const read = parseJobText(jobs[0] ?? '');
    return read.ok ? good({ how, job: read.value.job }, read.problems) : read;
  }
  const laid = jobs.map((text) => layJob(text, shelf));
  const problems = laid.flatMap((one) => one.problems);
  const values = laid.flatMap((one) => (one.ok ? one.value : []));
  if (values.length < laid.length) return bad(problems);
  return good({ how, jobs: values, boards: boards && boardsFrom(boards) }, problems);
}

function withErrors(what: string, problems: readonly Problem[]): Reply<never> {
  return { ok: false, failure: { code: 'job-has-errors', message: `${what}: ${firstOf(problems)}`, problems } };
}

function firstOf(problems: readonly Problem[]): string {
  return problems.find(isError)?.message ?? '';
}
