/** Shows for tests: patterns, lists and shelves as a user writes them. */
import { readShelf } from '../../../src/core/shelf/read-shelf';
import type { Shelf } from '../../../src/core/shelf/shelf';
import { parsePattern, type Pattern } from '../../../src/core/show/pattern';
import type { ShowPicture } from '../../../src/core/show/picture';
import type { ShowOptions, ShowPlan } from '../../../src/core/show/plan';
import { planShow } from '../../../src/core/show/plan-show';
import { readShow } from '../../../src/core/show/read-show';
import type { Result } from '../../../src/core/problem';
import type { Contents } from '../open';

export function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problems.map(({ at, message }) => `${at}: ${message}`).join('\n'));
  return result.value;
}

export function pattern(contents: Contents = {}): Pattern {
  return valueOf(parsePattern(JSON.stringify({ format: 'matwright-job', version: 1, ...contents })));
}

export function list(text: string): readonly ShowPicture[] {
  return valueOf(readShow(text));
}

/** Rows of `title,width,height`. */
export function pictures(...rows: readonly string[]): readonly ShowPicture[] {
  return list(['title,width,height', ...rows].join('\n'));
}

export function shelf(text: string): Shelf {
  return valueOf(readShelf(text));
}

/** Rows of `name,width,height,price,count`. */
export function frames(...rows: readonly string[]): Shelf {
  return shelf(['name,width,height,price,count', ...rows].join('\n'));
}

export function plan(show: readonly ShowPicture[], mat: Pattern, from: Shelf, options: ShowOptions = {}): ShowPlan {
  return valueOf(planShow(show, mat, from, options));
}
