/** Boards that are to be cut upright though no job has them. */
import { listed } from '../phrases';
import { nearestWord } from '../nearest-word';
import type { Problem } from '../problem';
import type { BoardAsks } from './board-asks';

/** A warning for each name, with the one that may be meant. */
export function uprightProblems(
  names: readonly string[],
  { asks, unplanned }: Pick<BoardAsks, 'asks' | 'unplanned'>,
): Problem[] {
  const boards = [...new Set([...asks.map(({ board }) => board), ...unplanned.map(({ material }) => material)])];
  const known = new Set(boards.map((board) => board.toLowerCase()));
  return names
    .filter((name) => !known.has(name.toLowerCase()))
    .map((name) => {
      const near = nearestWord(name, boards);
      const meant = near === undefined ? '' : ` Is “${near}” meant?`;
      const remedy = `one of ${listed(boards.map((board) => `“${board}”`))}`;
      return {
        code: 'upright-unknown',
        severity: 'warning',
        at: 'cutting',
        message: `Nothing is cut of “${name.slice(0, 60)}”, which is to keep its pieces from being turned.${meant}`,
        value: name.slice(0, 60),
        remedy,
      };
    });
}
