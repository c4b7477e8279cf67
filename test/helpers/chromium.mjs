// Finds the Chromium that the tests drive, and the switches it needs in a container.
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

/** The browser's path: `CHROMIUM_PATH`, or the first known name on the search path. @throws where there is none. */
export function findChromium() {
  const given = process.env.CHROMIUM_PATH;
  const folders = [...(process.env.PATH ?? '').split(delimiter), '/usr/bin'];
  const candidates = given ? [given] : names.flatMap((name) => folders.map((folder) => join(folder, name)));
  const found = candidates.find(isProgram);
  if (found) return found;
  const trouble = given ? `CHROMIUM_PATH names “${given}”, which can't be run` : 'No Chromium is on this machine';
  throw new Error(`${trouble}. Run test/setup.sh, or set CHROMIUM_PATH to a Chromium or Chrome.`);
}

/** No sandbox, as tests run as root in containers; nothing that calls out. */
export const chromiumSwitches = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** @type {(path: string) => boolean} */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
