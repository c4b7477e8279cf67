/** The paths of one layer as HP-GL/2: 40 units in a millimetre, whole numbers, every coordinate absolute so that rounding never adds up. */
import type { LayerPaths } from '../../core/cutting/tool-paths';
import type { Point } from '../../core/geometry/box';
import { pointOn, type ArcEdge, type Edge } from '../../core/geometry/edge';
import type { MachineOptions } from '../../core/cutting/machine-options';
import { asCircle, chordsOf } from './approximate';
import { degrees, plainNumber } from './numbers';

/** A plotter unit is 0.025 mm (Hewlett-Packard, "The HP-GL/2 and HP RTL Reference Guide"; from memory). */
const UNITS_IN_MM = 40;
/** The finest chord angle of `AA`, degrees (from memory: 0.5 to 180). */
const FINEST_CHORD = 0.5;

/**
 * Words `IN SP PU PD AA`; the tool comes up at the end, back at the origin corner. Tool 1 cuts openings; pens and grooves have
 * the next numbers, in the order in which they come.
 */
export function hpglText({ paths }: LayerPaths, choices: MachineOptions): string {
  const words = ['IN'];
  const tools: string[] = [];
  let last = 0;
  for (const { edges, from, kind, tool, depth } of paths) {
    const key = `${tool} ${depth ?? ''}`;
    if (kind !== 'window' && !tools.includes(key)) tools.push(key);
    const number = kind === 'window' ? 1 : 2 + tools.indexOf(key);
    if (number !== last) words.push(`SP${number}`);
    last = number;
    words.push(`PU${units(from)}`, 'PD');
    words.push(...edges.flatMap((edge) => wordsOf(edge, choices)));
    words.push('PU');
  }
  words.push('PU0,0', 'SP0');
  return `${words.join(';\n')};\n`;
}

function wordsOf(edge: Edge, { curves, tolerance }: MachineOptions): string[] {
  const piece = (edge.kind === 'oval' && asCircle(edge)) || edge;
  if (curves === 'arcs' && piece.kind === 'arc') {
    const chord = chordAngle(piece, tolerance);
    // The end follows by itself, so that what the arc missed by rounding goes no further.
    if (chord >= FINEST_CHORD && holds(piece)) return [arcWord(piece, chord), `PD${units(piece.to)}`];
  }
  // Ovals as well: many short arcs would each miss their ends by a part of a unit.
  return chordsOf(piece, tolerance).map(({ to }) => `PD${units(to)}`);
}

function arcWord({ centre, sweep }: ArcEdge, chord: number): string {
  return `AA${units(centre)},${plainNumber(degrees(sweep), 4)},${plainNumber(chord, 2)}`;
}

/** Between the points that the plotter itself sets on an arc, degrees; it would take 5. */
function chordAngle({ radius }: ArcEdge, tolerance: number): number {
  return Math.floor(degrees(2 * Math.acos(1 - Math.min(1, tolerance / radius))) * 100) / 100;
}

/** True where an arc about the rounded centre from the rounded start stays within one unit of the arc that is meant. */
function holds(edge: ArcEdge): boolean {
  const [start, centre] = [edge.from, edge.centre].map(rounded) as [Point, Point];
  return [0.5, 1].every((part) => {
    const turn = edge.sweep * part;
    const [x, y] = [start.x - centre.x, start.y - centre.y];
    const at = {
      x: centre.x + x * Math.cos(turn) - y * Math.sin(turn),
      y: centre.y + x * Math.sin(turn) + y * Math.cos(turn),
    };
    const meant = pointOn(edge, part);
    return Math.hypot(at.x / UNITS_IN_MM - meant.x, at.y / UNITS_IN_MM - meant.y) * UNITS_IN_MM <= 1;
  });
}

function rounded({ x, y }: Point): Point {
  return { x: Math.round(x * UNITS_IN_MM) + 0, y: Math.round(y * UNITS_IN_MM) + 0 };
}

function units(point: Point): string {
  const { x, y } = rounded(point);
  return `${x},${y}`;
}
