/** Closed outlines, anticlockwise: their area, length and bounds, and the same outline elsewhere, mirrored or turned. */
import { around, type Box, type Point } from './box';
import { arc, distance, lengthOfEdge, line, oval, pointOn, startAngle, sweptArea, type Edge } from './edge';

/** Edges that follow one another and close; the inside lies on the left of each. */
export type Outline = readonly Edge[];

/** Inside the outline, square mm; exact but for the strip along a parallel curve of an ellipse, which is good to a double's last digits. */
export function areaOf(outline: Outline): number {
  return outline.reduce((sum, edge) => sum + sweptArea(edge), 0);
}

export function lengthOf(outline: Outline): number {
  return outline.reduce((sum, edge) => sum + lengthOfEdge(edge), 0);
}

/** The smallest upright box round it. */
export function boundsOf(outline: Outline): Box {
  const box = around(extremesOf(outline).map(({ x, y }) => ({ left: x, right: x, bottom: y, top: y })));
  return box ?? { left: 0, right: 0, bottom: 0, top: 0 };
}

/** Every point where it may reach furthest to a side: ends of edges, and where a curve turns back. */
export function extremesOf(outline: Outline): Point[] {
  return outline.flatMap((edge) => [edge.from, edge.to, ...turningPoints(edge)]);
}

/** Points of a curved edge that lie furthest left, right, up or down. */
function turningPoints(edge: Edge): Point[] {
  if (edge.kind === 'line') return [];
  const start = edge.kind === 'arc' ? startAngle(edge) : edge.start;
  const { sweep } = edge;
  const [low, high] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
  const quarter = Math.PI / 2;
  const points: Point[] = [];
  for (let step = Math.ceil(low / quarter); step * quarter < high; step += 1)
    points.push(pointOn(edge, (step * quarter - start) / sweep));
  return points;
}

/** The outline moved. */
export function shiftOutline(outline: Outline, by: Point): Outline {
  const move = (point: Point): Point => ({ x: point.x + by.x, y: point.y + by.y });
  return outline.map((edge) => {
    const ends = { from: move(edge.from), to: move(edge.to) };
    return edge.kind === 'line' ? { ...edge, ...ends } : { ...edge, ...ends, centre: move(edge.centre) };
  });
}

/** The outline turned over about the vertical axis of a sheet of this width: `x' = width - x`; still anticlockwise. */
export function mirrorOutline(outline: Outline, sheetWidth: number): Outline {
  const over = ({ x, y }: Point): Point => ({ x: sheetWidth - x, y });
  return outline.toReversed().map((edge) => {
    if (edge.kind === 'line') return line(over(edge.to), over(edge.from));
    if (edge.kind === 'arc') return arc(over(edge.to), over(edge.from), over(edge.centre), edge.sweep);
    return oval(over(edge.centre), edge.radii, edge.away, Math.PI - edge.start - edge.sweep, edge.sweep);
  });
}

/** The outline turned a quarter anticlockwise about the origin. */
export function quarterTurned(outline: Outline): Outline {
  const turn = ({ x, y }: Point): Point => ({ x: 0 - y, y: x });
  return outline.map((edge) => {
    if (edge.kind === 'line') return line(turn(edge.from), turn(edge.to));
    if (edge.kind === 'arc') return arc(turn(edge.from), turn(edge.to), turn(edge.centre), edge.sweep);
    const radii = { x: edge.radii.y, y: edge.radii.x };
    return oval(turn(edge.centre), radii, edge.away, edge.start + Math.PI / 2, edge.sweep);
  });
}

/** An upright box as an outline. */
export function boxOutline({ left, bottom, right, top }: Box): Outline {
  const corners = [
    { x: left, y: bottom },
    { x: right, y: bottom },
    { x: right, y: top },
    { x: left, y: top },
  ];
  return corners.map((from, index) => line(from, corners[(index + 1) % 4] ?? from));
}

/** Points along the outline, none further than `tolerance` from the chord between its neighbours; the last edge ends at the first point. */
export function flatten(outline: Outline, tolerance: number): Point[] {
  return outline.flatMap((edge) => {
    const count = edge.kind === 'line' ? 1 : chordsOf(edge, tolerance);
    return Array.from({ length: count }, (_, index) => (index === 0 ? edge.from : pointOn(edge, index / count)));
  });
}

/** Equal steps of the parameter; the sagitta of each is at most `r step² / 8` with the largest radius of curvature. */
function chordsOf(edge: Exclude<Edge, { kind: 'line' }>, tolerance: number): number {
  const radius = edge.kind === 'arc' ? edge.radius : Math.max(edge.radii.x, edge.radii.y) + Math.max(0, edge.away);
  const step = 2 * Math.acos(Math.max(0, 1 - Math.min(1, tolerance / radius)));
  return Math.max(1, Math.ceil(Math.abs(edge.sweep) / step));
}

/** True where each edge begins where the last one ended, and the last ends where the first began. */
export function isClosed(outline: Outline, slack = 1e-9): boolean {
  return outline.every((edge, index) => {
    const next = outline[(index + 1) % outline.length];
    return next !== undefined && distance(edge.to, next.from) <= slack;
  });
}
