/** Opens the job file at a path. */
import type { Workbench } from '../workbench';
import { readText } from './read-text';

/** Opens a file over whatever is on the screen; says so when that cannot be done, and leaves the screen as it was. */
export async function openPath(bench: Workbench, path: string, { atStart = false } = {}): Promise<boolean> {
  const { host, session, file, look, stage, dialogs, notice } = bench;
  const reply = await host.call('readJob', { path });
  if (!reply.ok) {
    await dialogs.tell({ title: 'The file could not be opened', text: reply.failure.message });
    return false;
  }
  const read = readText(reply.value.text);
  if (!read.ok) {
    await dialogs.tell({ title: 'This file is not a job that can be opened', text: path, problems: read.problems });
    return false;
  }
  // What was on the screen goes first, and this is said, however long a large job takes to draw.
  notice.say(`Opening ${path}…`);
  await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
  session.start(read.written);
  file.isIn(reply.value, read.written);
  // A view that somebody chose while the program was still opening its first job stays.
  look.startJob(atStart ? look.view : 'pictures');
  stage.fit();
  notice.say(`Opened ${file.name ?? path}.`);
  return true;
}
