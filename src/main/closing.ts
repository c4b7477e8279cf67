/** Asks the screen before the window goes, so that unsaved work is never lost to a click. */
import type { BrowserWindow } from 'electron';

export interface Closing {
  /** The screen has settled its unsaved work: the window goes. */
  allow(): void;
}

/** A screen that is not there to be asked (not loaded, crashed, hung) never keeps the window open. */
export function askBeforeClosing(window: BrowserWindow, ask: () => void): Closing {
  let allowed = false;
  let answering = false;
  window.webContents.on('did-finish-load', () => (answering = true));
  window.webContents.on('render-process-gone', () => (answering = false));
  window.on('unresponsive', () => (answering = false));
  window.on('responsive', () => (answering = true));
  window.on('close', (event) => {
    if (allowed || !answering) return;
    event.preventDefault();
    ask();
  });
  return {
    allow: () => {
      allowed = true;
      window.close();
    },
  };
}
