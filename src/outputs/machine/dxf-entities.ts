/** Edges as entities of DXF: LINE, ARC and ELLIPSE as they are; what it has no word for as LWPOLYLINE of arcs or of lines. */
import type { MachineOptions } from '../../core/cutting/machine-options';
import { startAngle, type ArcEdge, type Edge, type OvalEdge } from '../../core/geometry/edge';
import type { Point } from '../../core/geometry/box';
import { arcsOf, asCircle, chordsOf } from './approximate';
import type { Group } from './dxf-words';
import { degrees, lengthNumber, plainNumber } from './numbers';

export interface DxfStyle {
  readonly layer: string;
  readonly unit: 'in' | 'mm';
}

type Entity = readonly Group[];
const TURN = 2 * Math.PI;

/** One stroke's entities, in the order of cutting. Lines and polylines run as the tool does; DXF draws every ARC and ELLIPSE anticlockwise. */
export function entitiesOf(edges: readonly Edge[], { curves, tolerance }: MachineOptions, style: DxfStyle): Entity[] {
  if (curves === 'lines') {
    const chords = edges.flatMap((edge) => chordsOf(edge, tolerance));
    return chords.length === 1 ? chords.map((edge) => lineEntity(edge, style)) : [polyline(chords, style)];
  }
  const entities: Entity[] = [];
  let run: Edge[] = [];
  const endRun = () => {
    if (run.length > 0) entities.push(polyline(run, style));
    run = [];
  };
  for (const edge of edges) {
    const exact = exactEntity(edge, style);
    if (exact) {
      endRun();
      entities.push(exact);
    } else run.push(...arcsOf(edge, tolerance));
  }
  endRun();
  return entities;
}

function exactEntity(edge: Edge, style: DxfStyle): Entity | undefined {
  if (edge.kind === 'line') return lineEntity(edge, style);
  if (edge.kind === 'arc') return arcEntity(edge, style);
  const circle = asCircle(edge);
  if (circle) return arcEntity(circle, style);
  return edge.away === 0 ? ellipseEntity(edge, style) : undefined;
}

function headOf(kind: string, mark: string, { layer }: DxfStyle): Group[] {
  return [
    [0, kind],
    [100, 'AcDbEntity'],
    [8, layer],
    [100, mark],
  ];
}

function place({ x, y }: Point, { unit }: DxfStyle, first = 10): Group[] {
  return [
    [first, lengthNumber(x, unit)],
    [first + 10, lengthNumber(y, unit)],
  ];
}

function lineEntity({ from, to }: Edge, style: DxfStyle): Entity {
  return [
    ...headOf('LINE', 'AcDbLine', style),
    ...place(from, style),
    [30, '0.0'],
    ...place(to, style, 11),
    [31, '0.0'],
  ];
}

function arcEntity(edge: ArcEdge, style: DxfStyle): Entity {
  const [from, to] = anticlockwise(startAngle(edge), edge.sweep);
  return [
    ...headOf('ARC', 'AcDbCircle', style),
    ...place(edge.centre, style),
    [30, '0.0'],
    [40, lengthNumber(edge.radius, style.unit)],
    [100, 'AcDbArc'],
    [50, plainNumber(degrees(from), 8)],
    [51, plainNumber(degrees(to) % 360, 8)],
  ];
}

/** The major axis is a vector from the centre; the parameter counts from it. */
function ellipseEntity({ centre, radii, start, sweep }: OvalEdge, style: DxfStyle): Entity {
  const wide = radii.x >= radii.y;
  const [major, minor] = wide ? [radii.x, radii.y] : [radii.y, radii.x];
  const [from, to] = anticlockwise(wide ? start : start - Math.PI / 2, sweep);
  return [
    ...headOf('ELLIPSE', 'AcDbEllipse', style),
    ...place(centre, style),
    [30, '0.0'],
    ...place(wide ? { x: major, y: 0 } : { x: 0, y: major }, style, 11),
    [31, '0.0'],
    [40, plainNumber(minor / major, 12)],
    [41, plainNumber(from, 10)],
    [42, plainNumber(to, 10)],
  ];
}

/** Both ends of a turn, radians, the first from 0 to under a whole turn and the second after it. */
function anticlockwise(start: number, sweep: number): [number, number] {
  const first = sweep < 0 ? start + sweep : start;
  const from = ((first % TURN) + TURN) % TURN;
  return [from, from + Math.abs(sweep)];
}

/** Lines and arcs that follow one another; an arc's bulge is the tangent of a quarter of its sweep. */
function polyline(edges: readonly Edge[], style: DxfStyle): Entity {
  const last = edges.at(-1);
  return [
    ...headOf('LWPOLYLINE', 'AcDbPolyline', style),
    [90, edges.length + 1],
    [70, 0],
    ...edges.flatMap((edge) => [...place(edge.from, style), ...bulge(edge)]),
    ...(last ? place(last.to, style) : []),
  ];
}

function bulge(edge: Edge): Group[] {
  return edge.kind === 'arc' ? [[42, plainNumber(Math.tan(edge.sweep / 4), 12)]] : [];
}

/** A closed rectangle. */
export function rectangleEntity(
  lowerLeft: Point,
  { width, height }: { width: number; height: number },
  style: DxfStyle,
): Entity {
  const [right, top] = [lowerLeft.x + width, lowerLeft.y + height];
  const corners = [lowerLeft, { x: right, y: lowerLeft.y }, { x: right, y: top }, { x: lowerLeft.x, y: top }];
  return [
    ...headOf('LWPOLYLINE', 'AcDbPolyline', style),
    [90, corners.length],
    [70, 1],
    ...corners.flatMap((corner) => place(corner, style)),
  ];
}
