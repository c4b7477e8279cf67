// The stand-in's desktop: dialogs that answer as the test said, a menu that can be chosen from, a display, a session.
import { EventEmitter } from 'node:events';

/** Answers the test laid ready, taken in order; and what was asked. */
export const desk = {
  /** @type {object[]} */
  answers: [],
  /** @type {{ kind: string, options: object }[]} */
  asked: [],
  /** @type {string[]} */
  shown: [],
  /** @type {import('electron').MenuItemConstructorOptions[]} */
  menu: [],
  /** @type {((contents: unknown, permission: string, decide: (allowed: boolean) => void) => void) | undefined} */
  decidePermission: undefined,
};

/** @type {(kind: string, cancelled: object) => (window: unknown, options: object) => Promise<object>} */
const ask = (kind, cancelled) => async (_window, options) => {
  desk.asked.push({ kind, options });
  return desk.answers.shift() ?? cancelled;
};

export const dialog = {
  showOpenDialog: ask('open', { canceled: true, filePaths: [] }),
  showSaveDialog: ask('save', { canceled: true, filePath: '' }),
  showMessageBox: ask('message', { response: 0 }),
};

export const shell = {
  /** @type {(path: string) => void} */
  showItemInFolder: (path) => void desk.shown.push(path),
};

export const screen = {
  getPrimaryDisplay: () => ({ workAreaSize: { width: 1920, height: 1040 } }),
};

export const Menu = {
  /** @type {(template: import('electron').MenuItemConstructorOptions[]) => object} */
  buildFromTemplate(template) {
    for (const item of template.flatMap((entry) => [entry, ...listOf(entry)])) checkItem(item);
    return { template };
  },
  /** @type {(menu: { template: import('electron').MenuItemConstructorOptions[] }) => void} */
  setApplicationMenu(menu) {
    desk.menu = menu.template;
  },
};

/** @type {(item: import('electron').MenuItemConstructorOptions) => void} */
function checkItem(item) {
  if (item.label || item.role || item.type === 'separator') return;
  throw new Error('Invalid template for MenuItem: must have at least one of label, role or type');
}

/** @type {(entry: import('electron').MenuItemConstructorOptions) => import('electron').MenuItemConstructorOptions[]} */
function listOf(entry) {
  return Array.isArray(entry.submenu) ? entry.submenu : [];
}

/** Chooses the item of this label, as a click would. @type {(label: string) => void} */
export function chooseItem(label) {
  const item = desk.menu.flatMap(listOf).find((entry) => entry.label === label);
  if (!item?.click) throw new Error(`no menu item “${label}” that does anything`);
  // Our items use none of the arguments that Electron passes.
  Reflect.apply(item.click, item, []);
}

class Session extends EventEmitter {
  /** @type {(handler: typeof desk.decidePermission) => void} */
  setPermissionRequestHandler(handler) {
    desk.decidePermission = handler;
  }

  setPermissionCheckHandler() {}
}

export const session = { defaultSession: new Session() };
