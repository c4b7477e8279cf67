/** The user's list of cutters: one file in the state folder, which several programs may change and none may damage. */
import { mkdir, rename, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { HostCalls, KeptCutters, Reply } from '../bridge';
import { parseCutters } from '../core/job/cutter-list';
import { isError } from '../core/problem';
import { done, failed, failureFrom } from './failure';
import { holdFile } from './hold-file';
import { readJob } from './job-files';
import { saveWhole } from './save-whole';
import { takeTurn } from './take-turn';

/** What lies there, whole or damaged; without text while nothing was ever kept. */
export async function readCutters(path: string): Promise<Reply<KeptCutters>> {
  const read = await readJob(path);
  if (read.ok) return read;
  return read.failure.code === 'not-found' ? done({ path }) : read;
}

/** Saves the whole list; see `HostCalls.saveCutters` for what it refuses. */
export function saveCutters(path: string, request: HostCalls['saveCutters']['request']): Promise<Reply<KeptCutters>> {
  return takeTurn(path, async () => {
    const wrong = parseCutters(request.text).problems.find(isError);
    if (wrong) return failed('failed', `The list of cutters was not saved: ${wrong.message}`);
    try {
      await mkdir(dirname(path), { recursive: true, mode: 0o700 });
      return await holdFile(path, () => saveHeld(path, request));
    } catch (error) {
      return failureFrom(error, path);
    }
  });
}

async function saveHeld(
  path: string,
  { text, stamp, setAside }: HostCalls['saveCutters']['request'],
): Promise<Reply<KeptCutters>> {
  if (setAside) await moveAside(path);
  else {
    const now = await readCutters(path);
    if (!now.ok) return now;
    if (now.value.stamp !== stamp) {
      return failed('changed-on-disk', `The list of cutters in “${path}” was changed by another program or window.`);
    }
  }
  await saveWhole(path, Buffer.from(text, 'utf8'), 0o600);
  return readCutters(path);
}

/** Beside it, under a name that is free. */
async function moveAside(path: string): Promise<void> {
  if (!(await isThere(path))) return;
  let number = 1;
  const asideName = () => path.replace(/(\.json)?$/, `-set-aside-${number}.json`);
  while (await isThere(asideName())) number += 1;
  await rename(path, asideName());
}

async function isThere(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}
