/** The record of the last use of a stock, as a file beside the list: written with it, both or none. */
import { readFile } from 'node:fs/promises';
import { errorName } from './failure';
import type { Hold, SaveOptions } from './hold-file';

/** Beside the file. */
export function recordPath(path: string): string {
  return `${path}.last-use.json`;
}

interface Both {
  /** Undefined: there is none any more. */
  readonly record: string | undefined;
  /** Of the list. */
  readonly text: string;
}

/**
 * The record first; where the list can't be saved the record is as it was. A record of a use that was never made is known by
 * the list's text; a use without a record could not be taken back.
 */
export async function saveBoth(hold: Hold, { record, text }: Both, how: SaveOptions): Promise<void> {
  const old = await readIfThere(recordPath(hold.path));
  await setRecord(hold, record, how.mode);
  try {
    await hold.save(hold.path, Buffer.from(text, 'utf8'), how);
  } catch (error) {
    await setRecord(hold, old, how.mode);
    throw error;
  }
}

/** Beside the file that is held. */
export function setRecord(hold: Hold, record: string | undefined, mode?: number): Promise<void> {
  const place = recordPath(hold.path);
  if (record === undefined) return hold.remove(place);
  return hold.save(place, Buffer.from(record, 'utf8'), mode === undefined ? {} : { mode });
}

export async function readIfThere(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, 'utf8');
  } catch (error) {
    if (errorName(error) === 'ENOENT') return undefined;
    throw error;
  }
}
