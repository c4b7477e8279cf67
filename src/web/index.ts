/** Starts the local web host, prints its address, and opens it in the browser when asked to. */
import { fileURLToPath } from 'node:url';
import { version } from '../../package.json';
import { createHost } from '../host/create-host';
import { stateFolder } from '../host/state-folder';
import { browserShell } from './browser-shell';
import { openBrowser } from './open-browser';
import { serve } from './serve';
import { findJobArgument } from '../host/job-argument';

const words = process.argv.slice(2);
const beside = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const host = createHost({
  version,
  resources: beside('../../resources'),
  state: stateFolder(),
  startWith: findJobArgument(words, process.cwd()),
  shell: browserShell,
});
const web = await serve(host, beside('../renderer'));
console.log(`Matwright is open at ${web.address} (Ctrl+C ends it).`);
if (words.includes('--open')) openBrowser(web.address);

for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
  process.on(signal, () => void web.close().then(() => process.exit(0)));
}
