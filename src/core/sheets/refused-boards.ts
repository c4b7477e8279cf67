/** Boards of which some piece comes from no sheet, so that nothing was asked of the planner for them. */
import { jobPieces } from '../pieces/job-pieces';
import type { boardAsks, BoardAsks } from './board-asks';

/** Names of the boards, each once. @param jobs in the order in which they were asked. */
export function refusedBoards(
  jobs: Parameters<typeof boardAsks>[0],
  { asks, unplanned }: Pick<BoardAsks, 'asks' | 'unplanned'>,
): string[] {
  const nameOf = (job: number, name: string) => `${job} ${name}`;
  const asked = new Set(asks.flatMap(({ ask }) => ask.pieces.map(({ from, id }) => (from ? nameOf(from.job, from.name) : id)))); // prettier-ignore
  const missing = jobs.flatMap(({ job, layout }, index) =>
    jobPieces(job, layout).pieces.filter(
      ({ name, material, comesWithFrame }) =>
        !comesWithFrame &&
        !asked.has(nameOf(index, name)) &&
        !unplanned.some((one) => one.name === name && one.material === material),
    ),
  );
  return [...new Map(missing.map(({ material }) => [material.toLowerCase(), material])).values()];
}
