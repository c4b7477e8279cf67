// Bundles a part of the program that runs under Node alone, with its libraries but those that read files beside them.
import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { rolldown } from 'rolldown';
import { root } from './places.mjs';

// pdfkit finds its data beside itself, so it stays where it is.
const external = [/^node:/, 'pdfkit'];

/**
 * Bundles `src/<name>/index.ts` to `out/<name>/index.js`.
 *
 * @param {'cli' | 'web'} name
 */
export async function bundle(name) {
  const folder = join(root, 'out', name);
  const build = await rolldown({
    input: join(root, 'src', name, 'index.ts'),
    cwd: root,
    platform: 'node',
    external,
    logLevel: 'warn',
    // How long plugins take is nobody's concern at a first start.
    checks: { bundlerTimings: false },
  });
  const { output } = await build.generate({
    format: 'esm',
    entryFileNames: 'index.js',
    chunkFileNames: '[name]-[hash].js',
  });
  await build.close();
  // The entry last, each by renaming: another run at the same time never reads half a file.
  for (const part of [...output].reverse())
    put(join(folder, part.fileName), part.type === 'chunk' ? part.code : part.source);
}

/** @type {(path: string, content: string | Uint8Array) => void} */
function put(path, content) {
  mkdirSync(dirname(path), { recursive: true });
  const draft = `${path}.${process.pid}`;
  writeFileSync(draft, content);
  renameSync(draft, path);
}
