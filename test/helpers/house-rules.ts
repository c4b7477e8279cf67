/** The import table of the house, and the judge that holds one file's imports against it. */
import { dirname, normalize } from 'node:path/posix';
import ts from 'typescript';

interface Area {
  /** Folders and files this one may import from, beside its own. */
  readonly from: readonly string[];
  /** Packages it may import; `node:` stands for all of Node's own. */
  readonly packages: readonly string[];
}

const core = ['src/core/units.ts', 'src/core/problem.ts', 'src/core/phrases.ts', 'src/core/letters.ts'];
const measures = [
  ...core,
  'src/core/mass.ts',
  'src/core/nearest-word.ts',
  'src/core/limit-text.ts',
  'src/core/kept-list.ts',
];

/** What is worked out of a job that is laid out may know all that a layout comes from. */
const afterLayout = [...measures, 'src/core/geometry', 'src/core/frame', 'src/core/job', 'src/core/layout'];

/** The same, with what the user has and what tables say. */
const afterShelf = [...afterLayout, 'src/core/money.ts', 'src/core/tables', 'src/core/shelf'];

/** By path, the longest that fits; a path not listed has no place in the house. */
const areas: Readonly<Record<string, Area>> = {
  'src/core/units.ts': { from: ['src/core/problem.ts'], packages: [] },
  'src/core/problem.ts': { from: [], packages: [] },
  'src/core/phrases.ts': { from: [], packages: [] },
  'src/core/letters.ts': { from: [], packages: [] },
  'src/core/nearest-word.ts': { from: [], packages: [] },
  'src/core/limit-text.ts': { from: ['src/core/units.ts'], packages: [] },
  'src/core/kept-list.ts': { from: ['src/core/problem.ts', 'src/core/tables/removed-lines.ts'], packages: [] },
  'src/core/file-name.ts': { from: [], packages: [] },
  'src/core/mass.ts': { from: core, packages: [] },
  'src/core/money.ts': { from: core, packages: ['decimal.js'] },
  'src/core/tables': { from: [...measures, 'src/core/money.ts'], packages: ['papaparse'] },
  'src/core/geometry': { from: core, packages: [] },
  'src/core/frame': { from: [...core, 'src/core/geometry'], packages: [] },
  // Outlines that come from elsewhere: SVG files and path data.
  'src/core/outlines': { from: [...core, 'src/core/geometry'], packages: ['svgpath', 'saxes'] },
  'src/core/job': {
    from: [...measures, 'src/core/geometry', 'src/core/frame', 'src/core/outlines'],
    packages: ['zod'],
  },
  // What the user has: frames, mouldings, boards, glazing, fixings.
  'src/core/shelf': {
    from: [...measures, 'src/core/money.ts', 'src/core/tables', 'src/core/geometry', 'src/core/frame', 'src/core/job'],
    packages: [],
  },
  'src/core/layout': {
    from: [...core, 'src/core/geometry', 'src/core/frame', 'src/core/outlines', 'src/core/job'],
    packages: [],
  },
  // Which frame of the shelf suits a job.
  'src/core/finding': {
    from: [...afterLayout, 'src/core/money.ts', 'src/core/shelf', 'src/core/package'],
    packages: [],
  },
  // What lies in the frame, and whether it fits.
  'src/core/package': { from: [...afterLayout, 'src/core/shelf'], packages: [] },
  // Frame sizes for a whole show, and a mat for each of its pictures.
  'src/core/show': {
    from: [...afterShelf, 'src/core/package', 'src/core/finding', 'src/core/file-name.ts'],
    packages: [],
  },
  'src/core/cutting': {
    from: [...core, 'src/core/geometry', 'src/core/frame', 'src/core/job', 'src/core/layout'],
    packages: [],
  },
  // What a frame is made of, and what it weighs.
  'src/core/pieces': { from: afterShelf, packages: [] },
  // All boards of a job or a show out of the least stock.
  'src/core/sheets': { from: [...afterShelf, 'src/core/pieces'], packages: [] },
  // How the finished frame hangs: hangers, wire, statics, and where it hangs on the wall.
  'src/core/hanging': { from: [...afterLayout, 'src/core/shelf', 'src/core/package', 'src/core/pieces'], packages: [] },
  // What a framing job costs by the shop's own prices.
  'src/core/cost': {
    from: [
      ...afterShelf,
      'src/core/package',
      'src/core/finding',
      'src/core/pieces',
      'src/core/sheets',
      'src/core/hanging',
    ],
    packages: [],
  },
  // How well a build keeps its pictures, by published guidance.
  'src/core/care': {
    from: [...afterLayout, 'src/core/money.ts', 'src/core/shelf', 'src/core/pieces'],
    packages: [],
  },
  // All that is worth a look in a build, beyond what keeps its mat from being cut.
  'src/core/build-problems.ts': {
    from: [
      ...afterLayout,
      'src/core/cutting',
      'src/core/package',
      'src/core/care',
      'src/core/hanging',
      'src/core/pieces',
      'src/core/shelf',
    ],
    packages: [],
  },
  'src/bridge.ts': { from: ['src/core'], packages: [] },
  'src/outputs': { from: ['src/core', 'src/bridge.ts'], packages: ['pdfkit'] },
  'src/host': { from: ['src/core', 'src/bridge.ts', 'src/outputs'], packages: ['node:', 'zod'] },
  'src/main': { from: ['src/bridge.ts', 'src/host', 'package.json'], packages: ['node:', 'electron'] },
  'src/preload': { from: ['src/bridge.ts', 'src/main/channels.ts'], packages: ['electron'] },
  'src/web': { from: ['src/bridge.ts', 'src/host', 'src/launch', 'package.json'], packages: ['node:'] },
  'src/cli': {
    from: ['src/core', 'src/bridge.ts', 'src/outputs', 'src/host', 'package.json'],
    packages: ['node:', 'commander'],
  },
  'src/launch': { from: [], packages: ['node:', 'rolldown', 'electron-vite'] },
  'src/renderer': {
    from: ['src/core', 'src/bridge.ts', 'resources/fonts'],
    packages: ['svelte', 'bits-ui', '@lucide/svelte', '@internationalized/date'],
  },
  // The only place that draws with paper; all else describes what is to be drawn.
  'src/renderer/canvas/scene.ts': {
    from: ['src/renderer', 'src/core', 'src/bridge.ts'],
    packages: ['svelte', 'paper'],
  },
};

