/** Starts the desktop program: one running copy, one window, the host calls behind one channel. */
import { fileURLToPath } from 'node:url';
import { app, ipcMain, Menu, session, type BrowserWindow } from 'electron';
import { version } from '../../package.json';
import type { HostEvents } from '../bridge';
import { createHost } from '../host/create-host';
import { stateFolder } from '../host/state-folder';
import { callChannel, eventChannel, progressChannel } from './channels';
import { askBeforeClosing } from './closing';
import { createDesktopShell } from './desktop-shell';
import { denyPermissions, guardPages, isOwnPage } from './guard';
import { findJobArgument } from '../host/job-argument';
import { describeMenu } from './menu';
import { createWindow, page } from './window';

const resources = fileURLToPath(new URL('../../resources', import.meta.url));
const argumentsFrom = app.isPackaged ? 1 : 2;
let startWith = findJobArgument(process.argv.slice(argumentsFrom), process.cwd());
let window: BrowserWindow | undefined;

if (app.requestSingleInstanceLock()) {
  guardPages(app);
  app.on('second-instance', (_event, words, folder) =>
    openInRunning(findJobArgument(words.slice(argumentsFrom), folder)),
  );
  // macOS hands a double-clicked file over in this way, perhaps before the window exists.
  app.on('open-file', (event, path) => {
    event.preventDefault();
    if (window) openInRunning(path);
    else startWith = path;
  });
  app.on('window-all-closed', () => app.quit());
  void app.whenReady().then(start);
} else {
  app.quit();
}

async function start(): Promise<void> {
  denyPermissions(session.defaultSession);
  const state = stateFolder();
  window = createWindow(state);
  window.on('closed', () => (window = undefined));
  const closing = askBeforeClosing(window, () => tell('closing', {}));
  serveCalls(createHost({ version, resources, state, startWith, shell: createDesktopShell(window, closing) }));
  Menu.setApplicationMenu(
    Menu.buildFromTemplate(describeMenu((name) => tell('command', { name }), process.platform === 'darwin')),
  );
  await window.loadFile(fileURLToPath(page));
}

function serveCalls(host: ReturnType<typeof createHost>): void {
  ipcMain.handle(callChannel, (event, call: unknown, name: unknown, request: unknown) => {
    if (!isOwnPage(event, page)) throw new Error('only the program’s own page may call');
    return host.call(name, request, {
      onProgress: (progress) => {
        if (!event.sender.isDestroyed()) event.sender.send(progressChannel, call, progress);
      },
    });
  });
}

function tell<E extends keyof HostEvents>(event: E, payload: HostEvents[E]): void {
  window?.webContents.send(eventChannel, event, payload);
}

function openInRunning(path: string | undefined): void {
  if (window?.isMinimized()) window.restore();
  window?.focus();
  if (path !== undefined) tell('openJob', { path });
}
