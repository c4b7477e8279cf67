/** Writes several texts into a folder, made where it is not there: all of them or none. */
import { mkdir } from 'node:fs/promises';
import type { HostCalls, Reply } from '../bridge';
import { done, failureFrom } from './failure';
import { writeTogether } from './write-together';

/** See `HostCalls.writeFolder` for what it refuses. */
export async function writeFolder({
  folder,
  files,
  replace,
}: HostCalls['writeFolder']['request']): Promise<Reply<HostCalls['writeFolder']['reply']>> {
  try {
    await mkdir(folder, { recursive: true });
  } catch (error) {
    return failureFrom(error, folder);
  }
  const named = files.map(({ name, text }) => ({ name, bytes: Buffer.from(text, 'utf8') }));
  const written = await writeTogether(folder, named, { replace });
  return written.ok ? done({ paths: written.value }) : written;
}
