/** One item of a written job turned by a quarter or turned over, where it stands. */
import { bad, good, isError, type Problem, type Result } from '../problem';
import { setAt, valueAt } from './edit';
import { layersIn } from './layers-in';
import { isQuarterTurn, type Motion } from './motion';
import { movedItem, upset } from './turn-item';
import { movedWindow } from './turn-window';
import type { WrittenFreeWindow, WrittenJob, WrittenNode } from './written';

/**
 * @param windows the arrangement, also where the job leaves it unsaid.
 * @param at path of a window, a spread or a group, or of a window placed freely.
 */
export function turnItem(
  job: WrittenJob,
  windows: WrittenNode | undefined,
  at: string,
  motion: Motion,
): Result<WrittenJob> {
  const written = windows !== undefined && at.startsWith('windows') ? { ...job, windows } : job;
  const item = /^(windows(\.items\[\d+\])*|free\[\d+\])$/.test(at) ? valueAt(written, at) : undefined;
  if (item === undefined) return bad([unknown(at)]);
  // Turned over are only openings in a mat; a picture can't be.
  if (layersIn(job).length === 0 && !isQuarterTurn(motion)) return good(job);
  const problems: Problem[] = [];
  const say = (problem: Problem) => void problems.push(problem);
  const moved = at.startsWith('free')
    ? movedFree(item as WrittenFreeWindow, at, motion, say)
    : movedItem(item as WrittenNode, at, motion, say);
  return problems.some(isError) ? bad(problems) : good(setAt(written, at, moved), problems);
}

/** Its place is held from the same edges as before. */
export function movedFree(
  item: WrittenFreeWindow,
  at: string,
  motion: Motion,
  say: (problem: Problem) => void,
): WrittenFreeWindow {
  const { window, isUpset } = movedWindow(item, motion);
  if (isUpset) say(upset(window, at));
  return window;
}

function unknown(at: string): Problem {
  return {
    code: 'item-unknown',
    severity: 'error',
    at: '',
    message: `The job has no window or group at "${at.slice(0, 80)}"; name one by its path, such as windows, windows.items[0] or free[0].`,
    value: at.slice(0, 80),
    remedy: 'a path such as windows.items[0]',
  };
}
