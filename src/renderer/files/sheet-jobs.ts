/** Jobs from files that are planned together with the one on the screen. */
import { buildProblems } from '../../core/build-problems';
import type { Job } from '../../core/job/job';
import { readJob } from '../../core/job/read';
import type { WrittenJob } from '../../core/job/written';
import { layOut } from '../../core/layout/lay-out';
import type { Layout } from '../../core/layout/layout';
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

export async function chooseJobFile({ host, info, dialogs }: Workbench, title: string): Promise<string | undefined> {
  if (info.kind === 'browser') return dialogs.chooseFile({ title, action: 'Add it', endings: JOB_ENDINGS });
  const reply = await host.call('pickJob', { title });
  return reply.ok ? reply.value.path : undefined;
}

/** Why a job of a file can't be taken, in a line. */
export function whyNot({ failure, problems = [] }: NotLaid): string {
  return [failure, ...problems.filter(isError).map(({ message }) => message)].join(' ');
}
