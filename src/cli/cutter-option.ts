/** `--cutter FILE#NAME`: a cutter from a file of its own, in the place of the job's. */
import { Option } from 'commander';
import { resolve } from 'node:path';
import { parseCutters } from '../core/job/cutter-list';
import { chooseCutter } from '../core/job/given-cutter';
import type { WrittenCutter } from '../core/job/written-cutter';
import { bad, type Result } from '../core/problem';
import { readJob } from '../host/job-files';
import type { World } from './world';

export function cutterOption(): Option {
  return new Option(
    '--cutter <file#name>',
    'cut with this cutter of a file of cutters in place of the job’s own; without #name the file must hold one',
  );
}

/** Problems say the file they were found in. */
export async function findCutter(words: string, world: World): Promise<Result<WrittenCutter>> {
  const { file, name, text } = await openFile(words, world);
  if (!text.ok) return bad(text.problems);
  const read = parseCutters(text.value);
  if (!read.ok) return bad(read.problems.map((one) => ({ ...one, at: one.at === '' ? file : `${file} ${one.at}` })));
  return chooseCutter(read.value, name, file);
}

interface OpenedFile {
  readonly file: string;
  readonly name?: string;
  readonly text: Result<string>;
}

/** A file's name may hold the sign itself: of the ways to part the words the longest name that is there counts. */
async function openFile(words: string, world: World): Promise<OpenedFile> {
  const ends = [words.length, ...[...words].flatMap((sign, at) => (sign === '#' ? [at] : [])).reverse()];
  let shortest: OpenedFile | undefined;
  for (const end of ends) {
    const file = words.slice(0, end);
    if (file === '') continue;
    const name = words.slice(end + 1);
    const read = await readJob(resolve(world.folder, file));
    const named = end === words.length ? {} : { name };
    if (read.ok) return { file, ...named, text: { ok: true, value: read.value.text, problems: [] } };
    const { code, message } = read.failure;
    shortest = { file, ...named, text: unread(code, message) };
    if (code !== 'not-found') break;
  }
  return shortest ?? { file: words, text: unread('not-found', 'No file of cutters is named.') };
}

function unread(code: string, message: string): Result<never> {
  return bad([{ code, severity: 'error', at: '', message }]);
}
