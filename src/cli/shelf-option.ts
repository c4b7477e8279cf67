/** `--shelf FILE.csv`: what the user has, from a file of its own. */
import { Option } from 'commander';
import { resolve } from 'node:path';
import { bad, good, isError, type Result } from '../core/problem';
import { readShelf } from '../core/shelf/read-shelf';
import type { Shelf } from '../core/shelf/shelf';
import { readJob } from '../host/job-files';
import { machineProblem } from './refuse';
import type { World } from './world';

export function shelfOption(): Option {
  return new Option('--shelf <file>', 'what you have, as comma-separated values (resources/shelf.md tells how)');
}

/** Problems say the file they were found in. */
export async function findShelf(file: string, world: World): Promise<Result<Shelf>> {
  const read = await readJob(resolve(world.folder, file));
  if (!read.ok) return bad([machineProblem(read.failure.code, read.failure.message)]);
  const shelf = readShelf(read.value.text);
  const problems = shelf.problems.map((one) => ({ ...one, at: `${file} ${one.at}`.trim() }));
  return shelf.ok && !problems.some(isError) ? good(shelf.value, problems) : bad(problems);
}
