// The stand-in's `ipcMain`: one handler for each channel.

/** @typedef {(event: object, ...args: unknown[]) => unknown} Handler */

/** @type {Map<string, Handler>} */
const handlers = new Map();

export const ipcMain = {
  /** @type {(channel: string, handler: Handler) => void} */
  handle(channel, handler) {
    if (handlers.has(channel)) throw new Error(`Attempted to register a second handler for '${channel}'`);
    handlers.set(channel, handler);
  },
};

/** @type {(event: object, channel: string, args: readonly unknown[]) => Promise<unknown>} */
export async function invoke(event, channel, args) {
  const handler = handlers.get(channel);
  if (!handler) throw new Error(`No handler registered for '${channel}'`);
  // Electron clones what crosses the border: no functions, no shared objects.
  return structuredClone(await handler(event, ...structuredClone(args)));
}
