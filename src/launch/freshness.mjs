// Whether something built is older than what it was built from.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/**
 * True when `built` is missing or older than any of the files and folders named.
 * Folders count with their own times too, since taking a file away changes only those.
 *
 * @param {string} built
 * @param {readonly string[]} sources
 */
export function isStale(built, sources) {
  if (!existsSync(built)) return true;
  const made = statSync(built).mtimeMs;
  return sources.some((source) => isNewer(source, made));
}

/** @type {(path: string, time: number) => boolean} */
function isNewer(path, time) {
  const found = statSync(path, { throwIfNoEntry: false });
  if (!found) return false;
  if (found.mtimeMs > time) return true;
  return found.isDirectory() && readdirSync(path).some((name) => isNewer(join(path, name), time));
}
