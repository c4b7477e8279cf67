/** Reads an SVG's groups and paths by libraries not ours; elliptical arcs by the formulas of SVG 1.1, appendix F.6.5. */
import { SaxesParser } from 'saxes';
import svgpath from 'svgpath';
import type { Point } from '../../../src/core/geometry/box';
import type { Piece, ReadStroke } from './pieces';

export interface ReadSvg {
  readonly viewBox: readonly number[];
  readonly size: readonly [string, string];
  /** Paths by the id of the group they lie in, y turned up. */
  readonly groups: ReadonlyMap<string, readonly ReadStroke[]>;
  readonly titles: readonly string[];
}

const PIECES = 256;

export function readSvg(text: string): ReadSvg {
  const groups = new Map<string, ReadStroke[]>();
  const ids = new Set<string>();
  const open: string[] = [];
  const titles: string[] = [];
  let viewBox: number[] = [];
  let size: [string, string] = ['', ''];
  let inTitle = false;
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const { id } = attributes;
    if (id !== undefined) {
      if (ids.has(id)) throw new Error(`two of ${id}`);
      ids.add(id);
    }
    if (name === 'svg') {
      viewBox = (attributes['viewBox'] ?? '').split(' ').map(Number);
      size = [attributes['width'] ?? '', attributes['height'] ?? ''];
    }
    if (name === 'title') inTitle = true;
    if (name === 'g') open.push(id ?? '');
    if (name !== 'path') return;
    const group = open.at(-1) ?? '';
    groups.set(group, [...(groups.get(group) ?? []), readPath(attributes['d'] ?? '')]);
  });
  parser.on('text', (words) => {
    if (inTitle) titles.push(words);
  });
  parser.on('closetag', ({ name }) => {
    if (name === 'title') inTitle = false;
    if (name === 'g') open.pop();
  });
  parser.write(text).close();
  return { viewBox, size, groups, titles };
}

function readPath(data: string): Piece[] {
  if (/[eE]/.test(data)) throw new Error('an exponent');
  const path = svgpath(data);
  // What svgpath can't read it tells only so.
  const { err } = path as unknown as { err: string };
  if (err) throw new Error(err);
  const pieces: Piece[] = [];
  path.abs().iterate((segment, _, x, y) => {
    const from = { x, y };
    const [name, ...n] = segment as [string, ...number[]];
    if (name === 'M') return;
    if (name === 'L') pieces.push(...chain([from, { x: n[0]!, y: n[1]! }]));
    else if (name === 'C') pieces.push(...chain(cubicPoints(from, n)));
    else if (name === 'A') pieces.push(...chain(arcPoints(from, n)));
    else throw new Error(`a command ${name}`);
  });
  return pieces;
}

/** Pieces from point to point, y up. */
function chain(points: readonly Point[]): Piece[] {
  const up = points.map(({ x, y }) => ({ x, y: -y }));
  return up.slice(1).map((to, index) => ({ from: up[index]!, to }));
}

function cubicPoints(from: Point, [x1 = 0, y1 = 0, x2 = 0, y2 = 0, x3 = 0, y3 = 0]: readonly number[]): Point[] {
  return Array.from({ length: 9 }, (_, index) => {
    const t = index / 8;
    const [a, b, c, d] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
    return { x: a * from.x + b * x1 + c * x2 + d * x3, y: a * from.y + b * y1 + c * y2 + d * y3 };
  });
}

function arcPoints(
  from: Point,
  [rx = 0, ry = 0, turn = 0, large = 0, sweep = 0, x = 0, y = 0]: readonly number[],
): Point[] {
  if (turn !== 0) throw new Error('a turned ellipse');
  const [hx, hy] = [(from.x - x) / 2, (from.y - y) / 2];
  // Radii too small by rounding are scaled up (F.6.6.3).
  const scale = Math.sqrt(Math.max(1, (hx / rx) ** 2 + (hy / ry) ** 2));
  const [a, b] = [rx * scale, ry * scale];
  const under = (a * b) ** 2 - (a * hy) ** 2 - (b * hx) ** 2;
  const factor = (large === sweep ? -1 : 1) * Math.sqrt(Math.max(0, under) / ((a * hy) ** 2 + (b * hx) ** 2));
  const [ux, uy] = [(factor * a * hy) / b, (-factor * b * hx) / a];
  const centre = { x: ux + (from.x + x) / 2, y: uy + (from.y + y) / 2 };
  const start = Math.atan2((hy - uy) / b, (hx - ux) / a);
  let through = Math.atan2((-hy - uy) / b, (-hx - ux) / a) - start;
  if (sweep === 0 && through > 0) through -= 2 * Math.PI;
  if (sweep === 1 && through < 0) through += 2 * Math.PI;
  return Array.from({ length: PIECES + 1 }, (_, index) => {
    if (index === 0) return from;
    if (index === PIECES) return { x, y };
    const angle = start + (through * index) / PIECES;
    return { x: centre.x + a * Math.cos(angle), y: centre.y + b * Math.sin(angle) };
  });
}
