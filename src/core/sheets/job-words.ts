/** Jobs that are planned together, by the numbers and titles that tell their pieces apart. */
import type { PieceSource } from './piece-source';
import type { PlannedBoard } from './planned-board';

/** Titles by the places of their jobs, in that order. */
export function jobTitles(boards: readonly PlannedBoard[]): ReadonlyMap<number, string> {
  const titles = new Map<number, string>();
  for (const { from } of boards.flatMap(({ ask }) => ask.pieces)) if (from) titles.set(from.job, from.title);
  return new Map([...titles].toSorted(([a], [b]) => a - b));
}

/** A job's title, its number before it where there are several: titles may be alike. */
export function jobWords({ job, title }: Pick<PieceSource, 'job' | 'title'>, count: number): string {
  return count > 1 ? `${job + 1} ${title}` : title;
}
