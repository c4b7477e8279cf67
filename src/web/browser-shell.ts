/** What a page in a browser does without: the system's dialogs; the screen has its own chooser there. */
import { done, failed } from '../host/failure';
import type { Shell } from '../host/shell';

const noDialog = async () =>
  failed('failed', 'There are no system dialogs in the browser; use the screen’s own chooser.');

export const browserShell: Shell = {
  kind: 'browser',
  pickJob: noDialog,
  pickSavePath: noDialog,
  pickFolder: noDialog,
  showInFolder: async () => done({ shown: false }),
  // A page may not close a tab that it did not open; the browser asks about unsaved work itself.
  allowClose: async () => done({ closed: false }),
};
