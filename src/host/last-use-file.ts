/** The record of the last use of a stock, as a file beside the list: written with it, both or none. */
import { readFile, rm } from 'node:fs/promises';
import { errorName } from './failure';
import { saveWhole } from './save-whole';

/** Beside the file. */
export function recordPath(path: string): string {
  return `${path}.last-use.json`;
}

/**
 * The record first; where the list can't be saved the record is as it was. A record of a use that was never made is known by
 * the list's text; a use without a record could not be taken back.
 *
 * @param record undefined: there is none any more.
 */
export async function saveBoth(path: string, record: string | undefined, text: string, mode?: number): Promise<void> {
  const place = recordPath(path);
  const old = await readIfThere(place);
  await setText(place, record, mode);
  try {
    await saveWhole(path, Buffer.from(text, 'utf8'), mode);
  } catch (error) {
    await setText(place, old, mode);
    throw error;
  }
}

async function setText(path: string, text: string | undefined, mode: number | undefined): Promise<void> {
  if (text === undefined) await rm(path, { force: true });
  else await saveWhole(path, Buffer.from(text, 'utf8'), mode);
}

export async function readIfThere(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, 'utf8');
  } catch (error) {
    if (errorName(error) === 'ENOENT') return undefined;
    throw error;
  }
}
