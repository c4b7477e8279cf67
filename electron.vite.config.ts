// How the desktop program is built: main as ES module, preload as CommonJS (a sandboxed preload must be), renderer minified.
import { resolve } from 'node:path';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'electron-vite';
import type { Plugin } from 'vite';
import { contentPolicy } from './src/launch/content-policy.mjs';

/** Writes the content policy into the page, since a page read from a file has no headers to carry it. */
function writePolicy(): Plugin {
  return {
    name: 'write-content-policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: contentPolicy },
        injectTo: 'head-prepend',
      },
    ],
  };
}

/** How long plugins take is nobody's concern at a first start. */
const checks = { bundlerTimings: false };

export default defineConfig({
  main: { build: { rolldownOptions: { checks, input: { index: resolve('src/main/index.ts') } } } },
  preload: {
    build: {
      rolldownOptions: {
        checks,
        input: { index: resolve('src/preload/index.ts') },
        output: { format: 'cjs', entryFileNames: '[name].cjs' },
      },
    },
  },
  renderer: {
    root: resolve('src/renderer'),
    plugins: [svelte({ configFile: false }), writePolicy()],
    // Read from this machine, not over a network: one piece is simpler than many, and its size costs nothing.
    build: {
      minify: true,
      chunkSizeWarningLimit: 2000,
      rolldownOptions: { checks, input: resolve('src/renderer/index.html') },
    },
  },
});
