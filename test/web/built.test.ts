/** The built web host as a user starts it: opens a job, saves and exports, survives a full drive, ends when told. */
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeAll, expect, it } from 'vitest';
import type { HostCalls } from '../../src/bridge';
import { callWeb } from '../helpers/call-web';
import { makeTempFolder } from '../helpers/temp-folder';
import { startWebHost, type RunningWebHost } from '../helpers/web';

const folder = await makeTempFolder();
const env = { XDG_STATE_HOME: join(folder, 'state'), HOME: folder };

let web: RunningWebHost | undefined;
beforeAll(() => {
  if (!existsSync('out/built')) throw new Error('The program is not built: run `npm run build` first.');
});
afterEach(async () => {
  await web?.stop();
  web = undefined;
});

const exportRequest = (text: string, target: string): HostCalls['exportJob']['request'] => ({
  id: 'e',
  text,
  folder: target,
  baseName: 'mat',
  replace: true,
  options: { paper: 'letter', view: 'back', units: 'in', only: ['template'], turnEverySecondPage: false },
});

it('tells what it is and which job to open, and ends at Ctrl+C', async () => {
  web = await startWebHost({ words: ['--open', join(folder, 'ferns.json')], env });
  const info = await callWeb(web.address, 'info', {});
  expect(info).toMatchObject({ value: { kind: 'browser', folder, startWith: join(folder, 'ferns.json') } });
  expect(await web.stop()).toBe(0);
  await expect(fetch(web.address)).rejects.toThrow();
});

it('exports every sample', async () => {
  web = await startWebHost({ env });
  const samples = await callWeb(web.address, 'samples', {});
  if (!samples.ok) throw new Error(samples.failure.message);
  expect(samples.value.length).toBeGreaterThan(0);
  for (const { name, text } of samples.value) {
    const target = join(folder, name);
    await mkdir(target);
    const reply = await callWeb(web.address, 'exportJob', exportRequest(text, target));
    if (name.includes('painted-sea')) {
      // Without a mat there is nothing to cut, and so no template.
      expect(reply).toMatchObject({ failure: { code: 'job-has-errors', problems: [{ code: 'nothing-to-cut' }] } });
      expect(await readdir(target)).toEqual([]);
      continue;
    }
    if (!reply.ok) throw new Error(JSON.stringify(reply.failure));
    const [file] = reply.value.files;
    expect((await readFile(file!.path)).subarray(0, 5).toString()).toBe('%PDF-');
  }
});

it('keeps the old file, and leaves no half of a new one, when the drive is full', async () => {
  web = await startWebHost({ env, largestFile: 8 });
  const target = join(folder, 'full');
  await mkdir(target);
  const path = join(target, 'job.json');
  await writeFile(path, 'old');
  const saved = await callWeb(web.address, 'saveJob', { path, text: 'x'.repeat(100_000), replace: true });
  expect(saved).toMatchObject({ ok: false, failure: { code: 'disk-full' } });
  const samples = await callWeb(web.address, 'samples', {});
  if (!samples.ok) throw new Error(samples.failure.message);
  const exported = await callWeb(web.address, 'exportJob', exportRequest(samples.value[0]!.text, target));
  expect(exported).toMatchObject({ ok: false, failure: { code: 'disk-full' } });
  expect(await readdir(target)).toEqual(['job.json']);
  expect(await readFile(path, 'utf8')).toBe('old');
});
