/** Opens a job file, asking which and asking about unsaved work. */
import type { Workbench } from '../workbench';
import { JOB_ENDINGS } from './endings';
import { openPath } from './open-path';
import { mayLeave } from './unsaved';

/** Opens the file at a path, or asks for one. */
export async function openJob(bench: Workbench, path?: string): Promise<void> {
  if (!(await mayLeave(bench))) return;
  const chosen = path ?? (await choosePath(bench));
  if (chosen !== undefined) await openPath(bench, chosen);
}

async function choosePath({ host, info, dialogs }: Workbench): Promise<string | undefined> {
  if (info.kind === 'browser') return dialogs.chooseFile({ title: 'Open a job', action: 'Open', endings: JOB_ENDINGS });
  const reply = await host.call('pickJob', {});
  return reply.ok ? reply.value.path : undefined;
}
