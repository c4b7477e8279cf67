/** `npm start`: opens Electron where there is one, and says in one line where there is none. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { chmod, mkdir, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { createInterface } from 'node:readline';
import { expect, it, onTestFinished } from 'vitest';
import { callWeb } from '../helpers/call-web';
import { connectToPage, findFreePort } from '../helpers/desktop';
import { makeTempFolder } from '../helpers/temp-folder';

const folder = await makeTempFolder();
const base = { ...process.env, HOME: folder, XDG_STATE_HOME: join(folder, 'state') };

function start(env: NodeJS.ProcessEnv, ...words: string[]) {
  const child = spawn(process.execPath, ['src/launch/start.mjs', ...words], {
    env: { ...base, ...env },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  onTestFinished(() => void child.kill());
  const lines: string[] = [];
  const reader = createInterface(child.stdout);
  // While someone edits, the sources may be newer than what is built.
  reader.on('line', (line) => line.startsWith('Building') || lines.push(line));
  const ended = once(child, 'exit').then(([code]) => code as number | null);
  return { child, lines, ended };
}

it('says in one line that Electron can’t be had, then serves the browser and prints the address', async () => {
  const { child, lines, ended } = start({
    // Neither installed nor, at this address, to be fetched.
    ELECTRON_OVERRIDE_DIST_PATH: join(folder, 'none'),
    ELECTRON_MIRROR: 'http://127.0.0.1:9/',
    electron_config_cache: join(folder, 'cache'),
    DISPLAY: '',
    WAYLAND_DISPLAY: '',
  });
  await expect.poll(() => lines.at(-1), { timeout: 60_000 }).toContain('http://');
  expect(lines).toHaveLength(2);
  expect(lines[0]).toBe('Electron’s program can’t be had on this machine; opening Matwright in the browser instead.');
  const address = /http:\/\/127\.0\.0\.1:\d+\/#token=\S+/.exec(lines[1]!)?.[0];
  expect(await callWeb(address!, 'info', {})).toMatchObject({ ok: true, value: { kind: 'browser' } });
  child.kill('SIGTERM');
  expect(await ended).toBe(0);
}, 90_000);

it('opens Electron with the job that was named, and ends with it', async () => {
  const port = await findFreePort();
  const program = join(folder, 'electron');
  const standin = resolve('test/standin');
  await mkdir(folder, { recursive: true });
  await writeFile(
    program,
    `#!/bin/sh\nexec "${process.execPath}" --import "${standin}/register.mjs" "${standin}/boot.mjs" "$@"\n`,
  );
  await chmod(program, 0o755);
  const { lines, ended } = start(
    { ELECTRON_OVERRIDE_DIST_PATH: folder, STANDIN_PORT: String(port), DISPLAY: ':0' },
    join(folder, 'ferns.json'),
  );
  const { page, browser } = await connectToPage(port, ended);
  const info = await page.evaluate(() => window.matwrightHost!.call('info', {}));
  expect(info).toMatchObject({ ok: true, value: { kind: 'desktop', startWith: join(folder, 'ferns.json') } });
  await page.evaluate(() => void window.matwrightHost!.call('allowClose', {}));
  expect(await ended).toBe(0);
  expect(lines).toEqual([`“${join(folder, 'ferns.json')}” is not there; Matwright opens without it.`]);
  await browser.close();
}, 90_000);
