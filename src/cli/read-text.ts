/** Finds the file of text that was named and reads it. */
import { resolve } from 'node:path';
import { bad, good, type Result } from '../core/problem';
import { readWhole } from '../host/read-file';
import { machineProblem } from './refuse';
import type { World } from './world';

/** No drawing of one outline, and no table of this program, is larger, in bytes. */
const MOST = 10_000_000;

/**
 * @param name a path, or `-` for standard input.
 * @param remedy what to do where it is no text.
 */
export async function readText(name: string, world: World, remedy: string): Promise<Result<string>> {
  const read = name === '-' ? await world.readInput() : await readNamed(resolve(world.folder, name));
  if ('ok' in read) return read;
  const what = name === '-' ? 'Standard input' : `“${name}”`;
  if (read.length > MOST) return bad([machineProblem('too-large', `${what} has more than ${MOST / 1e6} MB.`)]);
  try {
    return good(new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(read));
  } catch {
    return bad([machineProblem('not-readable', `${what} is not text in UTF-8. ${remedy}`)]);
  }
}

async function readNamed(path: string): Promise<Uint8Array | Extract<Result<never>, { ok: false }>> {
  const read = await readWhole(path, MOST);
  if (read.ok) return read.value;
  return { ok: false, problems: [machineProblem(read.failure.code, read.failure.message)] };
}
