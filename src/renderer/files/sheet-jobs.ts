/** Jobs from files that are planned together with the one on the screen. */
import { buildProblems } from '../../core/build-problems';
import type { Job } from '../../core/job/job';
import { MOST_COPIES, readJobList } from '../../core/job/job-list';
import { readJob } from '../../core/job/read';
import type { WrittenJob } from '../../core/job/written';
import { layOut } from '../../core/layout/lay-out';
import type { Layout } from '../../core/layout/layout';
import { counted } from '../../core/phrases';
import { isError, type Problem } from '../../core/problem';
import type { Shelf } from '../../core/shelf/shelf';
import type { SheetJob } from '../session/look.svelte';
import type { Workbench } from '../workbench';
import { JOB_ENDINGS } from './endings';
import { readText } from './read-text';

type Laid =
  | { readonly ok: true; readonly laid: { readonly job: Job; readonly layout: Layout } }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export interface ReadJob {
  readonly text: string;
  readonly laid: { readonly job: Job; readonly layout: Layout };
}

export interface NotLaid {
  readonly failure: string;
  readonly problems?: readonly Problem[];
}

/** Asks for a file and adds its job, or those of a list such as a show is written with; one that is there already gets its copies more. */
export async function addSheetJob(bench: Workbench): Promise<void> {
  const { look, file, dialogs, notice } = bench;
  const path = await chooseJobFile(bench, 'A job to plan as well, or a list of jobs', 'job or list');
  if (path === undefined) return;
  if (/\.csv$/i.test(path)) return addListedJobs(bench, path);
  if (path === file.path) return notice.fail('That job is the one on the screen; it is planned anyway.');
  if (look.sheetJobs.some((one) => one.path === path)) {
    look.sheetJobs = withMore(look.sheetJobs, path, 1);
    return notice.say('That job was there; one more copy of it is planned.');
  }
  const read = await readLaid(bench, path);
  if ('failure' in read) return dialogs.tell({ title: 'The job could not be added', text: read.failure, ...(read.problems ? { problems: read.problems } : {}) }); // prettier-ignore
  look.sheetJobs = [...look.sheetJobs, { path, title: read.laid.job.title, copies: 1, laid: read.laid }];
  notice.say(`“${read.laid.job.title}” is planned too.`);
}

/** All jobs of the list, as often as it says; what is wrong with some is told once all are read. */
async function addListedJobs(bench: Workbench, path: string): Promise<void> {
  const { host, look, file, dialogs, notice } = bench;
  const reply = await host.call('readJob', { path });
  const list = reply.ok ? readJobList(reply.value.text) : undefined;
  if (!reply.ok || !list?.ok) return dialogs.tell({ title: 'The list could not be read', text: reply.ok ? `“${path}” is no list of jobs.` : reply.failure.message, ...(list ? { problems: list.problems } : {}) }); // prettier-ignore
  const folder = path.slice(0, Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
  const wrong: string[] = [];
  let jobs = look.sheetJobs;
  for (const { file: name, copies } of list.value) {
    const at = folder + name;
    // That on the screen is planned as it stands there.
    if (at === file.path) look.copies = copies;
    else if (jobs.some((one) => one.path === at)) jobs = withMore(jobs, at, copies);
    else {
      const read = await readLaid(bench, at);
      if ('failure' in read) wrong.push(whyNot(read));
      else jobs = [...jobs, { path: at, title: read.laid.job.title, copies, laid: read.laid }];
    }
  }
  // All at once, since each change is planned anew.
  look.sheetJobs = jobs;
  notice.say(`${counted(list.value.length - wrong.length, 'job')} of the list ${list.value.length - wrong.length === 1 ? 'is' : 'are'} planned.`); // prettier-ignore
  if (wrong.length > 0) await dialogs.tell({ title: `${counted(wrong.length, 'job')} of the list could not be added`, text: wrong.join('\n') }); // prettier-ignore
}

function withMore(jobs: readonly SheetJob[], path: string, copies: number): readonly SheetJob[] {
  return jobs.map((one) => (one.path === path ? { ...one, copies: Math.min(MOST_COPIES, one.copies + copies) } : one));
}

/** Reads all of them anew, since another window may have changed one; what can't be read stays in the list and says why. */
export async function readSheetJobsAnew(bench: Workbench): Promise<void> {
  const { look } = bench;
  const read = new Map<string, NotLaid | ReadJob>();
  for (const { path } of look.sheetJobs) read.set(path, await readLaid(bench, path));
  // All at once, since each change is planned anew.
  look.sheetJobs = look.sheetJobs.map((one) => readAs(one, read.get(one.path)));
}

/** @param read undefined: it was added meanwhile. */
function readAs(one: SheetJob, read: NotLaid | ReadJob | undefined): SheetJob {
  const { path, title, copies } = one;
  if (!read) return one;
  return 'failure' in read
    ? { path, title, copies, wrong: whyNot(read) }
    : { path, title: read.laid.job.title, copies, laid: read.laid };
}

/** A job from a file, laid out, with the file's text; or why not. */
export async function readLaid({ host, shelf }: Workbench, path: string): Promise<NotLaid | ReadJob> {
  const reply = await host.call('readJob', { path });
  if (!reply.ok) return { failure: reply.failure.message };
  const read = readText(reply.value.text);
  if (!read.ok) return { failure: `“${path}” is not a job that can be read.`, problems: read.problems };
  const laid = layWritten(read.written, shelf.list);
  return laid.ok
    ? { text: reply.value.text, laid: laid.laid }
    : { failure: `“${path}” has errors; open it and mend them first.`, problems: laid.problems };
}

function layWritten(written: WrittenJob, shelf: Shelf): Laid {
  const read = readJob(written);
  if (!read.ok) return read;
  const { job } = read.value;
  const layout = layOut(job);
  if (!layout.ok) return { ok: false, problems: layout.problems };
  const problems = buildProblems(job, layout.value, written, shelf).filter(isError);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, laid: { job, layout: layout.value } };
}

export async function chooseJobFile(
  { host, info, dialogs }: Workbench,
  title: string,
  of: 'job' | 'job or list' = 'job',
): Promise<string | undefined> {
  const endings = of === 'job' ? JOB_ENDINGS : [...JOB_ENDINGS, 'csv'];
  if (info.kind === 'browser') return dialogs.chooseFile({ title, action: 'Add it', endings });
  const reply = await host.call('pickJob', { title, of });
  return reply.ok ? reply.value.path : undefined;
}

/** Why a job of a file can't be taken, in a line. */
export function whyNot({ failure, problems = [] }: NotLaid): string {
  return [failure, ...problems.filter(isError).map(({ message }) => message)].join(' ');
}
