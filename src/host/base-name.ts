/** What files that are made together may be called. */
import type { Reply } from '../bridge';
import { done, failed } from './failure';

/** A base name must be a plain file name on every system, so that a job folder can be carried from one to another. */
export function checkBaseName(name: string): Reply<true> {
  const bad = [...name].find((letter) => letter < ' ' || '/\\:*?"<>|'.includes(letter));
  if (bad !== undefined) {
    const shown = bad < ' ' ? 'a control character' : bad;
    return failed('failed', `The file name “${name}” may not hold ${shown}. Use letters, digits, spaces and hyphens.`);
  }
  if (/^\.|[. ]$|^$/.test(name)) {
    return failed('failed', `The file name “${name}” may not be empty, begin with a dot, or end in a dot or space.`);
  }
  if (Buffer.byteLength(name) > 200) return failed('failed', 'The file name is too long. Use at most 200 letters.');
  return done(true);
}
