/** What is said of drawings that lie beside those of a plan and are not of it. */
import { counted, listed } from '../../core/phrases';
import type { Problem } from '../../core/problem';

/** More of them say nothing new. */
const MOST_TOLD = 3;

/** @param names of files, one at least. */
export function otherDrawings(names: readonly string[]): Problem {
  const [are, them] = names.length === 1 ? ['is', 'it'] : ['are', 'them'];
  return {
    code: 'older-drawings',
    severity: 'warning',
    at: '',
    message: `The folder also holds ${counted(names.length, 'drawing')} of another plan, which ${are} not of this one: ${listed(names, MOST_TOLD)}. Don’t cut by ${them}; move or delete ${them}.`,
  };
}
