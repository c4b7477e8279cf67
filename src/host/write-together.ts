/** Writes several files into a folder so that either all of them appear or nothing changes. */
import { mkdtemp, rename, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Reply } from '../bridge';
import { done, errorName, failed, failureFrom } from './failure';
import { writeThrough } from './save-whole';

export interface NamedBytes {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export interface WriteOptions {
  /** Whether files of the same names may be replaced. */
  readonly replace: boolean;
  /** Asked to stop: nothing is left behind. */
  readonly signal?: AbortSignal | undefined;
}

/** Writes to a temporary folder beside, then moves each file into its place; gives the full paths. */
export async function writeTogether(
  folder: string,
  files: readonly NamedBytes[],
  options: WriteOptions,
): Promise<Reply<readonly string[]>> {
  const names = files.map(({ name }) => name);
  const free = await checkFree(folder, names, options.replace);
  if (!free.ok) return free;
  let workshop: string | undefined;
  try {
    workshop = await mkdtemp(join(folder, '.matwright-'));
    for (const file of files) await writeThrough(join(workshop, file.name), file.bytes);
    if (options.signal?.aborted) return failed('cancelled', 'The export was cancelled; nothing was written.');
    await moveAll(workshop, folder, files);
    return done(files.map((file) => join(folder, file.name)));
  } catch (error) {
    return failureFrom(error, folder);
  } finally {
    if (workshop) await rm(workshop, { recursive: true, force: true });
  }
}

/** Whether files of these names may be written into a folder: asked before long work, and again before writing. */
export async function checkFree(folder: string, names: readonly string[], replace: boolean): Promise<Reply<true>> {
  try {
    if (!(await stat(folder)).isDirectory())
      return failed('not-a-folder', `“${folder}” is not a folder. Choose another.`);
  } catch (error) {
    return failureFrom(error, folder);
  }
  for (const name of names) {
    const found = await stat(join(folder, name)).catch(() => undefined);
    if (found?.isDirectory()) return failed('exists', `“${join(folder, name)}” is a folder. Choose another name.`);
    if (found && !replace) {
      return failed(
        'exists',
        `“${join(folder, name)}” is already there. Replace it, or choose another name or folder.`,
      );
    }
  }
  return done(true);
}

/** Moves every file to its place; should one move fail, those before it are taken back. */
async function moveAll(workshop: string, folder: string, files: readonly NamedBytes[]): Promise<void> {
  const undo: (() => Promise<void>)[] = [];
  try {
    for (const { name } of files) {
      const [made, place, aside] = [join(workshop, name), join(folder, name), join(workshop, `${name}.before`)];
      if (await moveIfThere(place, aside)) undo.push(() => rename(aside, place));
      await rename(made, place);
      undo.push(() => rename(place, made));
    }
  } catch (error) {
    for (const takeBack of undo.reverse()) await takeBack();
    throw error;
  }
}

async function moveIfThere(from: string, to: string): Promise<boolean> {
  try {
    await rename(from, to);
    return true;
  } catch (error) {
    if (errorName(error) === 'ENOENT') return false;
    throw error;
  }
}
