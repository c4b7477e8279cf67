/** Finds what a show is planned from: its list, its pattern and its shelf. */
import { readShow } from '../../core/show/read-show';
import { parsePattern, type Pattern } from '../../core/show/pattern';
import type { ShowPicture } from '../../core/show/picture';
import { readShelf } from '../../core/shelf/read-shelf';
import type { Shelf } from '../../core/shelf/shelf';
import { startShelf } from '../../core/shelf/start-shelf';
import type { Problem, Result } from '../../core/problem';
import { readText } from '../read-text';
import type { ExitCode, World } from '../world';

export interface FoundShow {
  readonly ok: true;
  readonly pictures: readonly ShowPicture[];
  readonly pattern: Pattern;
  readonly shelf: Shelf;
  /** Warnings of the files. */
  readonly problems: readonly Problem[];
}

export interface NoShow {
  readonly ok: false;
  /** 1: something in a file is wrong. 2: a file can't be read. */
  readonly code: ExitCode;
  readonly problems: readonly Problem[];
}

const AS_TABLE = 'Save the table as comma-separated values in UTF-8.';
const AS_JOB = 'A job is JSON text in UTF-8.';

/** @param shelf a shelf's file; without one the generic sizes of the pattern's units are taken. */
export async function findShow(
  list: string,
  { pattern, shelf }: { readonly pattern: string; readonly shelf?: string },
  world: World,
): Promise<FoundShow | NoShow> {
  const texts = {
    list: await readText(list, world, AS_TABLE),
    pattern: await readText(pattern, world, AS_JOB),
    ...(shelf === undefined ? {} : { shelf: await readText(shelf, world, AS_TABLE) }),
  };
  const unread = Object.values(texts).flatMap((text) => (text.ok ? [] : text.problems));
  if (unread.length > 0 || !texts.list.ok || !texts.pattern.ok) return { ok: false, code: 2, problems: unread };
  const pictures = inFile(list, readShow(texts.list.value));
  const mat = inFile(pattern, parsePattern(texts.pattern.value));
  const units = mat.ok ? mat.value.job.units : 'in';
  const frames: Result<Shelf> = texts.shelf?.ok
    ? inFile(shelf ?? '', readShelf(texts.shelf.value))
    : { ok: true, value: startShelf(units === 'in' ? 'inch' : 'metric'), problems: [] };
  const problems = [
    ...pictures.problems,
    ...mat.problems.filter(({ severity }) => severity === 'error'),
    ...frames.problems,
  ];
  if (!pictures.ok || !mat.ok || !frames.ok) return { ok: false, code: 1, problems };
  return { ok: true, pictures: pictures.value, pattern: mat.value, shelf: frames.value, problems };
}

/** With the file's name before each place, since there are several files. */
function inFile<T>(name: string, result: Result<T>): Result<T> {
  const file = name === '-' ? 'standard input' : name;
  const problems = result.problems.map((one) => ({ ...one, at: one.at === '' ? file : `${file}, ${one.at}` }));
  return { ...result, problems };
}
