/** The host calls as a screen makes them: checked, answered whatever happens, exports stopped when asked. */
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import type { CallName, HostCalls, Progress, Reply } from '../../src/bridge';
import { createHost } from '../../src/host/create-host';
import { done } from '../../src/host/failure';
import { browserShell } from '../../src/web/browser-shell';
import { makeTempFolder } from '../helpers/temp-folder';

const root = await makeTempFolder();
const setup = { version: '1', resources: 'resources', state: join(root, 'state'), shell: browserShell };
const host = createHost(setup);

/** Nine prints on one board: enough pages to stop in the middle of. */
const job = JSON.stringify({
  format: 'matwright-job',
  version: 1,
  title: 'Nine linocuts',
  units: 'in',
  pictures: Array.from({ length: 9 }, () => ({ size: '8 x 10 in' })),
  windows: { kind: 'grid', columns: 3, items: Array.from({ length: 9 }, (_, index) => String(index + 1)) },
  borders: { rule: 'equal', all: '3 in' },
});

type ExportRequest = HostCalls['exportJob']['request'];

async function request(over: Partial<ExportRequest> = {}): Promise<ExportRequest> {
  const folder = join(root, String(Math.random()).slice(2));
  await mkdir(folder);
  const options = { paper: 'letter', view: 'back', units: 'in', turnEverySecondPage: false } as const;
  return {
    id: 'e1',
    text: job,
    folder,
    baseName: 'nine',
    replace: false,
    options: { ...options, only: ['template', 'cut-list', 'proof'] },
    ...over,
  };
}

type Exported = Reply<HostCalls['exportJob']['reply']>;
const exportJob = async (asked: ExportRequest, context = {}) =>
  (await host.call('exportJob', asked, context)) as Exported;
const codeOf = (reply: Reply<unknown>) => (reply.ok ? 'done' : reply.failure.code);

describe('requests', () => {
  it.each<[string, unknown]>([
    ['info', undefined],
    ['info', { more: 1 }],
    ['readJob', {}],
    ['readJob', { path: '' }],
    ['saveJob', { path: '/a', text: 1 }],
    ['listFolder', { endings: 'json' }],
    ['exportJob', { id: 'a' }],
    ['keepRecovery', { id: '../a', title: '', text: '' }],
    ['dropRecovery', { id: '' }],
    ['toString', {}],
    ['__proto__', {}],
  ])('%s with %j is refused in words', async (name, given) => {
    const reply = await host.call(name, given);
    expect(reply).toMatchObject({
      ok: false,
      failure: { code: 'failed', message: expect.stringContaining(name) as string },
    });
  });

  it('answers even when a handler breaks', async () => {
    const said = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const broken = createHost({
      ...setup,
      shell: { ...browserShell, pickJob: () => Promise.reject(new Error('broken')) },
    });
    const reply = await broken.call('pickJob', {});
    expect(reply).toMatchObject({ ok: false, failure: { code: 'failed' } });
    expect(said).toHaveBeenCalledOnce();
    said.mockRestore();
  });

  it('has the desktop’s calls done by its shell', async () => {
    const asked: unknown[] = [];
    const shell = {
      ...browserShell,
      kind: 'desktop' as const,
      pickSavePath: async (given: HostCalls['pickSavePath']['request']) => {
        asked.push(given);
        return done({ path: '/b.json' });
      },
    };
    const desktop = createHost({ ...setup, shell, startWith: '/a.json' });
    expect(await desktop.call('pickSavePath', { suggested: '/a.json' })).toEqual(done({ path: '/b.json' }));
    expect(asked).toEqual([{ suggested: '/a.json' }]);
    expect(await desktop.call('info', {})).toMatchObject({ value: { kind: 'desktop', startWith: '/a.json' } });
    expect(await host.call('pickJob' satisfies CallName, {})).toMatchObject({ ok: false });
  });
});

