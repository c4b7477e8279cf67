/** Shows for tests: patterns, lists and shelves as a user writes them. */
import { readShelf } from '../../../src/core/shelf/read-shelf';
import type { Shelf } from '../../../src/core/shelf/shelf';
import { parsePattern, type Pattern } from '../../../src/core/show/pattern';
import { isHung } from '../../../src/core/show/print-list';
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

/** Overlap 1/8 in, borders of 1 1/2 in to 3 in, centred. */
export const plain = pattern({ borders: { range: { least: '1 1/2 in', greatest: '3 in' } } });

export const placeOf = (show: ShowPlan, title: string) => show.places.find(({ picture }) => picture.title === title)!;
export const frameOf = (show: ShowPlan, title: string) => {
  const place = placeOf(show, title);
  return isHung(place) ? (place.frame?.name ?? 'made to size') : place.state;
};
export const whyOf = (show: ShowPlan, title: string) => {
  const place = placeOf(show, title);
  return isHung(place) ? '' : place.why;
};
export const codesOf = ({ problems }: Pick<ShowPlan, 'problems'>) => problems.map(({ code }) => code);
