/** Which kinds of picture go into a frame as they are, and which are paper that wants a mat. */
import type { PictureKind } from './job';

const STIFF: readonly PictureKind[] = ['painting on canvas', 'painting on panel'];
/** What may be stretched or mounted on a panel, or not: the job has to say. */
const UNSURE: readonly PictureKind[] = ['textile', 'other'];

/** True of canvas and panel, which hold themselves and are fixed from behind. */
export function goesBare(kind: PictureKind): boolean {
  return STIFF.includes(kind);
}

/** True of what is known to be a sheet of paper. */
export function isPaper(kind: PictureKind): boolean {
  return !STIFF.includes(kind) && !UNSURE.includes(kind);
}