describe('an export', () => {
  it('writes every file asked for, telling how far it is', async () => {
    const asked = await request();
    const steps: Progress[] = [];
    const reply = await exportJob(asked, { onProgress: (step: Progress) => steps.push(step) });
    if (!reply.ok) throw new Error(JSON.stringify(reply.failure));
    expect(reply.value.files.map(({ path }) => path).every(existsSync)).toBe(true);
    expect(await readdir(asked.folder)).toHaveLength(3);
    expect(steps.every(({ done: part, step }) => part >= 0 && part <= 1 && step !== '')).toBe(true);
    const drawn: Progress[] = [];
    expect(codeOf(await exportJob(asked, { onProgress: (step: Progress) => drawn.push(step) }))).toBe('exists');
    // Told before anything is drawn.
    expect(drawn).toEqual([]);
    expect(codeOf(await exportJob({ ...asked, replace: true }))).toBe('done');
  });

  it('puts pictures from the folder of the job into the proof, and warns of those it can’t read', async () => {
    const jobPath = join(root, 'with-picture.json');
    await writeFile(join(root, 'fern.gif'), Buffer.from('R0lGODlhAQABAAAAACwAAAAAAQABAAACAkQBADs=', 'base64'));
    const pictures = [
      { size: '8 x 10 in', file: 'fern.gif' },
      { size: '8 x 10 in', file: 'gone.gif' },
    ];
    const text = JSON.stringify({ format: 'matwright-job', version: 1, pictures });
    const reply = await exportJob(await request({ text, jobPath }));
    if (!reply.ok) throw new Error(JSON.stringify(reply.failure));
    const proof = reply.value.files.find(({ kind }) => kind === 'proof')?.path ?? '';
    expect((await readFile(proof, 'utf8')).match(/href="data:image\/gif;base64,R0lGOD/g)).toHaveLength(1);
    expect(reply.value.problems.map(({ code, at }) => [code, at])).toContainEqual([
      'picture-file-unreadable',
      'pictures[1].file',
    ]);
  });

  it('is stopped in the middle and leaves nothing', async () => {
    const asked = await request();
    let answer: Promise<unknown> | undefined;
    const reply = await exportJob(asked, { onProgress: () => (answer ??= host.call('cancel', { id: asked.id })) });
    expect(codeOf(reply)).toBe('cancelled');
    expect(await answer).toEqual(done({ cancelled: true }));
    expect(await readdir(asked.folder)).toEqual([]);
    expect(await host.call('cancel', { id: asked.id })).toEqual(done({ cancelled: false }));
  });

  it('is given up when its page has gone', async () => {
    const asked = await request();
    expect(codeOf(await exportJob(asked, { gone: AbortSignal.abort() }))).toBe('cancelled');
    expect(await readdir(asked.folder)).toEqual([]);
  });

  it('gives the problems of a job with errors and writes nothing', async () => {
    const asked = await request({ text: job.replace('"8 x 10 in"', '"8 x ten in"') });
    const reply = await exportJob(asked);
    if (reply.ok) throw new Error('exported');
    expect(reply.failure.code).toBe('job-has-errors');
    expect(reply.failure.problems).toContainEqual(
      expect.objectContaining({ at: expect.stringMatching(/^pictures\[0\]\.size/) as string, severity: 'error' }),
    );
    expect(await readdir(asked.folder)).toEqual([]);
  });

  it.each(['', '.', '..', '../up', 'a/b', 'a\\b', 'a\0b', 'a?', 'end.', 'x'.repeat(201)])(
    'refuses the name %j',
    async (baseName) => {
      const asked = await request({ baseName });
      expect(codeOf(await exportJob(asked))).toBe('failed');
      expect(await readdir(root)).not.toContain('up-template.pdf');
      expect(await readdir(asked.folder)).toEqual([]);
    },
  );

  it('says what is wrong with the folder', async () => {
    expect(codeOf(await exportJob(await request({ folder: join(root, 'none') })))).toBe('not-found');
    expect(codeOf(await exportJob(await request({ folder: 'relative' })))).toBe('not-found');
  });
});
