/** Turns what went wrong on the machine into a host failure in plain words: what, where, and what would be right. */
import type { HostFailure, Reply } from '../bridge';

/** A call that was done. */
export function done<T>(value: T): Reply<T> {
  return { ok: true, value };
}

/** A call that could not be done, and why. */
export function failed(code: HostFailure['code'], message: string): { ok: false; failure: HostFailure } {
  return { ok: false, failure: { code, message } };
}

interface Wording {
  readonly code: HostFailure['code'];
  /** Follows the path in the message. */
  readonly words: string;
}

const wordings: Readonly<Record<string, Wording>> = {
  ENOENT: { code: 'not-found', words: 'is not there. Check the name, or whether the drive is connected.' },
  EACCES: { code: 'not-allowed', words: 'may not be used by you. Change its permissions, or choose another place.' },
  EPERM: { code: 'not-allowed', words: 'may not be used by you. Change its permissions, or choose another place.' },
  EROFS: { code: 'not-allowed', words: 'is on a drive that can only be read. Choose another place.' },
  ENOSPC: { code: 'disk-full', words: 'does not fit: the drive is full. Free some space, or choose another drive.' },
  EDQUOT: { code: 'disk-full', words: 'does not fit: your share of the drive is used up. Free some space there.' },
  EFBIG: { code: 'disk-full', words: 'does not fit: it is larger than the drive or your share of it allows.' },
  EISDIR: { code: 'not-a-file', words: 'is a folder. Choose a file.' },
  ENOTDIR: { code: 'not-a-folder', words: 'goes through something that is not a folder. Check the path.' },
  ENAMETOOLONG: { code: 'failed', words: 'has a longer name than this drive allows. Choose a shorter one.' },
  ELOOP: { code: 'failed', words: 'is a link that leads back to itself. Choose the file it should lead to.' },
  EMFILE: { code: 'failed', words: 'could not be opened: too many files are open. Close some programs and try again.' },
  EBUSY: { code: 'failed', words: 'is in use by another program. Close that, and try again.' },
  EIO: { code: 'failed', words: 'could not be read or written: the drive reports a fault. Copy your work to another.' },
};

/**
 * The failure for an error of the file system.
 *
 * @param path shown at the start of the message, in quotes.
 */
export function failureFrom(error: unknown, path: string): { ok: false; failure: HostFailure } {
  const name = errorName(error);
  const wording = wordings[name];
  if (wording) return failed(wording.code, `“${path}” ${wording.words}`);
  return failed('failed', `“${path}” could not be used (${name || String(error)}).`);
}

/** The system's name for an error, such as `ENOENT`; empty when it has none. */
export function errorName(error: unknown): string {
  if (typeof error !== 'object' || error === null || !('code' in error)) return '';
  return typeof error.code === 'string' ? error.code : '';
}
