/** Jobs from files whose costs stand beside those of the one on the screen. */
import type { CostJob } from '../costs/costs-desk.svelte';
import type { Workbench } from '../workbench';
import { chooseJobFile, readLaid, whyNot } from './sheet-jobs';

/** Asks for a file and adds its job. */
export async function addCostJob(bench: Workbench): Promise<void> {
  const { costs, file, dialogs, notice } = bench;
  const path = await chooseJobFile(
    bench,
    costs.how === 'together' ? 'A job of the same order' : 'A job to compare with',
  );
  if (path === undefined) return;
  if (path === file.path) return notice.fail('That job is the one on the screen; it is there anyway.');
  if (costs.others.some((one) => one.path === path)) return notice.fail('That job is there already.');
  const read = await readLaid(bench, path);
  if ('failure' in read) return dialogs.tell({ title: 'The job could not be added', text: read.failure, ...(read.problems ? { problems: read.problems } : {}) }); // prettier-ignore
  costs.others = [...costs.others, { path, title: read.laid.job.title, read }];
  notice.say(`“${read.laid.job.title}” ${costs.how === 'together' ? 'is reckoned with it' : 'stands beside it'}.`);
}

/** Reads all of them anew, since another window may have changed one; what can't be read stays in the list and says why. */
export async function readCostJobsAnew(bench: Workbench): Promise<void> {
  const { costs } = bench;
  for (const { path } of costs.others) {
    const read = await readLaid(bench, path);
    costs.others = costs.others.map((one): CostJob => {
      if (one.path !== path) return one;
      return 'failure' in read
        ? { path, title: one.title, wrong: whyNot(read) }
        : { path, title: read.laid.job.title, read };
    });
  }
}
