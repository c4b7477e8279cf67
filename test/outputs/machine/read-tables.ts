/** Reads the tables of paths: JSON as it stands, CSV by papaparse; ovals by their formula. */
import Papa from 'papaparse';
import type { Point } from '../../../src/core/geometry/box';
import { apart, type Piece, type ReadStroke } from './pieces';

export interface ReadTable {
  /** By layer number. */
  readonly layers: ReadonlyMap<number, readonly ReadStroke[]>;
}

interface Oval {
  readonly centre: Point;
  readonly radii: Point;
  readonly away: number;
  readonly start: number;
  readonly sweep: number;
}

/** Points on `centre + (rx cos t, ry sin t) + away * normal`, as many as keep chords within 0.001 mm at these sizes. */
function ovalPieces(from: Point, to: Point, { centre, radii, away, start, sweep }: Oval): Piece[] {
  const count = 256;
  const points = Array.from({ length: count + 1 }, (_, index) => {
    const t = start + (sweep * index) / count;
    const normal = { x: Math.cos(t) / radii.x, y: Math.sin(t) / radii.y };
    const length = Math.hypot(normal.x, normal.y);
    return {
      x: centre.x + radii.x * Math.cos(t) + (away * normal.x) / length,
      y: centre.y + radii.y * Math.sin(t) + (away * normal.y) / length,
    };
  });
  if (apart(points[0]!, from) > 0.001 || apart(points[count]!, to) > 0.001) throw new Error('ends off the oval');
  return points.slice(1).map((end, index) => ({ from: points[index]!, to: end }));
}

interface JsonEdge {
  readonly kind: string;
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly radii: Point;
  readonly away: number;
  readonly start: number;
  readonly sweep: number;
}

export interface JsonTable {
  readonly unit: string;
  readonly cutLength: number;
  readonly travel: number;
  readonly layers: readonly {
    readonly number: number;
    readonly cutLength: number;
    readonly travel: number;
    readonly paths: readonly { readonly length: number; readonly edges: readonly JsonEdge[] }[];
  }[];
}

export function readJson(text: string): ReadTable & { readonly table: JsonTable } {
  const table = JSON.parse(text) as JsonTable;
  const strokeOf = (edges: readonly JsonEdge[]) =>
    edges.flatMap((edge): Piece[] => {
      const { kind, from, to, centre, sweep } = edge;
      if (kind === 'line') return [{ from, to }];
      return kind === 'arc' ? [{ from, to, bend: { centre, sweep } }] : ovalPieces(from, to, edge);
    });
  return {
    table,
    layers: new Map(table.layers.map(({ number, paths }) => [number, paths.map(({ edges }) => strokeOf(edges))])),
  };
}

export type CsvRow = Readonly<Record<string, string>>;

export function readCsv(text: string): ReadTable & { readonly rows: readonly CsvRow[] } {
  const { data: rows, errors } = Papa.parse<CsvRow>(text, { header: true, skipEmptyLines: true });
  if (errors.length > 0) throw new Error(errors.map(({ message }) => message).join('; '));
  const layers = new Map<number, Piece[][]>();
  for (const row of rows) {
    const layer = layers.get(Number(row['layer'])) ?? [];
    layers.set(Number(row['layer']), layer);
    const path = Number(row['path']) - 1;
    (layer[path] ??= []).push(...rowPieces(row));
  }
  return { layers, rows };
}

function rowPieces(row: CsvRow): Piece[] {
  const mm = row['unit'] === 'in' ? 25.4 : 1;
  const number = (name: string) => {
    const cell = row[name] ?? '';
    if (!/^-?\d+(\.\d+)?$/.test(cell)) throw new Error(`${name}: “${cell}” is no plain number`);
    return Number(cell);
  };
  const point = (x: string, y: string) => ({ x: number(x) * mm, y: number(y) * mm });
  const [from, to] = [point('x1', 'y1'), point('x2', 'y2')];
  if (row['form'] === 'line') return [{ from, to }];
  const centre = point('centre x', 'centre y');
  const radians = (name: string) => (number(name) * Math.PI) / 180;
  const sweep = radians('sweep (degrees, anticlockwise)');
  if (row['form'] === 'arc of a circle') return [{ from, to, bend: { centre, sweep } }];
  return ovalPieces(from, to, {
    centre,
    radii: point('radius across', 'radius up'),
    away: number('distance from the ellipse') * mm,
    start: radians('start (degrees)'),
    sweep,
  });
}
