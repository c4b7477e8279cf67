/** Problems of one file among several: each place begins with the file's name. */
import type { Problem, Result } from '../core/problem';

/** `shelf.csv line 2, column width`, or the name alone of what is wrong with all of it. @param name `-`: standard input. */
export function placedIn(name: string, problems: readonly Problem[]): Problem[] {
  const file = name === '-' ? 'standard input' : name;
  return problems.map((one) => ({ ...one, at: `${file} ${one.at}`.trim() }));
}

export function inFile<T>(name: string, result: Result<T>): Result<T> {
  return { ...result, problems: placedIn(name, result.problems) };
}
