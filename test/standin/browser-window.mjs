// The stand-in's `BrowserWindow` and its `webContents`: a page of Chromium that behaves as Electron's would.
import { EventEmitter } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright';
import { chromiumSwitches, findChromium } from '../helpers/chromium.mjs';
import { app } from './app.mjs';
import { preventable } from './events.mjs';
import { invoke } from './ipc.mjs';
import { runPreload } from './page-side.mjs';

/** @type {Set<BrowserWindow>} */
const windows = new Set();
/** @type {import('playwright').BrowserContext | undefined} */
let browser;
const profile = mkdtempSync(join(tmpdir(), 'standin-'));

/** One browser for the process, listening for the test at STANDIN_PORT. @type {(size: Size) => Promise<import('playwright').Page>} */
async function openPage({ width, height }) {
  browser ??= await chromium.launchPersistentContext(profile, {
    executablePath: findChromium(),
    headless: true,
    viewport: { width, height },
    args: [
      ...chromiumSwitches,
      '--allow-file-access-from-files',
      `--remote-debugging-port=${process.env.STANDIN_PORT ?? 0}`,
    ],
  });
  return browser.pages()[0] ?? (await browser.newPage());
}

/** Ends the browser and its files. */
export async function closeBrowser() {
  await browser?.close();
  rmSync(profile, { recursive: true, force: true });
}

/** True when no window refused. */
export function closeAllWindows() {
  for (const window of windows) window.close();
  return windows.size === 0;
}

/** @typedef {{ width: number, height: number }} Size */

class WebContents extends EventEmitter {
  /** @type {import('playwright').Page | undefined} */
  page;
  /** @type {() => { action: string }} */
  opening = () => ({ action: 'allow' });
  destroyed = false;

  isDestroyed() {
    return this.destroyed;
  }

  /** @type {(channel: string, ...args: unknown[]) => void} */
  send(channel, ...args) {
    if (this.destroyed) throw new TypeError('Object has been destroyed');
    // Electron drops what is sent to a page that is not there to hear it.
    this.page
      ?.evaluate(
        ([name, list]) => Reflect.get(globalThis, 'standinHear')(name, list),
        /** @type {[string, unknown[]]} */ ([channel, structuredClone(args)]),
      )
      .catch(() => undefined);
  }

  /** @type {(handler: () => { action: string }) => void} */
  setWindowOpenHandler(handler) {
    this.opening = handler;
  }

  reload() {
    void this.page?.reload();
  }

  /** @type {(page: import('playwright').Page, preload: string) => Promise<void>} */
  async attach(page, preload) {
    this.page = page;
    page.on('load', () => this.emit('did-finish-load'));
    page.on('crash', () => this.emit('render-process-gone', {}, { reason: 'crashed', exitCode: 1 }));
    page.on('popup', (popup) => this.opening().action === 'deny' && popup.close());
    await page.route(/^https?:/, (route) => this.#navigate(route));
    await page.exposeBinding('standinInvoke', ({ frame }, channel, args) =>
      invoke({ sender: this, senderFrame: { url: frame.url(), parent: frame.parentFrame() } }, channel, args),
    );
    await page.addInitScript(runPreload, readFileSync(preload, 'utf8'));
  }

  /** @type {(route: import('playwright').Route) => Promise<void>} */
  async #navigate(route) {
    // “No content” leaves the page as it is, which is what a prevented navigation does.
    const event = preventable({ url: route.request().url() });
    if (route.request().isNavigationRequest()) this.emit('will-navigate', event);
    await (event.defaultPrevented ? route.fulfill({ status: 204 }) : route.continue());
  }
}

export class BrowserWindow extends EventEmitter {
  /** @param {import('electron').BrowserWindowConstructorOptions & Size} options */
  constructor(options) {
    super();
    const { contextIsolation, sandbox, nodeIntegration, preload } = options.webPreferences ?? {};
    if (!contextIsolation || !sandbox || nodeIntegration || !preload) {
      throw new Error('the stand-in opens only isolated, sandboxed windows without Node, with a preload');
    }
    this.options = options;
    this.preload = preload;
    this.webContents = new WebContents();
    windows.add(this);
    app.emit('web-contents-created', {}, this.webContents);
  }

  /** @type {(path: string) => Promise<void>} */
  async loadFile(path) {
    const page = await openPage(this.options);
    await this.webContents.attach(page, this.preload);
    await page.goto(pathToFileURL(path).href);
    this.emit('ready-to-show');
  }

  close() {
    const event = preventable();
    this.emit('close', event);
    if (event.defaultPrevented || !windows.delete(this)) return;
    this.webContents.destroyed = true;
    this.emit('closed');
    if (windows.size === 0) app.emit('window-all-closed');
  }

  getNormalBounds() {
    return { x: 0, y: 0, width: this.options.width, height: this.options.height };
  }

  isMaximized() {
    return false;
  }

  isMinimized() {
    return false;
  }

  maximize() {}
  show() {}
  focus() {}
  restore() {}
}

/** The windows now open. */
export function openWindows() {
  return [...windows];
}
