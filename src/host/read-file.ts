/** Reads a whole file within a size limit, so that a wrong choice never fills the memory. */
import { constants, open } from 'node:fs/promises';
import type { Reply } from '../bridge';
import { done, failed, failureFrom } from './failure';

/**
 * The bytes of a file.
 *
 * @param limit in bytes; more is refused with `too-large`.
 */
export async function readWhole(path: string, limit: number): Promise<Reply<Buffer>> {
  try {
    // Non-blocking, since opening a named pipe would otherwise wait for ever for its writer.
    const handle = await open(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
    try {
      const found = await handle.stat();
      if (found.isDirectory()) return failed('not-a-file', `“${path}” is a folder. Choose a file.`);
      if (!found.isFile()) return failed('not-a-file', `“${path}” is a device, not a file. Choose a file.`);
      if (found.size > limit) return tooLarge(path, found.size, limit);
      const bytes = await handle.readFile();
      return bytes.length > limit ? tooLarge(path, bytes.length, limit) : done(bytes);
    } finally {
      await handle.close();
    }
  } catch (error) {
    return failureFrom(error, path);
  }
}

function tooLarge(path: string, size: number, limit: number): Reply<never> {
  return failed('too-large', `“${path}” has ${megabytes(size)}; the most that is read is ${megabytes(limit)}.`);
}

/** A number of bytes as shown to the user. */
export function megabytes(bytes: number): string {
  return `${(bytes / 1e6).toFixed(bytes < 1e8 ? 1 : 0)} MB`;
}
