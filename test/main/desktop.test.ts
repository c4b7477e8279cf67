/** The built desktop program, main and preload unchanged, on the Electron stand-in: calls, dialogs, menu, guards, closing. */
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { CallName, HostCalls, Progress, Reply } from '../../src/bridge';
import { openDesktop, startDesktop, type Desktop } from '../helpers/desktop';
import { makeTempFolder } from '../helpers/temp-folder';

const folder = await makeTempFolder();
const env = { XDG_STATE_HOME: join(folder, 'state'), HOME: folder };
const job = join(folder, 'ferns.json');

let desktop: Desktop;

beforeAll(async () => {
  if (!existsSync('out/built')) throw new Error('The program is not built: run `npm run build` first.');
  await writeFile(job, '{}');
  desktop = await openDesktop({ words: [job], env });
});
afterAll(() => desktop.kill());

/** Calls the host as the screen does. */
async function call<K extends CallName>(
  name: K,
  request: HostCalls[K]['request'],
): Promise<Reply<HostCalls[K]['reply']>> {
  return (await desktop.page.evaluate(
    ([called, asked]) => window.matwrightHost!.call(called as 'info', asked as Record<string, never>),
    [name, request] as const,
  )) as Reply<HostCalls[K]['reply']>;
}

async function valueOf<K extends CallName>(name: K, request: HostCalls[K]['request']): Promise<HostCalls[K]['reply']> {
  const reply = await call(name, request);
  if (!reply.ok) throw new Error(reply.failure.message);
  return reply.value;
}

/** Notes the host's events in the page from here on. */
const listen = (page = desktop.page) =>
  page.evaluate(() => {
    const heard: unknown[] = [];
    Object.assign(window, { heard });
    for (const event of ['command', 'closing', 'openJob'] as const) {
      window.matwrightHost!.on(event, (payload) => heard.push({ event, ...payload }));
    }
  });
const heard = (page = desktop.page) => page.evaluate(() => Reflect.get(window, 'heard') as unknown[]);

describe('calls', () => {
  it('tell the screen where it is and what to open first', async () => {
    expect(await valueOf('info', {})).toEqual({
      kind: 'desktop',
      version: (JSON.parse(await readFile('package.json', 'utf8')) as { version: string }).version,
      folder,
      separator: '/',
      startWith: job,
    });
  });

  it('open a sample, save it, and read it back', async () => {
    const [sample] = await valueOf('samples', {});
    const path = join(folder, 'sample.json');
    const saved = await valueOf('saveJob', { path, text: sample!.text });
    expect(await valueOf('readJob', { path })).toEqual(saved);
    expect(await readFile(path, 'utf8')).toBe(sample!.text);
    expect(await call('saveJob', { path, text: 'other' })).toMatchObject({ ok: false, failure: { code: 'exists' } });
  });

  it('export a sample with progress, and the PDF is sound', async () => {
    const [sample] = await valueOf('samples', {});
    const target = join(folder, 'export');
    await mkdir(target);
    const request: HostCalls['exportJob']['request'] = {
      id: 'one',
      text: sample!.text,
      folder: target,
      baseName: 'mat',
      replace: false,
      options: {
        paper: 'letter',
        view: 'back',
        units: 'in',
        only: ['template', 'cut-list', 'proof'],
        turnEverySecondPage: false,
      },
    };
    const { reply, steps } = await desktop.page.evaluate(async (asked) => {
      const steps: Progress[] = [];
      return { reply: await window.matwrightHost!.call('exportJob', asked, (progress) => steps.push(progress)), steps };
    }, request);
    if (!reply.ok) throw new Error(JSON.stringify(reply.failure));
    expect(reply.value.files.map(({ kind }) => kind)).toEqual(['template', 'cut-list', 'proof']);
    expect(await readdir(target)).toHaveLength(3);
    execFileSync('qpdf', ['--check', reply.value.files[0]!.path]);
    expect(steps.length).toBeGreaterThan(2);
    expect(steps.map(({ done }) => done)).toEqual(steps.map(({ done }) => done).sort((a, b) => a - b));
    expect(steps.at(-1)!.done).toBe(1);
  });

  it('are refused in words when they are not as agreed', async () => {
    const strange = await call('nothing' as 'info', {});
    expect(strange).toMatchObject({ ok: false, failure: { code: 'failed' } });
    expect(await call('constructor' as 'info', {})).toMatchObject({ ok: false });
    const malformed = await call('readJob', { path: 7 } as never);
    expect(malformed.ok ? '' : malformed.failure.message).toContain('path');
    expect(await call('dropRecovery', { id: '../../x' })).toMatchObject({ ok: false });
  });
});

