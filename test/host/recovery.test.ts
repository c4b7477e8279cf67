/** Unsaved work: kept for each session, listed newest first, forgotten only on purpose. */
import { readdir, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { dropRecovery, keepRecovery, listRecoveries } from '../../src/host/recovery';
import { makeTempFolder } from '../helpers/temp-folder';

const folder = join(await makeTempFolder(), 'state', 'unsaved');

const listed = async () => {
  const reply = await listRecoveries(folder);
  if (!reply.ok) throw new Error(reply.failure.message);
  return reply.value;
};

it('has nothing before anything was kept', async () => {
  expect(await listed()).toEqual([]);
});

it('keeps the last state of each session and lists them newest first', async () => {
  await keepRecovery(folder, { id: 'first', title: 'Ferns', text: '{"a":1}' });
  await new Promise((resolve) => setTimeout(resolve, 5));
  await keepRecovery(folder, { id: 'second', title: 'Charts', text: '{"b":1}', path: '/home/a/charts.json' });
  await new Promise((resolve) => setTimeout(resolve, 5));
  await keepRecovery(folder, { id: 'first', title: 'Ferns', text: '{"a":2}' });
  expect((await listed()).map(({ id, text, path }) => ({ id, text, path }))).toEqual([
    { id: 'first', text: '{"a":2}', path: undefined },
    { id: 'second', text: '{"b":1}', path: '/home/a/charts.json' },
  ]);
  expect(await readdir(folder)).toHaveLength(2);
  expect((await stat(join(folder, 'first.json'))).mode & 0o077).toBe(0);
});

it('passes over a broken file and leaves it in place', async () => {
  await writeFile(join(folder, 'broken.json'), '{"id":"bro');
  expect((await listed()).map(({ id }) => id)).toEqual(['first', 'second']);
  expect(await readdir(folder)).toContain('broken.json');
});

it('forgets what is dropped', async () => {
  expect(await dropRecovery(folder, 'first')).toEqual({ ok: true, value: { dropped: true } });
  expect(await dropRecovery(folder, 'first')).toEqual({ ok: true, value: { dropped: false } });
  expect((await listed()).map(({ id }) => id)).toEqual(['second']);
});

it('forgets even what is still being written', async () => {
  const kept = keepRecovery(folder, { id: 'third', title: '', text: 'x'.repeat(1_000_000) });
  expect(await dropRecovery(folder, 'third')).toEqual({ ok: true, value: { dropped: true } });
  await kept;
  expect((await listed()).map(({ id }) => id)).toEqual(['second']);
});

it('says where it can’t be kept', async () => {
  const file = join(folder, 'second.json');
  const reply = await keepRecovery(join(file, 'within'), { id: 'a', title: '', text: '' });
  expect(reply).toMatchObject({ ok: false, failure: { code: 'not-a-folder' } });
});
