/** Lists a folder for the screen's own file chooser: folders, and files with one of the wanted endings. */
import { readdir, stat } from 'node:fs/promises';
import type { Dirent } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import type { FolderEntry, FolderListing, HostCalls, Reply } from '../bridge';
import { done, failed, failureFrom } from './failure';

/**
 * Folders first, each by name as people sort (2 before 10); hidden ones are left out.
 *
 * @param home listed when the request names no folder.
 */
export async function listFolder(
  request: HostCalls['listFolder']['request'],
  home: string,
): Promise<Reply<FolderListing>> {
  const folder = resolve(request.folder ?? home);
  try {
    const found = await readdir(folder, { withFileTypes: true });
    const shown = found.filter((entry) => !entry.name.startsWith('.'));
    const entries = await Promise.all(shown.map((entry) => toEntry(folder, entry, request.endings)));
    const parent = dirname(folder);
    return done({
      folder,
      ...(parent === folder ? {} : { parent }),
      entries: entries.filter((entry) => entry !== undefined).sort(byKindThenName),
    });
  } catch (error) {
    const failure = failureFrom(error, folder);
    if (failure.failure.code !== 'not-a-folder') return failure;
    return failed('not-a-folder', `“${folder}” is not a folder. Choose a folder.`);
  }
}

async function toEntry(folder: string, entry: Dirent, endings: readonly string[]): Promise<FolderEntry | undefined> {
  const path = join(folder, entry.name);
  // A link counts as what it leads to; one that leads nowhere is left out.
  const target = entry.isSymbolicLink() ? await stat(path).catch(() => undefined) : entry;
  if (target?.isDirectory()) return { name: entry.name, path, kind: 'folder' };
  if (target?.isFile() && hasEnding(entry.name, endings)) return { name: entry.name, path, kind: 'file' };
  return undefined;
}

function hasEnding(name: string, endings: readonly string[]): boolean {
  const lower = name.toLowerCase();
  return endings.some((ending) => lower.endsWith(`.${ending.toLowerCase()}`));
}

const order = new Intl.Collator('en', { numeric: true });

function byKindThenName(a: FolderEntry, b: FolderEntry): number {
  if (a.kind !== b.kind) return a.kind === 'folder' ? -1 : 1;
  return order.compare(a.name, b.name);
}