describe('dialogs', () => {
  it('give the path that was chosen, or none', async () => {
    await desktop.act('answer', { canceled: false, filePaths: [job] });
    expect(await valueOf('pickJob', {})).toEqual({ path: job });
    expect(await valueOf('pickJob', {})).toEqual({});
    await desktop.act('answer', { canceled: false, filePath: join(folder, 'b.json') });
    expect(await valueOf('pickSavePath', { suggested: join(folder, 'a.json') })).toEqual({
      path: join(folder, 'b.json'),
    });
    await desktop.act('answer', { canceled: false, filePaths: [folder] });
    expect(await valueOf('pickFolder', { suggested: folder })).toEqual({ folder });
    const asked = (await desktop.act('asked')) as { kind: string; options: { defaultPath?: string } }[];
    expect(asked.map(({ kind }) => kind)).toEqual(['open', 'open', 'save', 'open']);
    expect(asked[2]!.options.defaultPath).toBe(join(folder, 'a.json'));
  });

  it('show an exported file in its folder', async () => {
    expect(await valueOf('showInFolder', { path: job })).toEqual({ shown: true });
    expect(await desktop.act('shown')).toEqual([job]);
  });
});

describe('events', () => {
  it('carry every menu item of our own to the screen', async () => {
    await listen();
    const items = ['New job', 'Open…', 'Save', 'Save as…', 'Export…', 'Undo', 'Redo'];
    items.push('Zoom to fit', 'Zoom in', 'Zoom out', 'Light or dark', 'Keys and help');
    for (const label of items) await desktop.act('choose', label);
    await expect.poll(() => heard().then((list) => list.length)).toBe(items.length);
    const names = (await heard()).map((entry) => (entry as { name: string }).name);
    expect(names.slice(0, 5)).toEqual(['new-job', 'open-job', 'save-job', 'save-job-as', 'export-job']);
    expect(new Set(names).size).toBe(items.length);
  });

  it('hand a job to the running copy when the program is started again', async () => {
    await listen();
    await desktop.act('startAgain', { words: ['electron', '.', '--flag', 'maps.json'], folder });
    await expect.poll(heard).toEqual([{ event: 'openJob', path: join(folder, 'maps.json') }]);
  });

  it('let a second copy go without a window', async () => {
    const { ended } = startDesktop({ env: { ...env, STANDIN_SECOND: '1' } });
    expect(await ended).toBe(0);
  });
});

describe('guards', () => {
  it('keep the page on its own address, without new windows and without powers', async () => {
    const { page } = desktop;
    const address = page.url();
    await page.evaluate(() => {
      const link = Object.assign(document.createElement('a'), { href: 'http://example.org/', id: 'away' });
      document.body.append(link);
      link.click();
      window.open('about:blank');
    });
    await page.waitForTimeout(300);
    expect(page.url()).toBe(address);
    await expect.poll(() => page.context().pages().length).toBe(1);
    expect(await desktop.act('mayUse', 'geolocation')).toBe(false);
    await page.evaluate(() => document.getElementById('away')?.remove());
  });

  it('answer no frame within the page', async () => {
    const { page } = desktop;
    const failed = await page.evaluate(async () => {
      const frame = Object.assign(document.createElement('iframe'), { src: 'about:blank' });
      document.body.append(frame);
      const within = frame.contentWindow as unknown as {
        standinInvoke?: (channel: string, args: unknown[]) => Promise<unknown>;
      };
      const answered = within.standinInvoke?.('matwright:call', ['1', 'info', {}]);
      const message = await answered?.then(
        () => 'answered',
        (error: Error) => error.message,
      );
      frame.remove();
      return message;
    });
    expect(failed).toContain('own page');
  });

  it('lend the page nothing but the bridge', async () => {
    const found = await desktop.page.evaluate(() => ({
      bridge: Object.keys(window.matwrightHost!).sort(),
      frozen: Object.isFrozen(window.matwrightHost),
      node: ['require', 'process', 'Buffer'].filter((name) => name in window),
      policy: document.querySelector('meta[http-equiv="Content-Security-Policy"]')?.getAttribute('content'),
    }));
    expect(found).toMatchObject({ bridge: ['call', 'on'], frozen: true, node: [] });
    expect(found.policy).toContain("script-src 'self'");
  });
});

describe('closing', () => {
  let other: Desktop | undefined;
  afterEach(() => other?.kill());

  it('is left to the screen, which has nothing to save, and the size is remembered', async () => {
    other = await openDesktop({ env });
    await other.act('close');
    expect(await other.ended).toBe(0);
    const size = JSON.parse(await readFile(join(folder, 'state', 'matwright', 'window.json'), 'utf8')) as unknown;
    expect(size).toEqual({ width: 1280, height: 800, maximized: false });
  });

  it('waits for the screen’s answer', async () => {
    other = await openDesktop({ env });
    await other.page.getByRole('button', { name: 'Save' }).waitFor();
    // A screen that is asked and never answers: its listeners are there, but not what they would call.
    await other.page.evaluate(() => Object.assign(window, { standinInvoke: () => new Promise(() => undefined) }));
    await other.act('close');
    await other.page.waitForTimeout(500);
    expect(other.page.isClosed()).toBe(false);
    expect(await other.act('windows')).toBe(1);
  });

  it('does not wait for a screen that crashed', async () => {
    other = await openDesktop({ env });
    await other.act('answer', { response: 1 });
    await other.page.goto('chrome://crash').catch(() => undefined);
    expect(await other.ended).toBe(0);
  });
});
