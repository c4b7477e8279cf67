/** The parts of the desktop's main process that need no Electron: menu, window size, job argument, state folder. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { BrowserWindow, IpcMainInvokeEvent } from 'electron';
import { describe, expect, it } from 'vitest';
import { findJobArgument } from '../../src/host/job-argument';
import { stateFolder } from '../../src/host/state-folder';
import { isOwnPage } from '../../src/main/guard';
import { describeMenu } from '../../src/main/menu';
import { keepWindowSize, readWindowSize } from '../../src/main/window-size';
import { makeTempFolder } from '../helpers/temp-folder';

const folder = await makeTempFolder();

describe('the menu', () => {
  const items = (isMac: boolean) =>
    describeMenu(() => undefined, isMac).flatMap(({ submenu }) => (Array.isArray(submenu) ? submenu : []));

  it('gives no key to two items', () => {
    for (const isMac of [true, false]) {
      const keys = items(isMac).flatMap(({ accelerator }) => (accelerator ? [accelerator] : []));
      expect(new Set(keys).size).toBe(keys.length);
    }
  });

  it('leaves the keys of our own items to the screen', () => {
    const ours = items(false).filter(({ click, accelerator }) => click && accelerator);
    expect(ours.length).toBeGreaterThan(8);
    expect(ours.every(({ registerAccelerator }) => registerAccelerator === false)).toBe(true);
  });
});

describe('the window’s size', () => {
  const area = { width: 1920, height: 1040 };
  const usual = { width: 1280, height: 800, maximized: false };

  it('is remembered', () => {
    const state = join(folder, 'new', 'state');
    const window = { getNormalBounds: () => ({ x: 5, y: 5, width: 1500, height: 900 }), isMaximized: () => true };
    keepWindowSize(state, window as BrowserWindow);
    expect(readWindowSize(state, area)).toEqual({ width: 1500, height: 900, maximized: true });
    expect(readWindowSize(state, { width: 1366, height: 728 })).toEqual({ width: 1366, height: 728, maximized: true });
  });

  it.each(['', '{', 'null', '[]', '{"width":"wide","height":null}', '7'])('is the usual one after %j', async (text) => {
    await mkdir(join(folder, 'broken'), { recursive: true });
    await writeFile(join(folder, 'broken', 'window.json'), text);
    expect(readWindowSize(join(folder, 'broken'), area)).toEqual(usual);
    expect(await readFile(join(folder, 'broken', 'window.json'), 'utf8')).toBe(text);
  });

  it('is never too small to use', async () => {
    await writeFile(join(folder, 'window.json'), '{"width":1,"height":-5}');
    expect(readWindowSize(folder, area)).toEqual({ width: 640, height: 480, maximized: false });
  });
});

it('the job is the first word that is no option', () => {
  expect(findJobArgument(['--flag', 'a b.json', 'c.json'], '/x')).toBe(resolve('/x', 'a b.json'));
  expect(findJobArgument(['/y/a.json'], '/x')).toBe(resolve('/y/a.json'));
  expect(findJobArgument(['', '--flag'], '/x')).toBeUndefined();
});

it('the state folder is where each system keeps such things', () => {
  // XDG Base Directory Specification 0.8: `$XDG_STATE_HOME`, else `$HOME/.local/state`; a relative path is ignored.
  expect(stateFolder('linux', {}, '/home/a')).toBe('/home/a/.local/state/matwright');
  expect(stateFolder('linux', { XDG_STATE_HOME: '/s' }, '/home/a')).toBe('/s/matwright');
  expect(stateFolder('linux', { XDG_STATE_HOME: 's' }, '/home/a')).toBe('/home/a/.local/state/matwright');
  expect(stateFolder('darwin', {}, '/Users/a')).toBe('/Users/a/Library/Application Support/Matwright');
  expect(stateFolder('win32', { LOCALAPPDATA: '/L' }, '/a')).toBe('/L/Matwright');
});

it('only the top frame of the program’s own page may call', () => {
  const page = new URL('file:///opt/matwright/out/renderer/index.html');
  const from = (url: string, parent: object | null = null) =>
    isOwnPage({ senderFrame: { url, parent } } as unknown as IpcMainInvokeEvent, page);
  expect(from(page.href)).toBe(true);
  expect(from(`${page.href}#part`)).toBe(true);
  expect(from(page.href, {})).toBe(false);
  expect(from('file:///opt/matwright/out/renderer/other.html')).toBe(false);
  expect(from('https://example.org/opt/matwright/out/renderer/index.html')).toBe(false);
  expect(isOwnPage({ senderFrame: null } as IpcMainInvokeEvent, page)).toBe(false);
});
