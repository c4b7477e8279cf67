// Finds Electron's program, fetching it once where its package has not yet.
import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

const folder = dirname(createRequire(import.meta.url).resolve('electron/package.json'));

/** A download that takes longer than this, in milliseconds, counts as impossible. */
const patience = 300_000;

/**
 * The path of Electron's program, or undefined where it can't be had.
 *
 * @param {() => void} onWait called once when fetching takes longer than a moment.
 */
export async function findElectron(onWait) {
  return installed() ?? ((await fetchElectron(onWait)) ? installed() : undefined);
}

function installed() {
  const pathFile = join(folder, 'path.txt');
  const name = existsSync(pathFile) ? readFileSync(pathFile, 'utf8') : undefined;
  const given = process.env.ELECTRON_OVERRIDE_DIST_PATH;
  const program = given ? join(given, name ?? 'electron') : name && join(folder, 'dist', name);
  return program && existsSync(program) ? program : undefined;
}

/** @type {(onWait: () => void) => Promise<boolean>} */
function fetchElectron(onWait) {
  const installer = spawn(process.execPath, [join(folder, 'install.js')], { stdio: 'ignore', timeout: patience });
  const waiting = setTimeout(onWait, 1500);
  return new Promise((resolve) => {
    installer.on('error', () => resolve(false));
    installer.on('exit', (code) => resolve(code === 0));
  }).finally(() => clearTimeout(waiting));
}
