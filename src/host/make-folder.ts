/** Makes the folder that files are written into, and takes it away again when nothing came of it. */
import { mkdir, rmdir, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import { failureFrom } from './failure';

/** Makes the folder and those it lies in; gives the outermost that had to be made. */
export async function makeFolder(folder: string) {
  try {
    // What is there already, folder or not, the writing judges.
    if (await stat(folder).catch(() => undefined)) return { ok: true, value: undefined } as const;
    return { ok: true, value: await mkdir(folder, { recursive: true }) } as const;
  } catch (error) {
    return failureFrom(error, folder);
  }
}

/** Takes away what was made, as far as it is empty. */
export async function removeEmpty(folder: string, outermost: string): Promise<void> {
  for (let inner = folder; inner.startsWith(outermost); inner = dirname(inner)) {
    await rmdir(inner).catch(() => undefined);
  }
}
