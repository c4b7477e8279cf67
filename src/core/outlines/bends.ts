/** Cubic curves and slanting ellipses as bends: cut where they turn round, change their way of bending, or come to a point. */
import type { Point } from '../geometry/box';
import type { Cubic } from '../geometry/cubics';
import type { Bend } from './biarcs';
import { onEllipse, partsAt, rootsWithin, turnsOf, type CubicSegment, type EllipseSegment } from './segment';

/** Parts that lie nearer to one another, or to an end, are one. */
const NEAR = 1e-7;

export function bendsOfCubic(segment: CubicSegment): Bend[] {
  const stops = inOrder([...turnsOf(segment), ...inflections(segment.points)]);
  return stops.slice(1).map((to, index) => bendOf(partOfCubic(segment.points, stops[index] ?? 0, to)));
}

/** Cut at the ends of its axes too, where it bends most and least. */
export function bendsOfEllipse(segment: EllipseSegment): Bend[] {
  const stops = inOrder([...turnsOf(segment), ...partsAt(segment, [axisOf(segment)], Math.PI / 2)]);
  const { start, sweep, one, other } = segment;
  const way = Math.sign(sweep);
  const angleAt = (part: number) => {
    const t = start + part * sweep;
    const [cos, sin] = [Math.cos(t) * way, Math.sin(t) * way];
    return Math.atan2(other.y * cos - one.y * sin, other.x * cos - one.x * sin);
  };
  const at = (part: number) =>
    part === 0 ? segment.from : part === 1 ? segment.to : onEllipse(segment, start + part * sweep);
  return stops.slice(1).map((to, index) => {
    const from = stops[index] ?? 0;
    const along = (part: number) => from + part * (to - from);
    return {
      from: at(from),
      to: at(to),
      startAngle: angleAt(from),
      endAngle: angleAt(to),
      at: (part) => at(along(part)),
      angleAt: (part) => angleAt(along(part)),
    };
  });
}

/** Where the longer axis of the ellipse ends, as an angle of its two half diameters. */
export function axisOf({ one, other }: EllipseSegment): number {
  const product = one.x * other.x + one.y * other.y;
  return Math.atan2(2 * product, one.x ** 2 + one.y ** 2 - other.x ** 2 - other.y ** 2) / 2;
}

function inOrder(parts: readonly number[]): number[] {
  const sorted = parts.filter((part) => part > NEAR && part < 1 - NEAR).toSorted((a, b) => a - b);
  return [0, ...sorted.filter((part, index) => part - (sorted[index - 1] ?? 0) > NEAR), 1];
}

/** Where first and second derivative lie along one another: `(c + 2bt + at²) x (b + at) = 0`. */
function inflections([p, q, r, s]: Cubic): number[] {
  const c = way(p, q);
  const b = { x: r.x - 2 * q.x + p.x, y: r.y - 2 * q.y + p.y };
  const a = { x: s.x - 3 * r.x + 3 * q.x - p.x, y: s.y - 3 * r.y + 3 * q.y - p.y };
  return rootsWithin(cross(c, b), cross(c, a), cross(b, a));
}

/** By de Casteljau's construction: first what lies before `to`, then of that what lies after `from`. */
function partOfCubic(points: Cubic, from: number, to: number): Cubic {
  const before = to === 1 ? points : split(points, to)[0];
  return from === 0 ? before : split(before, from / to)[1];
}

function split([p, q, r, s]: Cubic, part: number): [Cubic, Cubic] {
  const mix = (a: Point, b: Point): Point => ({ x: a.x + part * (b.x - a.x), y: a.y + part * (b.y - a.y) });
  const [pq, qr, rs] = [mix(p, q), mix(q, r), mix(r, s)];
  const [pqr, qrs] = [mix(pq, qr), mix(qr, rs)];
  const middle = mix(pqr, qrs);
  return [
    [p, pq, pqr, middle],
    [middle, qrs, rs, s],
  ];
}

function bendOf(points: Cubic): Bend {
  const [p, q, r, s] = points;
  const [c, b, a] = [way(p, q), way(q, r), way(r, s)];
  const speed = (part: number): Point => {
    const left = 1 - part;
    const [first, second, third] = [left * left, 2 * left * part, part * part];
    return { x: first * c.x + second * b.x + third * a.x, y: first * c.y + second * b.y + third * a.y };
  };
  const at = (part: number): Point => {
    const left = 1 - part;
    const [first, second, third, last] = [left ** 3, 3 * left * left * part, 3 * left * part * part, part ** 3];
    return {
      x: first * p.x + second * q.x + third * r.x + last * s.x,
      y: first * p.y + second * q.y + third * r.y + last * s.y,
    };
  };
  // A handle of no length leaves the direction to the next one.
  const long = 1e-9 * Math.max(length(c), length(b), length(a));
  const [leaving, arriving] = [
    [c, way(p, r), way(p, s)].find((each) => length(each) > long) ?? c,
    [a, way(q, s), way(p, s)].find((each) => length(each) > long) ?? a,
  ];
  return {
    from: p,
    to: s,
    startAngle: Math.atan2(leaving.y, leaving.x),
    endAngle: Math.atan2(arriving.y, arriving.x),
    at,
    angleAt: (part) => {
      const { x, y } = speed(part);
      return Math.atan2(y, x);
    },
  };
}

function way(from: Point, to: Point): Point {
  return { x: to.x - from.x, y: to.y - from.y };
}

function length({ x, y }: Point): number {
  return Math.hypot(x, y);
}

function cross(a: Point, b: Point): number {
  return a.x * b.y - a.y * b.x;
}
