/** Which view shows the field of a path in the written job. */
import type { ViewId } from './look.svelte';

export function viewOfPath(path: string): ViewId {
  // What frames of the shelf are chosen by is asked beside them.
  if (path.startsWith('borders.range')) return 'frame';
  const head = /^[a-z]+/i.exec(path)?.[0];
  switch (head) {
    case 'frame':
      return 'frame';
    case 'mat':
    case 'borders':
      return 'mat';
    case 'windows':
    case 'free':
      return 'windows';
    case 'cutting':
      return 'cutting';
    case 'package':
      return 'package';
    case 'hanging':
    case 'wall':
      return 'hanging';
    default:
      return 'pictures';
  }
}
