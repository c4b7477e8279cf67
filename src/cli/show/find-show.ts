/** Finds what a show is planned from: its list, its pattern and its shelf. */
import { readShow } from '../../core/show/read-show';
import { parsePattern, type Pattern } from '../../core/show/pattern';
import type { ShowPicture } from '../../core/show/picture';
import type { Shelf } from '../../core/shelf/shelf';
import { startShelf } from '../../core/shelf/start-shelf';
import { good, type Problem, type Result } from '../../core/problem';
import { inFile } from '../in-file';
import { UNREADABLE } from '../read-job';
import { readText } from '../read-text';
import { findShelf } from '../shelf-option';
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
  /** 1: something in the pattern, which is a job, is wrong. 2: a file can't be read, or a table has errors. */
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
  };
  const own = shelf === undefined ? undefined : await findShelf(shelf, world);
  if (!texts.list.ok || !texts.pattern.ok) {
    return { ok: false, code: 2, problems: [texts.list, texts.pattern, own].flatMap((one) => one?.problems ?? []) };
  }
  const pictures = inFile(list, readShow(texts.list.value));
  const mat = inFile(pattern, parsePattern(texts.pattern.value));
  const units = mat.ok ? mat.value.job.units : 'in';
  const frames: Result<Shelf> = own ?? good(startShelf(units === 'in' ? 'inch' : 'metric'));
  const problems = [
    ...pictures.problems,
    ...mat.problems.filter(({ severity }) => severity === 'error'),
    ...frames.problems,
  ];
  if (!pictures.ok || !mat.ok || !frames.ok) {
    const isJob = mat.ok || !mat.problems.some(({ code }) => UNREADABLE.has(code));
    return { ok: false, code: pictures.ok && frames.ok && isJob ? 1 : 2, problems };
  }
  return { ok: true, pictures: pictures.value, pattern: mat.value, shelf: frames.value, problems };
}
