/** Adds jobs to those that are planned together: from their files, or from a list of jobs, such as a show is written with. */
import { MOST_COPIES, readJobList } from '../../core/show/job-list';
import type { SheetJob } from '../session/look.svelte';
import type { Workbench } from '../workbench';
import { JOB_ENDINGS } from './endings';
import { readLaid, type NotLaid } from './sheet-jobs';

interface Chosen {
  readonly path: string;
  readonly copies: number;
}

/** Asks for files and adds their jobs, as often as a list says; one that is there already gets so many copies more. */
export async function addSheetJobs(bench: Workbench): Promise<void> {
  const { look, file, notice } = bench;
  const files = await chooseFiles(bench);
  if (files.length === 0) return;
  const wrong: NotLaid[] = [];
  const chosen = await chosenJobs(bench, files, wrong);
  const others = chosen.filter(({ path }) => path !== file.path);
  const own = chosen.find(({ path }) => path === file.path);
  // That on the screen is planned anyway; a list says how often.
  if (own && files.some(isList)) look.copies = own.copies;
  else if (own && others.length === 0) return notice.fail('That job is the one on the screen; it is planned anyway.');
  const added: SheetJob[] = [];
  for (const { path, copies } of others) {
    if (look.sheetJobs.some((one) => one.path === path)) continue;
    const read = await readLaid(bench, path);
    if ('failure' in read) wrong.push(read);
    else added.push({ path, title: read.laid.job.title, copies, laid: read.laid });
  }
  const moreOf = (job: SheetJob) => others.find(({ path }) => path === job.path)?.copies ?? 0;
  const again = look.sheetJobs.filter((one) => moreOf(one) > 0).length;
  // All at once, since each change is planned anew.
  look.sheetJobs = [
    ...look.sheetJobs.map((one) => ({ ...one, copies: Math.min(one.copies + moreOf(one), MOST_COPIES) })),
    ...added,
  ];
  if (added.length + again > 0) notice.say(addedWords(added, again));
  await tellWrong(bench, wrong);
}

function isList(path: string): boolean {
  return /\.csv$/i.test(path);
}

/** Each file once. @param wrong is given what is wrong with lists. */
async function chosenJobs({ host }: Workbench, files: readonly string[], wrong: NotLaid[]): Promise<readonly Chosen[]> {
  const jobs = new Map<string, Chosen>();
  const add = (path: string, copies: number) =>
    jobs.set(path, { path, copies: copies + (jobs.get(path)?.copies ?? 0) });
  for (const path of files) {
    if (!isList(path)) {
      add(path, 1);
      continue;
    }
    const reply = await host.call('readJob', { path });
    const list = reply.ok ? readJobList(reply.value.text) : undefined;
    const folder = path.slice(0, Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
    if (!reply.ok) wrong.push({ failure: reply.failure.message });
    else if (list?.ok) for (const { file, copies } of list.value) add(folder + file, copies);
    else wrong.push({ failure: `“${path}” is no list of jobs.`, problems: list?.problems ?? [] });
  }
  return [...jobs.values()];
}

async function tellWrong({ dialogs }: Workbench, wrong: readonly NotLaid[]): Promise<void> {
  if (wrong.length === 0) return;
  const title = wrong.length === 1 ? 'The job could not be added' : `${wrong.length} jobs could not be added`;
  await dialogs.tell({
    title,
    text: wrong.map(({ failure }) => failure).join(' '),
    problems: wrong.flatMap(({ problems = [] }) => problems),
  });
}

function addedWords(added: readonly SheetJob[], again: number): string {
  const [one] = added;
  const more = added.length === 1 && one ? `“${one.title}” is planned too.` : added.length > 1 ? `${added.length} jobs are planned too.` : ''; // prettier-ignore
  const there = again === 1 ? 'One job was there; more copies of it are planned.' : again > 1 ? `${again} jobs were there; more copies of each are planned.` : ''; // prettier-ignore
  return [more, there].filter((words) => words !== '').join(' ');
}

async function chooseFiles({ host, info, dialogs }: Workbench): Promise<readonly string[]> {
  const title = 'Jobs to plan as well, or lists of them';
  if (info.kind === 'browser') return dialogs.chooseFiles({ title, action: 'Add it', actionOnMany: 'Add them', endings: [...JOB_ENDINGS, 'csv'] }); // prettier-ignore
  const reply = await host.call('pickJob', { title, of: 'job or list', many: true });
  return reply.ok ? (reply.value.paths ?? []) : [];
}
