/** Pieces of a path as SVG draws them, before they are made edges: lines, cubic Bézier curves, arcs of ellipses lying any way. */
import { around, type Box, type Point } from '../geometry/box';
import type { Cubic } from '../geometry/cubics';
import { moved, turnedWay, type Matrix } from './matrix';

export interface LineSegment {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

export interface CubicSegment {
  readonly kind: 'cubic';
  readonly from: Point;
  readonly to: Point;
  /** Begins in `from` and ends in `to`. */
  readonly points: Cubic;
}

/** `centre + one cos t + other sin t`: two conjugate half diameters of the ellipse, which need not be its axes. */
export interface EllipseSegment {
  readonly kind: 'ellipse';
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly one: Point;
  readonly other: Point;
  /** Radians; less than a whole turn. */
  readonly start: number;
  readonly sweep: number;
}

export type Segment = LineSegment | CubicSegment | EllipseSegment;

export function mapped(segment: Segment, matrix: Matrix): Segment {
  const ends = { from: moved(matrix, segment.from), to: moved(matrix, segment.to) };
  switch (segment.kind) {
    case 'line':
      return { ...segment, ...ends };
    case 'cubic': {
      const [, second, third] = segment.points;
      return { ...segment, ...ends, points: [ends.from, moved(matrix, second), moved(matrix, third), ends.to] };
    }
    case 'ellipse':
      return {
        ...segment,
        ...ends,
        centre: moved(matrix, segment.centre),
        one: turnedWay(matrix, segment.one),
        other: turnedWay(matrix, segment.other),
      };
  }
}

/** The same piece travelled the other way. */
export function backwards(segment: Segment): Segment {
  const ends = { from: segment.to, to: segment.from };
  if (segment.kind === 'line') return { ...segment, ...ends };
  if (segment.kind === 'ellipse')
    return { ...segment, ...ends, start: segment.start + segment.sweep, sweep: -segment.sweep };
  const [first, second, third, last] = segment.points;
  return { ...segment, ...ends, points: [last, third, second, first] };
}

/** The point at a part of it, 0 to 1. */
export function pointAlong(segment: Segment, part: number): Point {
  switch (segment.kind) {
    case 'line':
      return between(segment.from, segment.to, part);
    case 'ellipse':
      return onEllipse(segment, segment.start + part * segment.sweep);
    case 'cubic': {
      const [p, q, r, s] = segment.points;
      const left = 1 - part;
      const [a, b, c, d] = [left ** 3, 3 * left * left * part, 3 * left * part * part, part ** 3];
      return { x: a * p.x + b * q.x + c * r.x + d * s.x, y: a * p.y + b * q.y + c * r.y + d * s.y };
    }
  }
}

export function onEllipse({ centre, one, other }: EllipseSegment, t: number): Point {
  const [cos, sin] = [Math.cos(t), Math.sin(t)];
  return { x: centre.x + one.x * cos + other.x * sin, y: centre.y + one.y * cos + other.y * sin };
}

function between(from: Point, to: Point, part: number): Point {
  return { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
}

/** The smallest upright box round the true curves. */
export function boundsOfSegments(segments: readonly Segment[]): Box {
  const points = segments.flatMap((segment) => [
    segment.from,
    segment.to,
    ...turnsOf(segment).map((part) => pointAlong(segment, part)),
  ]);
  const box = around(points.map(({ x, y }) => ({ left: x, right: x, bottom: y, top: y })));
  return box ?? { left: 0, right: 0, bottom: 0, top: 0 };
}

/** Parts strictly within, at which it lies furthest left, right, up or down. */
export function turnsOf(segment: Segment): number[] {
  if (segment.kind === 'line') return [];
  if (segment.kind === 'ellipse') {
    const { one, other } = segment;
    return partsAt(segment, [Math.atan2(other.x, one.x), Math.atan2(other.y, one.y)], Math.PI);
  }
  const [p, q, r, s] = segment.points;
  return [
    ...rootsWithin(q.x - p.x, 2 * (r.x - 2 * q.x + p.x), s.x - 3 * r.x + 3 * q.x - p.x),
    ...rootsWithin(q.y - p.y, 2 * (r.y - 2 * q.y + p.y), s.y - 3 * r.y + 3 * q.y - p.y),
  ];
}

/** Parts of an ellipse's arc strictly within it, at angles that recur every `period`, radians. */
export function partsAt({ start, sweep }: EllipseSegment, angles: readonly number[], period: number): number[] {
  const [low, high] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
  return angles.flatMap((angle) => {
    const parts: number[] = [];
    for (let step = Math.ceil((low - angle) / period); angle + step * period < high; step += 1)
      parts.push((angle + step * period - start) / sweep);
    return parts.filter((part) => part > 0 && part < 1);
  });
}

/** Roots of `c + b t + a t²` strictly between 0 and 1. */
export function rootsWithin(c: number, b: number, a: number): number[] {
  const roots: number[] = [];
  const discriminant = b * b - 4 * a * c;
  if (discriminant >= 0) {
    // The root that cancels nothing, and the other one by Vieta's product.
    const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant)) / 2;
    if (a !== 0) roots.push(q / a);
    if (q !== 0) roots.push(c / q);
  }
  return roots.filter((root) => root > 0 && root < 1);
}
