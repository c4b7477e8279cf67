/** Reads and saves job files: a save is whole or not at all, and never covers what someone else changed. */
import { createHash } from 'node:crypto';
import { stat } from 'node:fs/promises';
import { dirname, isAbsolute } from 'node:path';
import type { HostCalls, JobFile, Reply } from '../bridge';
import { done, errorName, failed, failureFrom } from './failure';
import { megabytes, readWhole } from './read-file';
import { saveWhole } from './save-whole';
import { takeTurn } from './take-turn';

/** A job of ten thousand windows written out with every size is under 5 MB. */
export const jobSizeLimit = 10_000_000;

/** The job file at an absolute path. @param keepsMark whether a byte order mark stays in the text, for what is written back. */
export async function readJob(path: string, keepsMark = false): Promise<Reply<JobFile>> {
  const given = checkAbsolute(path);
  if (!given.ok) return given;
  const read = await readWhole(path, jobSizeLimit);
  if (!read.ok) return read;
  const text = decodeText(read.value, keepsMark);
  if (text === undefined) {
    return failed(
      'not-readable',
      `“${path}” is not text in UTF-8. A job is JSON, a table is comma-separated values; save it as UTF-8.`,
    );
  }
  return done({ path, text, stamp: stampOf(read.value) });
}

/** Saves a job; see `HostCalls.saveJob` for what it refuses. */
export function saveJob(request: HostCalls['saveJob']['request']): Promise<Reply<JobFile>> {
  return takeTurn(request.path, () => saveInTurn(request));
}

async function saveInTurn(request: HostCalls['saveJob']['request']): Promise<Reply<JobFile>> {
  const { path, text } = request;
  const bytes = Buffer.from(text, 'utf8');
  if (bytes.length > jobSizeLimit) {
    return failed('too-large', `The job has ${megabytes(bytes.length)}; the most that is saved is 10 MB.`);
  }
  const free = await checkTarget(request);
  if (!free.ok) return free;
  try {
    await saveWhole(path, bytes);
  } catch (error) {
    return failureFrom(error, errorName(error) === 'ENOENT' ? dirname(path) : path);
  }
  return done({ path, text, stamp: stampOf(bytes) });
}

/** Whether the save may take the place it asks for. */
async function checkTarget(request: HostCalls['saveJob']['request']): Promise<Reply<true>> {
  const { path, stamp, replace } = request;
  const given = checkAbsolute(path);
  if (!given.ok) return given;
  const found = await stat(path).catch((error: unknown) => errorName(error));
  if (found === 'ENOENT') return checkFolder(dirname(path));
  if (typeof found === 'string') return failureFrom({ code: found }, path);
  if (found.isDirectory()) return failed('not-a-file', `“${path}” is a folder. Give the job a file name.`);
  if (!found.isFile()) return failed('not-a-file', `“${path}” is a device, not a file. Choose another name.`);
  if (stamp !== undefined) return checkUnchanged(path, stamp);
  if (!replace) return failed('exists', `“${path}” is already there. Replace it, or choose another name.`);
  return done(true);
}

async function checkFolder(folder: string): Promise<Reply<true>> {
  try {
    if ((await stat(folder)).isDirectory()) return done(true);
    return failed('not-a-folder', `“${folder}” is not a folder. Choose another place.`);
  } catch (error) {
    return failureFrom(error, folder);
  }
}

async function checkUnchanged(path: string, stamp: string): Promise<Reply<true>> {
  const read = await readWhole(path, Infinity);
  if (!read.ok) return read;
  if (stampOf(read.value) === stamp) return done(true);
  return failed(
    'changed-on-disk',
    `“${path}” was changed by another program or window since it was opened. Open it again, or save under another name.`,
  );
}

/** Names this very content. */
function stampOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

function decodeText(bytes: Uint8Array, keepsMark: boolean): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: keepsMark }).decode(bytes);
  } catch {
    return undefined;
  }
}

function checkAbsolute(path: string): Reply<true> {
  if (isAbsolute(path) && !path.includes('\0')) return done(true);
  return failed('not-found', `“${path}” is not a full path. Give it from the root of the drive.`);
}
