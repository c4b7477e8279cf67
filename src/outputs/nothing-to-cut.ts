/** What an export says of files of cuts, where there is no mat and so nothing to cut. */
import type { Problem } from '../core/problem';

/** @param leftOut what the files are called that are not made; @param remaining true where another file still is. */
export function nothingToCut(leftOut: readonly string[], remaining: boolean): Problem[] {
  const words = [...new Set(leftOut)];
  const last = words.pop();
  if (last === undefined) return [];
  const list = words.length === 0 ? last : `${words.join(', ')} and ${last}`;
  return [
    {
      code: 'nothing-to-cut',
      severity: remaining ? 'warning' : 'error',
      at: 'mat.layers',
      message: `The picture goes into its frame without a mat, so there is nothing to cut. ${remaining ? 'Left out' : 'Not written'}, since nothing would stand in it: ${list}.`,
      remedy: 'the proof picture alone, or a mat',
    },
  ];
}
