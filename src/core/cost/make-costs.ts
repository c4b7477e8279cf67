/** What a job costs, several together, variants of one, or one ready-made against made to size: what screen, terminal and paper tell. */
import type { Job } from '../job/job';
import type { LaidJob } from '../pieces/pieces';
import { bad, good, type Result } from '../problem';
import type { Shelf } from '../shelf/shelf';
import type { BoardsUsed } from './boards-used';
import { countProblems, type CostWay } from './compare';
import { costSheets, type Costed } from './cost-sheet';
import { variantName } from './cost-words';
import { otherPictures } from './one-picture';
import { planBoards } from './plan-boards';
import type { PriceList } from './price-list';
import { readyOrMade } from './ready-or-made';

interface Beside {
  readonly shelf: Shelf;
  readonly prices: PriceList;
  /** Name of a moulding of the shelf, in place of the jobs' own; against custom: that which the frame to size is made of. */
  readonly moulding?: string | undefined;
}

/** Against custom the frame that the job has of its own is not asked, and need not fit. */
export type CostsAsk = Beside &
  (
    | { readonly how: 'against custom'; readonly job: Job }
    | {
        readonly how: Exclude<CostWay, 'against custom'>;
        readonly jobs: readonly LaidJob[];
        /** What a plan of sheets for these jobs used; undefined: it is planned where several share sheets. */
        readonly boards?: BoardsUsed | undefined;
      }
  );

export interface CostsMade {
  readonly costed: readonly Costed[];
  /** Of the jobs or variants. */
  readonly names: readonly string[];
  /** True where they are held beside one another, as variants are, which have no sum. */
  readonly isCompared: boolean;
}

/** Fails where a frame can't be made, or where there are too few jobs to compare. */
export function makeCosts(ask: CostsAsk): Result<CostsMade> {
  return ask.how === 'against custom' ? againstCustom(ask) : ofJobs(ask);
}

function ofJobs(ask: Exclude<CostsAsk, { how: 'against custom' }>): Result<CostsMade> {
  const { jobs, how, shelf, prices, moulding } = ask;
  const wrong = countProblems(jobs.length, how);
  if (wrong.length > 0) return bad(wrong);
  const isCompared = how === 'compared';
  const isShared = jobs.length > 1 && !isCompared && prices.board.charge === 'by sheet used';
  const boards = ask.boards ?? (isShared ? planBoards(jobs, shelf) : undefined);
  const made = costSheets({
    jobs,
    shelf,
    prices,
    ...(boards ? { boards } : {}),
    ...(moulding === undefined ? {} : { moulding }),
  });
  if (!made.ok) return made;
  const titles = jobs.map(({ job }) => job.title);
  const numbered = titles.map((title, index) => (titles.length === 1 ? title : `${index + 1}  ${title}`));
  const problems = [...(isCompared ? otherPictures(jobs.map(({ job }) => job)) : []), ...made.problems];
  return good({ costed: made.value, names: isCompared ? toldApart(titles) : numbered, isCompared }, problems);
}

/** Variants of one job are often called the same. */
function toldApart(titles: readonly string[]): string[] {
  const isAlone = (title: string) => titles.filter((other) => other === title).length === 1;
  const place = (index: number) => titles.slice(0, index + 1).filter((other) => other === titles[index]).length;
  return titles.map((title, index) => (isAlone(title) ? title : `${title} (${place(index)})`));
}

function againstCustom({
  job,
  shelf,
  prices,
  moulding,
}: Extract<CostsAsk, { how: 'against custom' }>): Result<CostsMade> {
  const found = readyOrMade(job, shelf, moulding);
  if (!found.ok) return found;
  const made = costSheets({ jobs: found.value, shelf, prices });
  if (!made.ok) return made;
  const costs = { costed: made.value, names: found.value.map(variantName), isCompared: true };
  return good(costs, [...found.problems, ...made.problems]);
}