/** Every module a file names: imports of values and of types, re-exports, and imports made while running. */
export function findImports(path: string, text: string): string[] {
  const scripts = path.endsWith('.svelte')
    ? [...text.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map((m) => m[1]!)
    : [text];
  return scripts.flatMap((script) =>
    ts.preProcessFile(script, true, true).importedFiles.map(({ fileName }) => fileName),
  );
}

/** What is wrong with a file's imports, a sentence each. @param files every path there is, to complete names without ending. */
export function judgeImports(path: string, imports: readonly string[], files: ReadonlySet<string>): string[] {
  const place = placeOf(path);
  if (!place) return [`${path} lies in no area of the import table`];
  const area = areas[place]!;
  return imports.flatMap((name) => {
    if (!name.startsWith('.')) {
      return area.packages.some((allowed) => isPackage(name, allowed)) ? [] : [`${path} may not import ${name}`];
    }
    const target = complete(normalize(`${dirname(path)}/${name}`), files);
    if (target === undefined) return [`${path} imports ${name}, which is not there`];
    const allowed = placeOf(target) === place || area.from.some((from) => isWithin(target, from));
    // Back down from the one file that has an area of its own.
    const inside = isWithin(place, 'src/renderer') && isWithin(target, 'src/renderer');
    return allowed || inside ? [] : [`${path} may not import ${target}`];
  });
}

/** A file as an import names it, with or without its ending. */
export function complete(path: string, files: ReadonlySet<string>): string | undefined {
  const plain = path.split('?', 1)[0]!;
  return ['', '.ts', '.svelte', '.mjs', '/index.ts', '.svelte.ts']
    .map((end) => plain + end)
    .find((name) => files.has(name));
}

function placeOf(path: string): string | undefined {
  return Object.keys(areas)
    .filter((area) => isWithin(path, area))
    .sort((a, b) => b.length - a.length)[0];
}

function isWithin(path: string, area: string): boolean {
  return path === area || path.startsWith(`${area}/`);
}

function isPackage(name: string, allowed: string): boolean {
  return allowed === 'node:' ? name.startsWith('node:') : name === allowed || name.startsWith(`${allowed}/`);
}

/** Every way round that leads back to its start. @param next what each file imports, of the files themselves. */
export function findCircles(files: readonly string[], next: (path: string) => readonly string[]): string[] {
  const done = new Set<string>();
  const walk = (path: string, way: readonly string[]): string[] => {
    if (way.includes(path)) return [[...way.slice(way.indexOf(path)), path].join(' -> ')];
    if (done.has(path)) return [];
    const found = next(path).flatMap((target) => walk(target, [...way, path]));
    done.add(path);
    return found;
  };
  return files.flatMap((path) => walk(path, []));
}
