/** Columns of a file that are not taken with it into a list of the user's, in words. */
import { listed } from '../../core/phrases';
import type { Problem } from '../../core/problem';

/** Such as ` Not taken: the columns “rack” and “bin”.`; empty where all are. @param problems of reading the file. */
export function columnsLeft(problems: readonly Problem[]): string {
  const names = problems.flatMap(({ code, at }) => (code === 'column-unknown' ? (/, column (.*)$/s.exec(at)?.[1] ?? []) : [])); // prettier-ignore
  if (names.length === 0) return '';
  const words = listed(names.map((name) => `“${name}”`), 6); // prettier-ignore
  return ` Not taken, since there is no place for ${names.length === 1 ? 'it' : 'them'} here: the ${names.length === 1 ? 'column' : 'columns'} ${words}.`;
}
