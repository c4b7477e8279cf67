/** What the desktop does for the screen: the system's own dialogs, its file manager, and the window's end. */
import { dialog, shell, type BrowserWindow } from 'electron';
import { done } from '../host/failure';
import type { Shell } from '../host/shell';
import type { Closing } from './closing';

const jobFiles = [
  { name: 'Job files', extensions: ['json'] },
  { name: 'All files', extensions: ['*'] },
];

const jobsAndLists = [
  { name: 'Jobs and lists of them', extensions: ['json', 'csv'] },
  { name: 'All files', extensions: ['*'] },
];

const pdfFiles = [{ name: 'PDF', extensions: ['pdf'] }];
const tables = [
  { name: 'Tables', extensions: ['csv', 'txt'] },
  { name: 'All files', extensions: ['*'] },
];

/** By the ending of the name that is offered. */
function filtersFor(suggested: string) {
  if (/\.pdf$/i.test(suggested)) return pdfFiles;
  return /\.csv$/i.test(suggested) ? tables : jobFiles;
}

export function createDesktopShell(window: BrowserWindow, closing: Closing): Shell {
  return {
    kind: 'desktop',
    pickJob: async ({ title = 'Open a job', of = 'job', many = false }) => {
      const chosen = await dialog.showOpenDialog(window, {
        title,
        filters: { job: jobFiles, table: tables, 'job or list': jobsAndLists }[of],
        properties: many ? ['openFile', 'multiSelections'] : ['openFile'],
      });
      if (chosen.canceled) return done({});
      return done({ path: chosen.filePaths[0], ...(many ? { paths: chosen.filePaths } : {}) });
    },
    pickSavePath: async ({ suggested, title = 'Save the job' }) => {
      const chosen = await dialog.showSaveDialog(window, {
        title,
        defaultPath: suggested,
        filters: filtersFor(suggested),
        properties: ['showOverwriteConfirmation'],
      });
      return done(chosen.canceled ? {} : { path: chosen.filePath });
    },
    pickFolder: async ({ suggested }) => {
      const chosen = await dialog.showOpenDialog(window, {
        title: 'Choose a folder',
        properties: ['openDirectory', 'createDirectory'],
        ...(suggested === undefined ? {} : { defaultPath: suggested }),
      });
      return done(chosen.canceled ? {} : { folder: chosen.filePaths[0] });
    },
    showInFolder: async ({ path }) => {
      shell.showItemInFolder(path);
      return done({ shown: true });
    },
    allowClose: async () => {
      // After the reply, since closing tears down the very channel it goes through.
      setImmediate(closing.allow);
      return done({ closed: true });
    },
  };
}
