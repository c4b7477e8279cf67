/** Jobs of every shape, exported for machines and read back format by format. */
import type { ExportOptions, MachineKind } from '../../../src/bridge';
import { bladePath } from '../../../src/core/cutting/outline-cuts';
import type { View } from '../../../src/core/cutting/plan';
import { lengthOfEdge, pointOn, type Edge } from '../../../src/core/geometry/edge';
import { boxOutline, mirrorOutline, type Outline } from '../../../src/core/geometry/outline';
import type { OutputContext } from '../../../src/outputs/context';
import { exportFiles } from '../../../src/outputs/index';
import { contextOf, fonts } from '../contexts';
import { defaults, jobText } from '../jobs';
import type { Point } from '../../../src/core/geometry/box';
import type { Piece, ReadStroke } from './pieces';
import { readDxf, type ReadDxf } from './read-dxf';
import { readGcode } from './read-gcode';
import { readHpgl } from './read-hpgl';
import { readSvg } from './read-svg';
import { readCsv, readJson } from './read-tables';

export const SHAPES: Readonly<Record<string, unknown>> = {
  rectangle: 'rectangle',
  rounded: { kind: 'rounded', radius: '3/4 in' },
  oval: 'oval',
  'oval by its axes': { kind: 'oval', reveal: 'axes' },
  arch: 'arch',
  'low arch': { kind: 'arch', rise: '2 in' },
  pointed: 'pointed',
  polygon: { kind: 'polygon', sides: 8 },
  'cut corners': 'cut-corners',
  stepped: { kind: 'stepped', count: 2 },
  scooped: 'scooped',
  // A corner, a line, an ellipse's half, and a curve of few arcs: the files are read back point by point.
  outline: { kind: 'outline', path: 'M10 0H80A20 50 0 0 1 80 100H20C8 100 0 80 0 60V10Z' },
};

export function jobOf(shape: unknown, more: object = {}): object {
  return {
    title: 'Fern',
    frame: { size: '11 x 14 in' },
    windows: { kind: 'window', size: '8 x 10 in', shape },
    mat: { layers: [{}, {}] },
    ...more,
  };
}

/** Six rectangles in rows, of two sizes. */
export const GRID = {
  title: 'Linocuts',
  frame: { size: '20 x 20 in' },
  pictures: Array.from({ length: 6 }, (_, index) => ({ size: index % 2 ? '4 x 4 in' : '4 x 5 in' })),
  windows: { kind: 'grid', columns: 3, gap: '1 1/4 in', items: ['1', '2', '3', '4', '5', '6'] },
  mat: { layers: [{}, {}] },
};

/** The files' texts by name, for a base name of `mat`. */
export async function machineFiles(
  job: object,
  only: readonly MachineKind[],
  options: Partial<ExportOptions> = {},
): Promise<ReadonlyMap<string, string>> {
  const made = await exportFiles(jobText(job), 'mat', { ...defaults, ...options, only }, { fonts });
  if (!made.ok) throw new Error(made.problems.map(({ message }) => message).join('\n'));
  return new Map(made.value.map(({ name, bytes }) => [name, new TextDecoder().decode(bytes)]));
}

export function fileOf(files: ReadonlyMap<string, string>, name: string): string {
  const text = files.get(name);
  if (text === undefined) throw new Error(`no ${name} among ${[...files.keys()].join(', ')}`);
  return text;
}

/** How each format is read back: the strokes of one layer. DXF has no strokes, so that it gives its pieces as one. */
export const FORMATS: Readonly<
  Record<MachineKind, (files: ReadonlyMap<string, string>, layer: number) => readonly ReadStroke[]>
> = {
  json: (files, layer) => readJson(fileOf(files, 'mat-cuts.json')).layers.get(layer) ?? [],
  csv: (files, layer) => readCsv(fileOf(files, 'mat-cuts.csv')).layers.get(layer) ?? [],
  svg: (files, layer) => {
    const { groups } = readSvg(fileOf(files, 'mat-cuts.svg'));
    return [...groups].filter(([id]) => id.startsWith(`layer-${layer}-window-`)).flatMap(([, strokes]) => strokes);
  },
  dxf: (files, layer) => {
    const cut = drawingOf(files)?.entities.filter(({ layer: name }) => name === `LAYER${layer}_CUT`) ?? [];
    return [cut.flatMap(({ pieces }) => pieces)];
  },
  hpgl: (files, layer) => readHpgl(fileOf(files, `mat-layer-${layer}.plt`)).strokes,
  gcode: (files, layer) => readGcode(fileOf(files, `mat-layer-${layer}.nc`)).strokes,
};

const drawings = new Map<string, ReadDxf>();

/** Reads drawings beforehand, all at once, since starting Python takes long. */
export function readDrawings(texts: readonly string[]): void {
  const fresh = [...new Set(texts)].filter((text) => !drawings.has(text));
  if (fresh.length > 0) readDxf(fresh).forEach((drawing, index) => drawings.set(fresh[index]!, drawing));
}

function drawingOf(files: ReadonlyMap<string, string>): ReadDxf | undefined {
  const text = fileOf(files, 'mat-cuts.dxf');
  readDrawings([text]);
  return drawings.get(text);
}

/** What a plan says of one layer in one view, worked out without the paths. */
export interface Expected {
  /** Of each window, in the view. */
  readonly outlines: readonly Outline[];
  /** Where a blade may be, overcuts included. */
  readonly chains: readonly (readonly Point[])[];
}

export function expectedOf({ plan }: OutputContext, view: View, layer: number): Expected {
  const { windows, blank } = plan.layers[layer - 1]!;
  const outlines = windows.map(({ outlines, face, back }) => {
    const outline = view === 'front' ? (outlines?.face ?? boxOutline(face)) : (outlines?.back ?? boxOutline(back));
    return view === 'front' ? outline : mirrorOutline(outline, blank.width);
  });
  const blades = windows.flatMap(({ cuts }) => cuts[view].flatMap(bladePath));
  return { outlines, chains: [...outlines.flat(), ...blades].map((edge) => alongEdge(edge, 0.5)) };
}

export function alongEdge(edge: Edge, step: number): Point[] {
  const count = edge.kind === 'line' ? 1 : Math.max(1, Math.ceil(lengthOfEdge(edge) / step));
  return Array.from({ length: count + 1 }, (_, index) => pointOn(edge, index / count));
}

export function context(job: object, options: Partial<ExportOptions> = {}): OutputContext {
  return contextOf(job, options);
}

export function allPieces(strokes: readonly ReadStroke[]): readonly Piece[] {
  return strokes.flat();
}
