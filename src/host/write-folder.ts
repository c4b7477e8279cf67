/** Writes several texts into a folder, made where it is not there: all of them or none. */
import type { HostCalls, Reply } from '../bridge';
import { done } from './failure';
import { makeFolder, removeEmpty } from './make-folder';
import { writeTogether } from './write-together';

/** See `HostCalls.writeFolder` for what it refuses. A folder that was made for it goes again when nothing came of it. */
export async function writeFolder({
  folder,
  files,
  replace,
}: HostCalls['writeFolder']['request']): Promise<Reply<HostCalls['writeFolder']['reply']>> {
  const made = await makeFolder(folder);
  if (!made.ok) return made;
  const named = files.map(({ name, text }) => ({ name, bytes: Buffer.from(text, 'utf8') }));
  const written = await writeTogether(folder, named, { replace });
  if (written.ok) return done({ paths: written.value });
  if (made.value !== undefined) await removeEmpty(folder, made.value);
  return written;
}
