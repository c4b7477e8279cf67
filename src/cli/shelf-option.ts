/** `--shelf FILE.csv`: what the user has, from a file of its own. */
import { Option } from 'commander';
import { resolve } from 'node:path';
import { bad, good, type Result } from '../core/problem';
import { readShelf } from '../core/shelf/read-shelf';
import type { Shelf } from '../core/shelf/shelf';
import { readJob } from '../host/job-files';
import { machineProblem } from './refuse';
import type { World } from './world';

export function shelfOption(what = 'what you have'): Option {
  return new Option('--shelf <file>', `${what}, a table of values parted by commas (resources/shelf.md tells how)`);
}

export interface ShelfFile {
  readonly text: string;
  readonly shelf: Shelf;
}

/** Problems say the file they were found in. */
export async function readShelfFile(file: string, world: World): Promise<Result<ShelfFile>> {
  const read = await readJob(resolve(world.folder, file));
  if (!read.ok) return bad([machineProblem(read.failure.code, read.failure.message)]);
  const { text } = read.value;
  const shelf = readShelf(text);
  const problems = shelf.problems.map((one) => ({ ...one, at: `${file} ${one.at}`.trim() }));
  return shelf.ok ? good({ text, shelf: shelf.value }, problems) : bad(problems);
}

export async function findShelf(file: string, world: World): Promise<Result<Shelf>> {
  const read = await readShelfFile(file, world);
  return read.ok ? good(read.value.shelf, read.problems) : read;
}
