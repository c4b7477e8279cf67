/** Opens an address in the user's own browser, where there is one. */
import { spawn } from 'node:child_process';

const openers: Partial<Record<NodeJS.Platform, readonly [string, ...string[]]>> = {
  darwin: ['open'],
  // `start` takes a first quoted word for a title.
  win32: ['cmd', '/c', 'start', ''],
};

/** Says nothing when there is no browser: the address stands in the terminal. */
export function openBrowser(address: string): void {
  const hasScreen = process.platform !== 'linux' || process.env['DISPLAY'] || process.env['WAYLAND_DISPLAY'];
  if (!hasScreen) return;
  const [command, ...first] = openers[process.platform] ?? ['xdg-open'];
  const opener = spawn(command, [...first, address], { stdio: 'ignore', detached: true });
  opener.on('error', () => undefined);
  opener.unref();
}
