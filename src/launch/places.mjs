// Where the project's sources and built parts lie.
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** @param {string} path */
const within = (path) => join(root, path);

export const places = {
  cli: within('out/cli/index.js'),
  web: within('out/web/index.js'),
  /** Written last by a build of the whole, so that a build that broke off counts as none. */
  builtMark: within('out/built'),
  /** What the whole is built from. */
  sources: ['src', 'package.json', 'package-lock.json', 'electron.vite.config.ts', 'tsconfig.json'].map(within),
  /** What the command line is built from: everything but the hosts with a screen. */
  cliSources: ['src/bridge.ts', 'src/core', 'src/outputs', 'src/host', 'src/cli', 'src/launch', 'package.json'].map(
    within,
  ),
};
