/** The rules of the house, over the real source: who may import whom, no circles, small files that say what they are. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, normalize } from 'node:path/posix';
import { describe, expect, it } from 'vitest';
import { complete, findCircles, findImports, judgeImports } from './helpers/house-rules';

const list = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? list(`${folder}/${entry.name}`) : [`${folder}/${entry.name}`],
  );

const files = new Set([...list('src'), ...list('resources'), 'package.json']);
const sources = [...files].filter((path) => /^src\/.*\.(ts|mjs|svelte)$/.test(path) && !path.endsWith('.d.ts'));
const textOf = (path: string) => readFileSync(path, 'utf8');
const importsOf = (path: string) => findImports(path, textOf(path));

describe('the import table', () => {
  it('is kept by every file', () => {
    expect(sources.length).toBeGreaterThan(50);
    expect(sources.flatMap((path) => judgeImports(path, importsOf(path), files))).toEqual([]);
  });

  it('is kept without a circle', () => {
    const next = (path: string) =>
      importsOf(path)
        .filter((name) => name.startsWith('.'))
        .flatMap((name) => complete(normalize(`${dirname(path)}/${name}`), files) ?? [])
        .filter((target) => sources.includes(target));
    expect(findCircles(sources, next)).toEqual([]);
    const planted: Record<string, string[]> = { a: ['b', 'd'], b: ['c'], c: ['a'], d: [] };
    expect(findCircles(Object.keys(planted), (path) => planted[path]!)).toEqual(['a -> b -> c -> a']);
  });

  it.each([
    ['src/core/units.ts', "import { readFile } from 'node:fs';"],
    ['src/core/layout/planted.ts', "import type { Host } from '../../host/create-host';"],
    ['src/core/geometry/planted.ts', "export * from '../job/written';"],
    ['src/core/job/planted.ts', "type Page = import('pdfkit').default;"],
    ['src/renderer/planted.svelte', '<script lang="ts">\nimport { exportFiles } from \'../outputs/index\';\n</script>'],
    ['src/renderer/planted.ts', "const fs = await import('node:fs');"],
    ['src/renderer/planted.ts', "import paper from 'paper/dist/paper-core';"],
    ['src/outputs/planted.ts', "import { done } from '../host/failure';"],
    ['src/host/planted.ts', "import { dialog } from 'electron';"],
    ['src/web/planted.ts', "import { app } from 'electron';"],
    ['src/preload/planted.ts', "import { createHost } from '../host/create-host';"],
    ['src/elsewhere/planted.ts', "import { done } from '../host/failure';"],
  ])('would notice in %s: %s', (path, text) => {
    const found = judgeImports(path, findImports(path, text), files);
    expect(found.length).toBeGreaterThan(0);
    expect(found[0]).toContain(path);
  });
});

it('one file alone knows how many points a millimetre has', () => {
  const knows = /\b72(\.0*)?\s*[/*]|[/*]\s*72\b|=\s*72\b|\b2\.8346|\b0\.35277/;
  for (const planted of ['x = 72/25.4;', '(mm / 25.4) * 72', 'const POINTS = 72;'])
    expect(knows.test(planted)).toBe(true);
  // The screen counts in pixels, and may well have 72 of them.
  const asked = sources.filter((path) => !path.startsWith('src/renderer/'));
  expect(asked.filter((path) => knows.test(textOf(path)))).toEqual(['src/outputs/paper/page.ts']);
});

describe('every file', () => {
  const all = [...sources, ...list('test').filter((path) => /\.(ts|mjs)$/.test(path))];

  it('opens by saying what it is', () => {
    expect(all.filter((path) => !/^(?:#!.*\n)?(?:\/\*\*?\s|\/\/ |<!--)/.test(textOf(path)))).toEqual([]);
  });

  it('has at most 400 lines, and half of them fewer than 120', () => {
    const lengths = all.map((path) => ({ path, lines: textOf(path).split('\n').length - 1 }));
    expect(lengths.filter(({ lines }) => lines > 400)).toEqual([]);
    const sorted = lengths.map(({ lines }) => lines).sort((a, b) => a - b);
    expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThan(120);
  });

  it('is named as the house names things', () => {
    const named =
      /\/(?:[a-z0-9]+(?:-[a-z0-9]+)*(?:\.(?:test|spec|browser|bench|config|svelte|d))*\.(?:ts|mjs)|[A-Z][A-Za-z0-9]*\.svelte)$/;
    expect(all.filter((path) => !named.test(path))).toEqual([]);
  });
});
