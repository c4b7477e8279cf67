/** Hanging of a job in tests, opened the way the program does. */
import { hang, type Hung } from '../../../src/core/hanging/hang';
import type { HangingAsk } from '../../../src/core/hanging/hanging-ask';
import type { Problem } from '../../../src/core/problem';
import { readShelf } from '../../../src/core/shelf/read-shelf';
import type { Shelf } from '../../../src/core/shelf/shelf';
import { planned, type Contents } from '../open';

/** A frame of 11 x 14 in: outside 12 1/8 x 15 1/8 in. */
export const FERN: Contents = { pictures: [{ title: 'Lady fern', size: '8 x 10 in' }], frame: { size: '11 x 14 in' } };

/** What is asked of hanging; the job must be one that can be cut. */
export function askOf(contents: Contents, more: Omit<HangingAsk, 'job' | 'frame'> = {}): HangingAsk {
  const { job, layout } = planned(contents);
  return { job, frame: layout.frame, ...more };
}

export function hung(contents: Contents, more: Omit<HangingAsk, 'job' | 'frame'> = {}): Hung {
  const found = hang(askOf(contents, more));
  if (!found.ok) throw new Error(found.problems.map(({ message }) => message).join('\n'));
  return found.value;
}

export function problemsOf(contents: Contents, more: Omit<HangingAsk, 'job' | 'frame'> = {}): readonly Problem[] {
  return hang(askOf(contents, more)).problems;
}

/** The one problem of a kind; throws when it is not there. */
export function problemOf(contents: Contents, code: string, more: Omit<HangingAsk, 'job' | 'frame'> = {}): Problem {
  const problems = problemsOf(contents, more);
  const found = problems.find((problem) => problem.code === code);
  if (!found) throw new Error(`no ${code} among: ${problems.map((problem) => problem.code).join(', ') || 'none'}`);
  return found;
}

/** Of a table that must be readable. */
export function shelf(text: string): Shelf {
  const read = readShelf(text);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'));
  return read.value;
}
