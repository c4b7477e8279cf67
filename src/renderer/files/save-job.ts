/** Saves the job: in its file, or in one the user names; another's change on disk is never written over unasked. */
import type { HostFailure, JobFile as FileOnDisk, Reply } from '../../bridge';
import { printJob } from '../../core/job/text';
import { NoAnswer } from '../host-client';
import type { Workbench } from '../workbench';
import { baseNameFor, JOB_ENDINGS } from './endings';
import { openPath } from './open-path';

/** True when the job now is in its file. */
export async function saveJob(bench: Workbench): Promise<boolean> {
  const { file } = bench;
  if (file.path === undefined) return saveJobAs(bench);
  return write(bench, file.path, file.stamp === undefined ? {} : { stamp: file.stamp });
}

export async function saveJobAs(bench: Workbench): Promise<boolean> {
  if (bench.info.kind === 'browser' && !(await answers(bench))) return offerCopy(bench);
  const path = await choosePath(bench);
  if (path === undefined) return false;
  const ended = withEnding(path);
  // The system's own dialog has asked about a path it gave, but not about one that only now has its ending.
  const asked = bench.info.kind === 'desktop' && ended === path;
  return write(bench, ended, asked ? { replace: true } : {});
}

/** Whether the program behind the screen is still there, asked before one is led through its folders. */
async function answers({ host }: Workbench): Promise<boolean> {
  try {
    await host.call('info', {});
    return true;
  } catch (fault) {
    if (fault instanceof NoAnswer) return false;
    throw fault;
  }
}

async function write(
  bench: Workbench,
  path: string,
  how: { readonly stamp?: string; readonly replace?: boolean },
): Promise<boolean> {
  const written = bench.session.committed;
  let reply: Reply<FileOnDisk>;
  try {
    reply = await bench.host.call('saveJob', { path, text: printJob(written), ...how });
  } catch (fault) {
    if (!(fault instanceof NoAnswer)) throw fault;
    return offerCopy(bench);
  }
  if (!reply.ok) return settle(bench, path, reply.failure);
  bench.file.isIn(reply.value, written);
  const errors = bench.session.errors.length;
  bench.notice.say(
    `Saved ${path}${errors > 0 ? `, with ${errors} thing${errors === 1 ? '' : 's'} in it that cannot be cut yet` : ''}.`,
  );
  return true;
}

/** The program behind the screen is gone, and started again it has another address: this screen can only hand its job over. */
async function offerCopy(bench: Workbench): Promise<boolean> {
  const answer = await bench.dialogs.choose({
    title: 'The job could not be saved',
    text: 'The program behind this screen does not answer; it may have been ended. Keep a copy of the job with your downloads, start Matwright again, and open the copy there.',
    choices: [
      { value: 'copy', label: 'Keep a copy', weight: 'main' },
      { value: 'stay', label: 'Not now' },
    ],
  });
  if (answer === 'copy') download(bench);
  return false;
}

function download({ session, file, notice }: Workbench): void {
  const name = file.name ?? `${baseNameFor(session.written.title ?? '')}.json`;
  const address = URL.createObjectURL(new Blob([printJob(session.committed)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
  notice.say(`A copy was handed to the browser as ${name}.`);
}

async function settle(bench: Workbench, path: string, failure: HostFailure): Promise<boolean> {
  const { dialogs } = bench;
  if (failure.code === 'changed-on-disk') {
    const answer = await dialogs.choose({
      title: 'The file has changed on disk',
      text: failure.message,
      choices: [
        { value: 'as', label: 'Save under another name', weight: 'main' },
        { value: 'reload', label: 'Open what is on disk' },
        { value: 'over', label: 'Write over it' },
        { value: 'stay', label: 'Do nothing yet' },
      ],
    });
    if (answer === 'as') return saveJobAs(bench);
    if (answer === 'over') return write(bench, path, { replace: true });
    if (answer === 'reload') await openPath(bench, path);
    return false;
  }
  if (failure.code === 'exists') {
    const answer = await dialogs.choose({
      title: 'There is a file of that name',
      text: failure.message,
      choices: [
        { value: 'as', label: 'Take another name', weight: 'main' },
        { value: 'over', label: 'Write over it' },
        { value: 'stay', label: 'Do nothing yet' },
      ],
    });
    if (answer === 'over') return write(bench, path, { replace: true });
    return answer === 'as' ? saveJobAs(bench) : false;
  }
  await dialogs.tell({ title: 'The job could not be saved', text: failure.message });
  return false;
}

async function choosePath({ host, info, dialogs, file, session }: Workbench): Promise<string | undefined> {
  const name = file.name ?? `${baseNameFor(session.written.title ?? '')}.json`;
  if (info.kind === 'browser')
    return dialogs.chooseFile({ title: 'Save the job as', action: 'Save', endings: JOB_ENDINGS, name });
  const reply = await host.call('pickSavePath', { suggested: file.path ?? name });
  return reply.ok ? reply.value.path : undefined;
}

function withEnding(path: string): string {
  return /\.json$/i.test(path) ? path : `${path}.json`;
}
