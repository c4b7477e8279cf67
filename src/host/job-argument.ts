/** Finds the job file among the words the program was started with. */
import { resolve } from 'node:path';

/**
 * The full path of the first word that is not an option.
 *
 * @param words the command line without the program (and, when not packaged, without the program's folder).
 */
export function findJobArgument(words: readonly string[], folder: string): string | undefined {
  const file = words.find((word) => word !== '' && !word.startsWith('-'));
  return file === undefined ? undefined : resolve(folder, file);
}
