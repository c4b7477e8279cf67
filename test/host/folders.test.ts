/** The folder listing for the screen's own chooser. */
import { mkdir, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { listFolder } from '../../src/host/folders';
import { makeTempFolder } from '../helpers/temp-folder';

const folder = await makeTempFolder();
await mkdir(join(folder, 'prints'));
await mkdir(join(folder, '.hidden'));
for (const name of ['wall 10.json', 'wall 2.json', 'Attic.JSON', 'notes.txt', 'json', '.secret.json']) {
  await writeFile(join(folder, name), '');
}
await symlink(join(folder, 'prints'), join(folder, 'a link'));
await symlink(join(folder, 'nowhere'), join(folder, 'broken.json'));

const list = async (request: { folder?: string; endings: string[] }) => {
  const reply = await listFolder(request, folder);
  if (!reply.ok) throw new Error(reply.failure.code);
  return reply.value;
};

it('shows folders first, then files with the ending, as people sort', async () => {
  const listing = await list({ folder, endings: ['json'] });
  expect(listing.entries.map(({ kind, name }) => `${kind} ${name}`)).toEqual([
    'folder a link',
    'folder prints',
    'file Attic.JSON',
    'file wall 2.json',
    'file wall 10.json',
  ]);
  expect(listing.entries[1]).toEqual({ kind: 'folder', name: 'prints', path: join(folder, 'prints') });
  expect(listing.parent).toBe(join(folder, '..'));
});

it('starts at home, and has no parent at the root', async () => {
  expect((await list({ endings: [] })).folder).toBe(folder);
  expect((await list({ folder: '/', endings: [] })).parent).toBeUndefined();
});

it('says what is wrong with a folder that is none', async () => {
  const code = async (path: string) => {
    const reply = await listFolder({ folder: path, endings: [] }, folder);
    return reply.ok ? 'done' : reply.failure.code;
  };
  expect(await code(join(folder, 'none'))).toBe('not-found');
  expect(await code(join(folder, 'notes.txt'))).toBe('not-a-folder');
});
