// Builds every part: Electron's main, preload and screen, the local web host, and the command line.
import { writeFileSync } from 'node:fs';
import { build } from 'electron-vite';
import { bundle } from './bundle.mjs';
import { places, root } from './places.mjs';

export async function buildAll() {
  process.chdir(root);
  await build({ root, logLevel: 'warn' });
  await bundle('web');
  await bundle('cli');
  writeFileSync(places.builtMark, '');
}
