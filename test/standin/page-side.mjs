// What runs in the page before its own scripts: the preload, with the few things Electron lends a sandboxed one.

/**
 * Handed to the page as text, so it uses nothing from outside itself.
 *
 * @param {string} preload the built preload's text.
 */
export function runPreload(preload) {
  const page = /** @type {any} */ (globalThis);
  // Frames within the page get no preload.
  if (page.top !== page) return;
  /** @type {Map<string, Set<(event: object, ...args: unknown[]) => void>>} */
  const hearers = new Map();
  const ipcRenderer = {
    /** @type {(channel: string, ...args: unknown[]) => Promise<unknown>} */
    invoke: (channel, ...args) => page.standinInvoke(channel, args),
    /** @type {(channel: string, hearer: (event: object, ...args: unknown[]) => void) => void} */
    on: (channel, hearer) => void hearers.set(channel, (hearers.get(channel) ?? new Set()).add(hearer)),
    /** @type {(channel: string, hearer: (event: object, ...args: unknown[]) => void) => void} */
    removeListener: (channel, hearer) => void hearers.get(channel)?.delete(hearer),
  };
  const contextBridge = {
    /** @type {(name: string, api: object) => void} */
    exposeInMainWorld: (name, api) => void Object.defineProperty(page, name, { value: Object.freeze(api) }),
  };
  Object.defineProperty(page, 'standinHear', {
    /** @type {(channel: string, args: unknown[]) => void} */
    value: (channel, args) => hearers.get(channel)?.forEach((hearer) => hearer({}, ...args)),
  });
  /** @type {(name: string) => object} */
  const lend = (name) => {
    if (name === 'electron') return { contextBridge, ipcRenderer };
    throw new Error(`module not found: ${name} (a sandboxed preload may only require electron)`);
  };
  const module = { exports: {} };
  new Function('require', 'module', 'exports', preload)(lend, module, module.exports);
}
