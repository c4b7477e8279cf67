// Starts the built program on the stand-in, and does for the test what a user does outside the page: menu, dialogs, closing.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { app } from './app.mjs';
import { closeBrowser, openWindows } from './browser-window.mjs';
import { chooseItem, desk } from './desktop.mjs';

/** @type {Record<string, (given: any) => unknown>} */
const deeds = {
  choose: (label) => chooseItem(label),
  answer: (answer) => void desk.answers.push(answer),
  asked: () => desk.asked,
  shown: () => desk.shown,
  menu: () =>
    desk.menu.map(({ label, submenu }) => ({
      label,
      items: Array.isArray(submenu) ? submenu.map((item) => item.label ?? item.role ?? item.type) : [],
    })),
  windows: () => openWindows().length,
  close: () => openWindows().forEach((window) => window.close()),
  startAgain: ({ words, folder }) => app.emit('second-instance', {}, words, folder),
  mayUse: (permission) =>
    new Promise((resolve) =>
      desk.decidePermission ? desk.decidePermission(null, permission, resolve) : resolve(true),
    ),
};

process.on('message', async (/** @type {{ id: number, deed: string, given: unknown }} */ { id, deed, given }) => {
  try {
    process.send?.({ id, value: await deeds[deed]?.(given) });
  } catch (error) {
    process.send?.({ id, error: String(error) });
  }
});

// The test has ended or died: nothing is left running.
process.on('disconnect', () => void closeBrowser().finally(() => process.exit(0)));

// As Electron has it: the program, its folder, the words.
process.argv.splice(1, 1);
const folder = process.argv[1] ?? '.';
const { main } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
await import(pathToFileURL(join(folder, main)).href);
