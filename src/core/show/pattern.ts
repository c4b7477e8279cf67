/** The job that a show's pictures are matted after: what they share, and one picture that stands for each of them. */
import { exactText } from '../job/exact-text';
import type { Job } from '../job/job';
import { readJob } from '../job/read';
import { parseJobText } from '../job/text';
import type { WrittenJob } from '../job/written';
import { cellOf } from '../layout/cell-of';
import { allLeaves, type Leaf } from '../layout/cells';
import { bad, good, isError, type Result } from '../problem';

export interface Pattern {
  readonly written: WrittenJob;
  readonly job: Job;
}

/** Borders that a show asks for in place of its pattern's, mm. */
export interface Range {
  readonly least?: number;
  readonly greatest?: number;
}

/** Stands for the pictures where the pattern has none. */
const STAND_IN = { size: '8 x 10 in' };

/** The pattern in the text of a job's file, which may leave the picture out. */
export function parsePattern(text: string): Result<Pattern> {
  const opened = parseJobText(text);
  if (opened.ok) return patternOf(opened.value);
  if (opened.problems.some((one) => isError(one) && one.code !== 'nothing-to-mat')) return opened;
  const written = JSON.parse(text.replace(/^\uFEFF/, '')) as WrittenJob;
  const read = readJob({ ...written, pictures: [STAND_IN] });
  return read.ok ? patternOf(read.value) : read;
}

/** A job taken for a pattern: its picture is the one in whose place each picture of the show comes. */
export function patternOf({ written, job }: Pattern): Result<Pattern> {
  const count = job.pictures.length;
  if (count !== 1) {
    return failed(
      'pattern-pictures',
      'pictures',
      `The pattern has ${count} pictures; it should have one, in whose place each picture of the show comes.`,
    );
  }
  const arranged = job.windows ? allLeaves(cellOf(job.windows, job)) : [];
  const free = job.free.map(({ window }) => cellOf(window, job) as Leaf);
  if (![...arranged, ...free].some(({ picture }) => picture)) {
    return failed(
      'pattern-shows-no-picture',
      'windows',
      'No window of the pattern shows its picture, so it would show none of the show’s; give it one.',
    );
  }
  return good({ written, job });
}

/** The pattern with another range of borders. */
export function withRange({ written, job }: Pattern, { least, greatest }: Range): Result<Pattern> {
  if (least === undefined && greatest === undefined) return good({ written, job });
  const text = (mm: number) => `${exactText(mm, job.units)} ${job.units}`;
  const range = {
    ...written.borders?.range,
    ...(least === undefined ? {} : { least: text(least) }),
    ...(greatest === undefined ? {} : { greatest: text(greatest) }),
  };
  return readJob({
    ...written,
    pictures: written.pictures?.length ? written.pictures : [STAND_IN],
    borders: { ...written.borders, range },
  });
}

function failed(code: string, at: string, message: string): Result<never> {
  return bad([{ code, severity: 'error', at, message }]);
}
