/** `--shelf FILE.csv`: what the user has, from a file of its own. */
import { Option } from 'commander';
import { resolve } from 'node:path';
import { bad, good, type Result } from '../core/problem';
import { readShelf } from '../core/shelf/read-shelf';
import type { Shelf } from '../core/shelf/shelf';
import type { Unit } from '../core/units';
import { readJob } from '../host/job-files';
import type { World } from './world';

export function shelfOption(what: string): Option {
  return new Option('--shelf <file.csv>', `${what} (resources/shelf.md tells what the file may say)`);
}

/** Problems say the file they were found in. @param unit of lengths that give none. */
export async function findShelf(name: string, unit: Unit, world: World): Promise<Result<Shelf>> {
  const read = await readJob(resolve(world.folder, name));
  if (!read.ok) {
    return bad([{ code: read.failure.code, severity: 'error', at: name, message: read.failure.message }]);
  }
  const shelf = readShelf(read.value.text, unit);
  const problems = shelf.problems.map((one) => ({ ...one, at: one.at === '' ? name : `${name} ${one.at}` }));
  return shelf.ok ? good(shelf.value, problems) : bad(problems);
}
