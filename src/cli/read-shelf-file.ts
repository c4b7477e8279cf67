/** Reads a shelf from the file that was named; problems say the file they were found in. */
import { resolve } from 'node:path';
import { readShelf } from '../core/shelf/read-shelf';
import type { Shelf } from '../core/shelf/shelf';
import { bad, good, type Result } from '../core/problem';
import { readJob } from '../host/job-files';
import { machineProblem } from './refuse';
import type { World } from './world';

export interface ShelfFile {
  readonly text: string;
  readonly shelf: Shelf;
}

export async function readShelfFile(file: string, world: World): Promise<Result<ShelfFile>> {
  const read = await readJob(resolve(world.folder, file));
  if (!read.ok) return bad([machineProblem(read.failure.code, read.failure.message)]);
  const { text } = read.value;
  const shelf = readShelf(text);
  const problems = shelf.problems.map((one) => ({ ...one, at: one.at === '' ? file : `${file} ${one.at}` }));
  return shelf.ok ? good({ text, shelf: shelf.value }, problems) : bad(problems);
}
