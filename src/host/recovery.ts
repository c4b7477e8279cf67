/** Keeps unsaved work, one file for each session of the screen, so that a crash or a closed window loses nothing. */
import { mkdir, readdir, readFile, unlink } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import type { HostCalls, Recovery, Reply } from '../bridge';
import { done, errorName, failureFrom } from './failure';
import { saveWhole } from './save-whole';
import { takeTurn } from './take-turn';

const keptSchema = z.object({
  id: z.string(),
  path: z.string().optional(),
  title: z.string(),
  text: z.string(),
  kept: z.iso.datetime(),
});

/** Keeps this state of a session's work in place of the one before. */
export function keepRecovery(
  folder: string,
  work: HostCalls['keepRecovery']['request'],
): Promise<Reply<{ readonly kept: string }>> {
  return takeTurn(fileOf(folder, work.id), async () => {
    const kept = new Date().toISOString();
    try {
      // Readable by its owner alone: a job may name what hangs in somebody's house.
      await mkdir(folder, { recursive: true, mode: 0o700 });
      await saveWhole(fileOf(folder, work.id), Buffer.from(JSON.stringify({ ...work, kept })), 0o600);
      return done({ kept });
    } catch (error) {
      return failureFrom(error, folder);
    }
  });
}

/** All kept work, newest first; a file that can't be read as such is passed over and left in place. */
export async function listRecoveries(folder: string): Promise<Reply<readonly Recovery[]>> {
  try {
    const names = (await readdir(folder)).filter((name) => name.endsWith('.json'));
    const found = await Promise.all(names.map((name) => readKept(join(folder, name))));
    return done(found.filter((work) => work !== undefined).sort((a, b) => b.kept.localeCompare(a.kept)));
  } catch (error) {
    return errorName(error) === 'ENOENT' ? done([]) : failureFrom(error, folder);
  }
}

/** Forgets a session's work: it was saved, or given up on purpose. What was asked to be kept before is forgotten too. */
export function dropRecovery(folder: string, id: string): Promise<Reply<{ readonly dropped: boolean }>> {
  return takeTurn(fileOf(folder, id), async () => {
    try {
      await unlink(fileOf(folder, id));
      return done({ dropped: true });
    } catch (error) {
      return errorName(error) === 'ENOENT' ? done({ dropped: false }) : failureFrom(error, folder);
    }
  });
}

async function readKept(path: string): Promise<Recovery | undefined> {
  try {
    return keptSchema.parse(JSON.parse(await readFile(path, 'utf8')));
  } catch {
    return undefined;
  }
}

/** The request check admits only letters, digits and hyphens in an id, so that it can be a file name. */
function fileOf(folder: string, id: string): string {
  return join(folder, `${id}.json`);
}
