/** Writes a file so that at every moment either the old content or the whole new one lies in its place. */
import { chmod, chown, open, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { randomUUID } from 'node:crypto';
import { errorName } from './failure';

/**
 * Writes to a draft beside, waits until it is on the drive, then moves it into place; a link is followed, and the
 * permissions of the file that was there are kept.
 *
 * @param mode of a new file; what the system gives by default when left out.
 * @throws the file system's error; the old content then stands untouched and no draft is left.
 */
export async function saveWhole(path: string, bytes: Uint8Array, mode?: number): Promise<void> {
  const place = await realpath(path).catch(() => path);
  const draft = join(dirname(place), `.${basename(place).slice(0, 100)}.${randomUUID()}`);
  await putInPlace(place, bytes, { draft, ...(mode === undefined ? {} : { mode }) });
}

export interface Putting {
  /** Where the draft lies, on the same drive. */
  readonly draft: string;
  /** Of a new file. */
  readonly mode?: number;
  /** Done when all is ready to be moved; where it throws, nothing is. */
  readonly last?: () => Promise<void>;
}

/** As `saveWhole`, by a draft of one's own, and to this very path. */
export async function putInPlace(place: string, bytes: Uint8Array, { draft, mode, last }: Putting): Promise<void> {
  try {
    await writeThrough(draft, bytes, mode);
    await keepRights(place, draft);
    await last?.();
    await rename(draft, place);
  } catch (error) {
    await rm(draft, { force: true });
    throw error;
  }
}

/** Waits until the bytes are on the drive, so that a file in its place is never an empty one. */
export async function writeThrough(path: string, bytes: Uint8Array, mode?: number): Promise<void> {
  const handle = await open(path, 'wx', mode);
  try {
    // Writes on until all is written: a drive about to be full takes a part and reports no error.
    await handle.writeFile(bytes);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

async function keepRights(place: string, draft: string): Promise<void> {
  const before = await stat(place).catch(() => undefined);
  if (!before) return;
  await chmod(draft, before.mode);
  try {
    await chown(draft, before.uid, before.gid);
  } catch (error) {
    // Only root may give a file away; for all others the saved file is theirs.
    if (!['EPERM', 'EINVAL', 'ENOSYS'].includes(errorName(error))) throw error;
  }
}
