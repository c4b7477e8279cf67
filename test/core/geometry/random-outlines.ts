/** Outlines at random: every kind of shape in every proportion, stars of lines and arcs, and smooth chains of arcs. */
import fc from 'fast-check';
import type { Point } from '../../../src/core/geometry/box';
import { arc, distance, line, type Edge } from '../../../src/core/geometry/edge';
import { areaOf, type Outline } from '../../../src/core/geometry/outline';
import { crossingOf } from '../../../src/core/geometry/region';
import { outlineOf, polygonHeight, type Shape } from '../../../src/core/geometry/shapes';

const part = fc.double({ min: 0, max: 1, noNaN: true });
const length = part.map((share) => 10 * 60 ** share);
const between = (least: number, most: number) => (share: number) => least + share * (most - least);

/** A shape of each kind with a measure between what it may least and most have. */
const shapeIn: Record<Shape['kind'], (width: number, height: number, share: number, count: number) => Shape> = {
  rectangle: () => ({ kind: 'rectangle' }),
  oval: () => ({ kind: 'oval' }),
  rounded: (width, height, share) => ({ kind: 'rounded', radius: between(0.1, Math.min(width, height) / 2)(share) }),
  scooped: (width, height, share) => ({ kind: 'scooped', radius: between(0.1, Math.min(width, height) * 0.49)(share) }),
  'cut-corners': (width, height, share) => ({
    kind: 'cut-corners',
    cut: between(0.1, Math.min(width, height) * 0.49)(share),
  }),
  stepped: (width, height, share, count) => ({
    kind: 'stepped',
    count: 1 + (count % 3),
    step: (between(0.1, 0.49)(share) * Math.min(width, height)) / (1 + (count % 3)),
  }),
  arch: (width, height, share) => ({ kind: 'arch', rise: between(0.02, 1)(share) * Math.min(width / 2, height) }),
  pointed: (width, height, share) =>
    height <= width / 2
      ? { kind: 'arch', rise: height / 2 }
      : { kind: 'pointed', rise: between(width / 2, Math.min(height, 2 * width))(share) },
  polygon: (_width, _height, _share, count) => ({ kind: 'polygon', sides: 3 + (count % 10) }),
};

/** Every kind of shape, 10 to 600 mm. */
export const anyShape: fc.Arbitrary<Outline> = fc
  .tuple(fc.constantFrom(...Object.values(shapeIn)), length, length, part, fc.nat(99))
  .map(([make, width, height, share, count]) => {
    const shape = make(width, height, share, count);
    const size = { width, height: shape.kind === 'polygon' ? polygonHeight(width, shape.sides) : height };
    return outlineOf(shape, size);
  });

/** Round a middle, from ray to ray further or nearer. */
const starPoints = (least: number, most: number) =>
  fc.tuple(length, fc.array(fc.tuple(part, part), { minLength: least, maxLength: most })).map(([radius, rays]) =>
    rays.map(([jitter, share], index): Point => {
      const angle = (2 * Math.PI * (index + 0.8 * jitter)) / rays.length;
      const far = (radius / 2) * between(0.25, 1)(share);
      return { x: far * Math.cos(angle), y: far * Math.sin(angle) };
    }),
  );

const closed = <T>(items: readonly T[], index: number): T => {
  const item = items[((index % items.length) + items.length) % items.length];
  if (item === undefined) throw new Error('nothing to choose from');
  return item;
};

/** Stars of lines only. */
export const anyPolygon: fc.Arbitrary<Outline> = starPoints(3, 16)
  .map((points) => points.map((from, index) => line(from, closed(points, index + 1))))
  .filter(isOutline);

/** Stars of lines and of arcs that bulge outward or inward. */
export const anyStar: fc.Arbitrary<Outline> = fc
  .tuple(starPoints(3, 16), fc.array(fc.double({ min: -2, max: 2, noNaN: true }), { minLength: 3, maxLength: 5 }))
  .map(([points, bends]) =>
    points.map((from, index) => bentEdge(from, closed(points, index + 1), closed(bends, index))),
  )
  .filter(isOutline);

/** A line where it would all but be straight. */
function bentEdge(from: Point, to: Point, sweep: number): Edge {
  return Math.abs(sweep) < 0.6 ? line(from, to) : bentArc(from, to, sweep);
}

/** Arcs that go on smoothly from one another through the points of a star, two from each to the next. */
export const anyChain: fc.Arbitrary<Outline> = starPoints(8, 40)
  .map((points) =>
    points.flatMap((from, index) => {
      const to = closed(points, index + 1);
      const way = (at: number) => direction(closed(points, at - 1), closed(points, at + 1));
      return biarc(from, way(index), to, way(index + 1));
    }),
  )
  .filter(isOutline);

function direction(from: Point, to: Point): Point {
  const far = distance(from, to);
  return { x: (to.x - from.x) / far, y: (to.y - from.y) / far };
}

/** Two arcs with one tangent where they join, as long as one another's tangents (Bolton, "Biarc curves", 1975). */
function biarc(from: Point, leaving: Point, to: Point, arriving: Point): Edge[] {
  const v = { x: to.x - from.x, y: to.y - from.y };
  const sum = { x: leaving.x + arriving.x, y: leaving.y + arriving.y };
  const [a, b] = [2 * (1 - leaving.x * arriving.x - leaving.y * arriving.y), v.x * sum.x + v.y * sum.y];
  const square = v.x * v.x + v.y * v.y;
  const d = square / (b + Math.sqrt(b * b + a * square));
  const joint = {
    x: (from.x + to.x + d * (leaving.x - arriving.x)) / 2,
    y: (from.y + to.y + d * (leaving.y - arriving.y)) / 2,
  };
  return [tangentArc(from, leaving, joint, 1), tangentArc(to, arriving, joint, -1)];
}

/** From a point with its direction to another; `way` -1: from the other to the point. */
function tangentArc(at: Point, along: Point, other: Point, way: 1 | -1): Edge {
  const chord = { x: (other.x - at.x) * way, y: (other.y - at.y) * way };
  const half = Math.atan2(along.x * chord.y - along.y * chord.x, along.x * chord.x + along.y * chord.y);
  const [from, to, sweep] = way === 1 ? [at, other, 2 * half] : [other, at, -2 * half];
  return Math.abs(sweep) < 1e-6 ? line(from, to) : bentArc(from, to, sweep);
}

function bentArc(from: Point, to: Point, sweep: number): Edge {
  const rise = 1 / (2 * Math.tan(sweep / 2));
  const centre = {
    x: (from.x + to.x) / 2 - (to.y - from.y) * rise,
    y: (from.y + to.y) / 2 + (to.x - from.x) * rise,
  };
  return arc(from, to, centre, sweep);
}

function isOutline(edges: Outline): boolean {
  const isFit = edges.every(
    (edge) => edge.kind === 'line' || (edge.kind === 'arc' && Math.abs(edge.sweep) < Math.PI && edge.radius > 1e-3),
  );
  return isFit && areaOf(edges) > 0 && crossingOf(edges) === undefined;
}
