/** Makes and writes a job's outputs into a folder, with progress told and Ctrl-C heard. */
import { resolve } from 'node:path';
import type { ExportOptions } from '../bridge';
import { makeFolder, removeEmpty } from '../host/make-folder';
import { tellProgress } from './print/progress';
import type { FoundJob } from './read-job';
import type { World } from './world';

interface Target {
  readonly out?: string;
  readonly replace?: true;
  /** The text of the shelf's file. */
  readonly shelf?: string;
}

/** What the host's export answers. A folder that was made for it goes again when nothing came of it. */
export async function exportInto(
  world: World,
  found: FoundJob,
  options: ExportOptions,
  { out, replace, shelf }: Target,
) {
  // Here, since the other verbs need none of what draws on paper.
  const { exportJob } = await import('../host/export-job');
  const folder = out === undefined ? found.folder : resolve(world.folder, out);
  const made = await makeFolder(folder);
  if (!made.ok) return made;
  const reply = await world.interruptible((signal) =>
    exportJob(
      {
        text: found.text,
        folder,
        baseName: found.baseName,
        options,
        replace: replace ?? false,
        ...(shelf === undefined ? {} : { shelf }),
        ...(found.path === undefined ? {} : { jobPath: found.path }),
      },
      { resources: world.resources, onProgress: tellProgress(world), signal },
    ),
  );
  if (!reply.ok && made.value !== undefined) await removeEmpty(folder, made.value);
  return reply;
}
