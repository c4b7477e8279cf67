/** Makes the program's one window, sandboxed, with its page, its memory of its size, and its answer to a crash. */
import { fileURLToPath } from 'node:url';
import { BrowserWindow, dialog, screen } from 'electron';
import { keepWindowSize, readWindowSize } from './window-size';

/** The built page; nothing else is ever shown. */
export const page = new URL('../renderer/index.html', import.meta.url);

export function createWindow(state: string): BrowserWindow {
  const { width, height, maximized } = readWindowSize(state, screen.getPrimaryDisplay().workAreaSize);
  const window = new BrowserWindow({
    width,
    height,
    minWidth: 640,
    minHeight: 480,
    show: false,
    title: 'Matwright',
    webPreferences: {
      preload: fileURLToPath(new URL('../preload/index.cjs', import.meta.url)),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webSecurity: true,
      webviewTag: false,
    },
  });
  window.once('ready-to-show', () => {
    if (maximized) window.maximize();
    window.show();
  });
  window.on('close', () => keepWindowSize(state, window));
  window.webContents.on('render-process-gone', () => void offerReload(window));
  return window;
}

async function offerReload(window: BrowserWindow): Promise<void> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'error',
    message: 'The screen stopped working.',
    detail: 'Your unsaved work was kept and is offered again after a restart of the screen.',
    buttons: ['Restart the screen', 'Close'],
    defaultId: 0,
    cancelId: 1,
  });
  if (response === 0) window.webContents.reload();
  else window.close();
}
