/** Writes a file that is no job where the user says, and asks before it covers another. */
import type { Reply } from '../../bridge';
import type { Workbench } from '../workbench';

interface Wanted {
  /** Of the dialog that asks where. */
  readonly title: string;
  readonly name: string;
  readonly ending: string;
  /** Endings of the files shown beside, without dot. */
  readonly shown: readonly string[];
  /** Refuses with `exists` where there is a file and it is not to be replaced. */
  readonly write: (path: string, replace: boolean) => Promise<Reply<unknown>>;
  /** Said when it is done, before the path. */
  readonly done: string;
  readonly failed: string;
}

export async function writeFile(bench: Workbench, wanted: Wanted): Promise<void> {
  const { info, dialogs, notice } = bench;
  const { title, name, ending, shown, write } = wanted;
  const chosen =
    info.kind === 'browser'
      ? await dialogs.chooseFile({ title, action: 'Write', endings: shown, name })
      : await pickPath(bench, title, name);
  if (chosen === undefined) return;
  const path = chosen.toLowerCase().endsWith(`.${ending}`) ? chosen : `${chosen}.${ending}`;
  // The system's own dialog has asked about a path it gave.
  let reply = await write(path, info.kind === 'desktop' && path === chosen);
  if (!reply.ok && reply.failure.code === 'exists') {
    const answer = await dialogs.choose({
      title: 'There is a file of that name',
      text: reply.failure.message,
      choices: [
        { value: 'stay', label: 'Leave it', weight: 'main' },
        { value: 'over', label: 'Write over it' },
      ],
    });
    if (answer !== 'over') return;
    reply = await write(path, true);
  }
  if (reply.ok) notice.say(`${wanted.done} ${path}.`);
  else await dialogs.tell({ title: wanted.failed, text: reply.failure.message });
}

async function pickPath({ host, info }: Workbench, title: string, name: string): Promise<string | undefined> {
  const reply = await host.call('pickSavePath', { suggested: `${info.folder}${info.separator}${name}`, title });
  return reply.ok ? reply.value.path : undefined;
}
