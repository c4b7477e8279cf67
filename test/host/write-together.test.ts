/** Several files into a folder: all of them, or nothing changed. */
import { readdirSync, rmSync } from 'node:fs';
import { chmod, mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { writeTogether } from '../../src/host/write-together';
import { asOrdinaryUser } from '../helpers/ordinary-user';
import { makeTempFolder } from '../helpers/temp-folder';

const root = await makeTempFolder();
await chmod(root, 0o755);
let count = 0;
async function newFolder(): Promise<string> {
  const folder = join(root, String((count += 1)));
  await mkdir(folder);
  return folder;
}

const files = ['a.pdf', 'a.csv', 'a.svg'].map((name) => ({ name, bytes: Buffer.from(`new ${name}`) }));
const codeOf = (reply: Awaited<ReturnType<typeof writeTogether>>) => (reply.ok ? 'done' : reply.failure.code);

it('writes every file and leaves nothing else', async () => {
  const folder = await newFolder();
  const reply = await writeTogether(folder, files, { replace: false });
  expect(reply).toEqual({ ok: true, value: files.map(({ name }) => join(folder, name)) });
  expect((await readdir(folder)).sort()).toEqual(['a.csv', 'a.pdf', 'a.svg']);
  expect(await readFile(join(folder, 'a.csv'), 'utf8')).toBe('new a.csv');
});

it('refuses all when one is already there, and replaces all when asked', async () => {
  const folder = await newFolder();
  await writeFile(join(folder, 'a.svg'), 'old');
  const refused = await writeTogether(folder, files, { replace: false });
  expect(refused).toMatchObject({ ok: false, failure: { code: 'exists' } });
  expect(await readdir(folder)).toEqual(['a.svg']);
  expect(await readFile(join(folder, 'a.svg'), 'utf8')).toBe('old');
  expect(codeOf(await writeTogether(folder, files, { replace: true }))).toBe('done');
  expect(await readFile(join(folder, 'a.svg'), 'utf8')).toBe('new a.svg');
  expect((await readdir(folder)).sort()).toEqual(['a.csv', 'a.pdf', 'a.svg']);
});

it('leaves nothing when cancelled', async () => {
  const folder = await newFolder();
  const reply = await writeTogether(folder, files, { replace: false, signal: AbortSignal.abort() });
  expect(codeOf(reply)).toBe('cancelled');
  expect(await readdir(folder)).toEqual([]);
});

it('leaves nothing when one file can’t be written', async () => {
  const folder = await newFolder();
  const tooLong = { name: 'x'.repeat(300), bytes: Buffer.from('x') };
  expect(codeOf(await writeTogether(folder, [...files, tooLong], { replace: false }))).toBe('failed');
  expect(await readdir(folder)).toEqual([]);
});

it('puts everything back when one file can’t be moved to its place', async () => {
  const folder = await newFolder();
  await writeFile(join(folder, 'a.pdf'), 'old');
  // The signal is asked once all are written and before any is moved: the moment at which the last draft is taken away.
  const signal = {
    get aborted() {
      const workshop = readdirSync(folder).find((name) => name.startsWith('.matwright-'));
      rmSync(join(folder, workshop ?? '', 'a.svg'));
      return false;
    },
  } as AbortSignal;
  expect(codeOf(await writeTogether(folder, files, { replace: true, signal }))).toBe('not-found');
  expect(await readdir(folder)).toEqual(['a.pdf']);
  expect(await readFile(join(folder, 'a.pdf'), 'utf8')).toBe('old');
});

it('leaves nothing behind in a folder that may not be written', async () => {
  const folder = await newFolder();
  await chmod(folder, 0o555);
  const reply = await asOrdinaryUser(() => writeTogether(folder, files, { replace: false }));
  expect(codeOf(reply)).toBe('not-allowed');
  expect(await readdir(folder)).toEqual([]);
});

it('says what is wrong with the folder', async () => {
  const folder = await newFolder();
  await writeFile(join(folder, 'file'), '');
  await mkdir(join(folder, 'a.csv'));
  expect(codeOf(await writeTogether(join(folder, 'none'), files, { replace: true }))).toBe('not-found');
  expect(codeOf(await writeTogether(join(folder, 'file'), files, { replace: true }))).toBe('not-a-folder');
  expect(codeOf(await writeTogether(folder, files, { replace: true }))).toBe('exists');
});
