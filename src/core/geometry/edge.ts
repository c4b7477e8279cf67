/** Edges of outlines: straight lines, arcs of circles, and arcs of ellipses with their parallel curves, all in mm. */
import type { Point } from './box';
import { integrate } from './quadrature';

export interface LineEdge {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/** Part of a circle. */
export interface ArcEdge {
  readonly kind: 'arc';
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly radius: number;
  /** Radians, anticlockwise; negative: clockwise. At most half a turn. */
  readonly sweep: number;
}

/** Part of the curve at a distance from an ellipse whose axes lie across and up; with no distance the ellipse itself. */
export interface OvalEdge {
  readonly kind: 'oval';
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  /** Half the width and half the height of the ellipse. */
  readonly radii: Point;
  /** Distance outward from the ellipse. */
  readonly away: number;
  /** Eccentric anomaly at the start, radians: the ellipse's point is `centre + (x cos t, y sin t)`. */
  readonly start: number;
  readonly sweep: number;
}

export type Edge = LineEdge | ArcEdge | OvalEdge;

export function line(from: Point, to: Point): LineEdge {
  return { kind: 'line', from, to };
}

/** The arc between two points round a centre; `sweep` tells which way and, by its size, which of the two arcs. */
export function arc(from: Point, to: Point, centre: Point, sweep: number): ArcEdge {
  return { kind: 'arc', from, to, centre, radius: distance(from, centre), sweep };
}

/** A part of an ellipse, or of a curve `away` from it. */
export function oval(centre: Point, radii: Point, away: number, start: number, sweep: number): OvalEdge {
  const at = (t: number) => ovalPoint({ centre, radii, away }, t);
  return { kind: 'oval', from: at(start), to: at(start + sweep), centre, radii, away, start, sweep };
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** The point at a part of the edge's own parameter, 0 at its start to 1 at its end. */
export function pointOn(edge: Edge, part: number): Point {
  switch (edge.kind) {
    case 'line':
      return {
        x: edge.from.x + part * (edge.to.x - edge.from.x),
        y: edge.from.y + part * (edge.to.y - edge.from.y),
      };
    case 'arc':
      return onCircle(edge, startAngle(edge) + part * edge.sweep);
    case 'oval':
      return ovalPoint(edge, edge.start + part * edge.sweep);
  }
}

/** Unit vector of travel at a part of the edge. */
export function directionOn(edge: Edge, part: number): Point {
  switch (edge.kind) {
    case 'line':
      return unit({ x: edge.to.x - edge.from.x, y: edge.to.y - edge.from.y });
    case 'arc': {
      const angle = startAngle(edge) + part * edge.sweep;
      const sign = Math.sign(edge.sweep);
      return { x: -Math.sin(angle) * sign, y: Math.cos(angle) * sign };
    }
    case 'oval': {
      const t = edge.start + part * edge.sweep;
      const sign = Math.sign(edge.sweep);
      return unit({ x: -edge.radii.x * Math.sin(t) * sign, y: edge.radii.y * Math.cos(t) * sign });
    }
  }
}

/** The same edge travelled the other way. */
export function reversed(edge: Edge): Edge {
  const ends = { from: edge.to, to: edge.from };
  if (edge.kind === 'line') return { ...edge, ...ends };
  if (edge.kind === 'arc') return { ...edge, ...ends, sweep: -edge.sweep };
  return { ...edge, ...ends, start: edge.start + edge.sweep, sweep: -edge.sweep };
}

/** The edge between two values of its own parameter. */
export function partOf(edge: Edge, start: number, end: number): Edge {
  const ends = { from: pointOn(edge, start), to: pointOn(edge, end) };
  if (edge.kind === 'line') return { ...edge, ...ends };
  const sweep = edge.sweep * (end - start);
  if (edge.kind === 'arc') return { ...edge, ...ends, sweep };
  return { ...edge, ...ends, start: edge.start + edge.sweep * start, sweep };
}

/** What follows an edge on the same line, circle or oval, for a length, mm. */
export function continued(edge: Edge, by: number): Edge {
  if (edge.kind === 'line') {
    const { x, y } = directionOn(edge, 0);
    return line(edge.to, { x: edge.to.x + by * x, y: edge.to.y + by * y });
  }
  if (edge.kind === 'arc') {
    const sweep = (Math.sign(edge.sweep) * by) / edge.radius;
    const to = onCircle(edge, startAngle(edge) + edge.sweep + sweep);
    return { ...edge, from: edge.to, to, sweep };
  }
  return continuedOval(edge, by);
}

function continuedOval({ centre, radii, away, start, sweep }: OvalEdge, by: number): OvalEdge {
  const sign = Math.sign(sweep);
  const piece = (length: number) => oval(centre, radii, away, start + sweep, sign * length);
  // By the secant: the length grows nearly evenly with the anomaly over so short a stretch.
  let turn = by / (Math.hypot(radii.x, radii.y) + Math.abs(away));
  for (let step = 0; step < 30; step += 1) {
    const length = lengthOfEdge(piece(turn));
    if (Math.abs(length - by) < 1e-12 * by) break;
    turn *= by / length;
  }
  return piece(turn);
}

/** Length along the edge. Of a parallel curve: that of the ellipse, and the distance times the turn of its normal. */
export function lengthOfEdge(edge: Edge): number {
  switch (edge.kind) {
    case 'line':
      return distance(edge.from, edge.to);
    case 'arc':
      return edge.radius * Math.abs(edge.sweep);
    case 'oval': {
      const { radii, away, start, sweep } = edge;
      const speed = (t: number) => Math.hypot(radii.x * Math.sin(t), radii.y * Math.cos(t));
      return Math.abs(integrate(speed, start, start + sweep)) + away * Math.abs(turnOf(edge));
    }
  }
}

/** Half of the integral of `x dy - y dx` along the edge: summed over a closed outline it is the area inside. */
export function sweptArea(edge: Edge): number {
  const chord = (edge.from.x * edge.to.y - edge.to.x * edge.from.y) / 2;
  switch (edge.kind) {
    case 'line':
      return chord;
    case 'arc':
      return chord + (edge.radius ** 2 * (edge.sweep - Math.sin(edge.sweep))) / 2;
    case 'oval':
      return chord + ovalSegment(edge);
  }
}

/** Area between an oval edge and its chord: that of the ellipse's, of the strip beside it, and of the turn. */
function ovalSegment(edge: OvalEdge): number {
  const { radii, away, start, sweep, from, to, centre } = edge;
  const cross = (a: Point, b: Point) => a.x * b.y - a.y * b.x;
  const relative = (point: Point) => ({ x: point.x - centre.x, y: point.y - centre.y });
  const ellipse = radii.x * radii.y * sweep;
  const speed = (t: number) => Math.hypot(radii.x * Math.sin(t), radii.y * Math.cos(t));
  const strip = 2 * away * integrate(speed, start, start + sweep);
  const turn = away ** 2 * turnOf(edge);
  // The strip's integral leaves the cross product of point and normal at both ends.
  const end = (t: number) => away * cross(ovalPoint({ ...edge, centre: ORIGIN, away: 0 }, t), ovalNormal(radii, t));
  return (ellipse + strip + turn + end(start + sweep) - end(start) - cross(relative(from), relative(to))) / 2;
}

const ORIGIN: Point = { x: 0, y: 0 };

/** How far the normal of an oval edge turns, radians. */
function turnOf({ radii, start, sweep }: OvalEdge): number {
  const angle = (t: number) => Math.atan2(Math.sin(t) / radii.y, Math.cos(t) / radii.x);
  const turned = angle(start + sweep) - angle(start);
  // The normal goes round as often as the anomaly does.
  return turned + 2 * Math.PI * Math.round((sweep - turned) / (2 * Math.PI));
}

function ovalPoint({ centre, radii, away }: Pick<OvalEdge, 'centre' | 'radii' | 'away'>, t: number): Point {
  const normal = ovalNormal(radii, t);
  return {
    x: centre.x + radii.x * Math.cos(t) + away * normal.x,
    y: centre.y + radii.y * Math.sin(t) + away * normal.y,
  };
}

function ovalNormal(radii: Point, t: number): Point {
  return unit({ x: radii.y * Math.cos(t), y: radii.x * Math.sin(t) });
}

export function startAngle({ from, centre }: ArcEdge): number {
  return Math.atan2(from.y - centre.y, from.x - centre.x);
}

function onCircle({ centre, radius }: ArcEdge, angle: number): Point {
  return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
}

export function unit({ x, y }: Point): Point {
  const length = Math.hypot(x, y);
  return { x: x / length, y: y / length };
}
