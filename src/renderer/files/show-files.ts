/** The list of a show from a file, and its jobs and lists into a folder. */
import { showFiles } from '../../core/show/show-files';
import type { ShowPlan } from '../../core/show/plan';
import type { ShowList } from '../session/look.svelte';
import type { Workbench } from '../workbench';
import { chooseFolder } from './choose-folder';
import { baseNameFor } from './endings';

const ENDINGS = ['csv', 'txt'] as const;

export async function chooseShowList({ host, info, dialogs }: Workbench): Promise<ShowList | undefined> {
  const title = 'The list of a show';
  const picked = info.kind === 'browser' ? undefined : await host.call('pickJob', { title, of: 'table' });
  const path =
    info.kind === 'browser'
      ? await dialogs.chooseFile({ title, action: 'Take it', endings: ENDINGS })
      : picked?.ok
        ? picked.value.path
        : undefined;
  if (path === undefined) return undefined;
  const reply = await host.call('readJob', { path });
  if (reply.ok) return { path, text: reply.value.text };
  await dialogs.tell({ title: 'The list can’t be read', text: reply.failure.message });
  return undefined;
}

/** A job for each picture, the list and the frames to buy: all of them or none. What was written, in words. */
export async function writeShow(bench: Workbench, plan: ShowPlan): Promise<string | undefined> {
  const { host, info, dialogs, notice, session, look } = bench;
  const start = look.folder ?? info.folder;
  const folder = await chooseFolder(bench, {
    title: 'Where the jobs go',
    action: 'Write here',
    folder: start,
    suggested: `${start}${info.separator}${baseNameFor(session.written.title ?? 'show')}`,
  });
  if (folder === undefined) return undefined;
  const files = showFiles(plan);
  let reply = await host.call('writeFolder', { folder, files, replace: false });
  if (!reply.ok && reply.failure.code === 'exists') {
    const answer = await dialogs.choose({
      title: 'There are files of these names',
      text: reply.failure.message,
      choices: [
        { value: 'stay', label: 'Leave them', weight: 'main' },
        { value: 'over', label: 'Write over them' },
      ],
    });
    if (answer !== 'over') return undefined;
    reply = await host.call('writeFolder', { folder, files, replace: true });
  }
  if (!reply.ok) {
    await dialogs.tell({ title: 'The show could not be written', text: reply.failure.message });
    return undefined;
  }
  const words = `${reply.value.paths.length} files were written into ${folder}.`;
  notice.say(words);
  return words;
}
