// `npm start`: builds what is stale and opens the program, in Electron or, where that can't be had, in the browser.
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { resolve as resolvePath } from 'node:path';
import { findElectron } from './find-electron.mjs';
import { isStale } from './freshness.mjs';
import { places, root } from './places.mjs';

const words = process.argv.slice(2);
/** A program that fails this soon, in milliseconds, never showed its window. */
const soon = 5000;

tellMissingJob();
await buildWhereStale();
const trouble = await openElectron();
if (trouble !== undefined) {
  console.log(`${trouble}; opening Matwright in the browser instead.`);
  await run(process.execPath, [places.web, '--open', ...words]);
}

/** The screen tells it too, but whoever mistyped a name looks at the terminal. */
function tellMissingJob() {
  const job = words.find((word) => word !== '' && !word.startsWith('-'));
  if (job === undefined || existsSync(job)) return;
  console.log(`“${resolvePath(job)}” is not there; Matwright opens without it.`);
}

async function buildWhereStale() {
  if (!isStale(places.builtMark, places.sources)) return;
  console.log('Building Matwright, once after each change…');
  const { buildAll } = await import('./build-all.mjs');
  await buildAll();
}

/** Why there is no window; undefined when there was one. */
async function openElectron() {
  const hasScreen = process.platform !== 'linux' || process.env.DISPLAY || process.env.WAYLAND_DISPLAY;
  const program = await findElectron(() => console.log('Fetching Electron, once…'));
  if (!program) return 'Electron’s program can’t be had on this machine';
  if (!hasScreen) return 'This machine has no screen for Electron';
  const began = Date.now();
  const code = await run(program, [root, ...words]);
  if (code === 0) return undefined;
  if (Date.now() - began < soon) return `Electron ended at once (code ${code})`;
  process.exit(code);
}

/**
 * Runs to its end with this terminal; gives the exit code.
 *
 * @type {(program: string, args: readonly string[]) => Promise<number>}
 */
function run(program, args) {
  const child = spawn(program, args, { stdio: 'inherit' });
  // The child ends by the signal in its own way; this one waits for it.
  for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP']))
    process.on(signal, () => child.kill(signal));
  return new Promise((resolve) => {
    child.on('error', () => resolve(1));
    child.on('exit', (code) => resolve(code ?? 1));
  });
}
