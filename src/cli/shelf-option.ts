/** `--shelf FILE`: the option that names the file of a shelf, and the shelf in it. */
import { resolve } from 'node:path';
import { Option } from 'commander';
import { bad, good, type Result } from '../core/problem';
import { readShelf } from '../core/shelf/read-shelf';
import type { Shelf } from '../core/shelf/shelf';
import { readWhole } from '../host/read-file';
import { placedIn } from './in-file';
import { machineProblem } from './refuse';
import type { World } from './world';

/** No shelf is larger, in bytes. */
const MOST = 5_000_000;

export function shelfOption(what = 'what you have'): Option {
  return new Option('--shelf <file>', `${what}: a table of values parted by commas (resources/shelf.md tells how)`);
}

export interface ShelfFile {
  readonly text: string;
  readonly shelf: Shelf;
}

/** The shelf in a file of comma-separated values; a problem's place begins with the file's name. */
export async function readShelfFile(file: string, world: World): Promise<Result<ShelfFile>> {
  const read = await readWhole(resolve(world.folder, file), MOST);
  if (!read.ok) return bad([machineProblem(read.failure.code, read.failure.message)]);
  const text = textOf(read.value);
  if (text === undefined) {
    return bad([machineProblem('not-readable', `“${file}” is not text in UTF-8. Save the table as CSV in UTF-8.`)]);
  }
  const shelf = readShelf(text);
  const problems = placedIn(file, shelf.problems);
  return shelf.ok ? good({ text, shelf: shelf.value }, problems) : bad(problems);
}

export async function findShelf(file: string, world: World): Promise<Result<Shelf>> {
  const read = await readShelfFile(file, world);
  return read.ok ? good(read.value.shelf, read.problems) : read;
}

function textOf(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
