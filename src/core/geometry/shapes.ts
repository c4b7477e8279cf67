/** Outlines of window shapes in a box of their size, its lower left corner at the origin. */
import type { Point, Size } from './box';
import { arc, line, oval, type Edge } from './edge';
import type { Outline } from './outline';

/** What a shape needs beside its size, mm. */
export type Shape =
  | { readonly kind: 'rectangle' }
  | { readonly kind: 'rounded'; readonly radius: number }
  | { readonly kind: 'oval' }
  /** Part of a circle over upright sides; with a rise of half the width a semicircle. */
  | { readonly kind: 'arch'; readonly rise: number }
  /** Two arcs that spring from the upright sides and meet in a point. */
  | { readonly kind: 'pointed'; readonly rise: number }
  /** Regular, one side lying at the bottom, as wide as the size is. */
  | { readonly kind: 'polygon'; readonly sides: number }
  /** Corners cut off at half a right angle. */
  | { readonly kind: 'cut-corners'; readonly cut: number }
  | { readonly kind: 'stepped'; readonly step: number; readonly count: number }
  /** Corners hollowed by quarter circles round them. */
  | { readonly kind: 'scooped'; readonly radius: number };

const QUARTER = Math.PI / 2;

/** The outline, anticlockwise. A measure of nothing leaves a plain corner. */
export function outlineOf(shape: Shape, { width, height }: Size): Outline {
  switch (shape.kind) {
    case 'rectangle':
      return polygonThrough(corners(width, height));
    case 'rounded':
      return cornered(width, height, shape.radius, (from, to, corner) =>
        arc(from, to, { x: from.x + to.x - corner.x, y: from.y + to.y - corner.y }, QUARTER),
      );
    case 'scooped':
      return cornered(width, height, shape.radius, (from, to, corner) => arc(from, to, corner, -QUARTER));
    case 'cut-corners':
      return cornered(width, height, shape.cut, (from, to) => line(from, to));
    case 'oval': {
      const radii = { x: width / 2, y: height / 2 };
      return [0, 1, 2, 3].map((quarter) => oval(radii, radii, 0, quarter * QUARTER, QUARTER));
    }
    case 'arch':
      return archOf(width, height, shape.rise);
    case 'pointed':
      return pointedOf(width, height, shape.rise);
    case 'polygon':
      return regularOf(width, shape.sides);
    case 'stepped':
      return polygonThrough(steppedPoints(width, height, shape.step, shape.count));
  }
}

/** Height over width of a regular polygon that lies on one of its sides. */
export function polygonHeight(width: number, sides: number): number {
  const points = regularPoints(sides);
  const ys = points.map(({ y }) => y);
  const xs = points.map(({ x }) => x);
  return (width * (Math.max(...ys) - Math.min(...ys))) / (Math.max(...xs) - Math.min(...xs));
}

/** Anticlockwise from the lower left. */
function corners(width: number, height: number): [Point, Point, Point, Point] {
  return [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
}

function polygonThrough(points: readonly Point[]): Outline {
  return points.map((from, index) => line(from, points[(index + 1) % points.length] ?? from));
}

/** A rectangle with each corner taken in by as much along both its sides. */
function cornered(
  width: number,
  height: number,
  by: number,
  corner: (from: Point, to: Point, at: Point) => Edge,
): Outline {
  const points = corners(width, height);
  if (by === 0) return polygonThrough(points);
  const edges = points.flatMap((at, index) => {
    const before = points[(index + 3) % 4] ?? at;
    const after = points[(index + 1) % 4] ?? at;
    const [from, to, end] = [towards(at, before, by), towards(at, after, by), towards(after, at, by)];
    return [corner(from, to, at), ...(to.x === end.x && to.y === end.y ? [] : [line(to, end)])];
  });
  return edges;
}

function towards(from: Point, to: Point, by: number): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: from.x + ((to.x - from.x) * by) / length, y: from.y + ((to.y - from.y) * by) / length };
}

function archOf(width: number, height: number, rise: number): Outline {
  const spring = height - rise;
  const radius = (width ** 2 / 4 + rise ** 2) / (2 * rise);
  const centre = { x: width / 2, y: height - radius };
  const sweep = 2 * Math.atan2(width / 2, radius - rise);
  const [from, to] = [
    { x: width, y: spring },
    { x: 0, y: spring },
  ];
  const sides =
    spring === 0
      ? [line(to, from)]
      : [line(to, corners(0, 0)[0]), line({ x: 0, y: 0 }, { x: width, y: 0 }), line({ x: width, y: 0 }, from)];
  return [{ ...arc(from, to, centre, sweep), radius }, ...sides];
}

function pointedOf(width: number, height: number, rise: number): Outline {
  const spring = height - rise;
  const radius = (width ** 2 / 4 + rise ** 2) / width;
  const apex = { x: width / 2, y: height };
  const sweep = Math.atan2(rise, radius - width / 2);
  const [right, left] = [
    { x: width, y: spring },
    { x: 0, y: spring },
  ];
  const heads = [
    { ...arc(right, apex, { x: width - radius, y: spring }, sweep), radius },
    { ...arc(apex, left, { x: radius, y: spring }, sweep), radius },
  ];
  const foot = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
  ] as const;
  return spring === 0
    ? [...heads, line(left, right)]
    : [...heads, line(left, foot[0]), line(foot[0], foot[1]), line(foot[1], right)];
}

function regularPoints(sides: number): Point[] {
  return Array.from({ length: sides }, (_, index) => {
    const angle = -QUARTER + ((2 * index + 1) * Math.PI) / sides;
    return { x: Math.cos(angle), y: Math.sin(angle) };
  });
}

function regularOf(width: number, sides: number): Outline {
  const points = regularPoints(sides);
  const [left, right] = [Math.min(...points.map(({ x }) => x)), Math.max(...points.map(({ x }) => x))];
  const bottom = Math.min(...points.map(({ y }) => y));
  const scale = width / (right - left);
  return polygonThrough(points.map(({ x, y }) => ({ x: (x - left) * scale, y: (y - bottom) * scale })));
}

/** From the lower left corner on, each corner a flight of steps. */
function steppedPoints(width: number, height: number, step: number, count: number): Point[] {
  const flight = Array.from({ length: count }, (_, index) => [
    { x: index * step, y: (count - index) * step },
    { x: (index + 1) * step, y: (count - index) * step },
  ]).flat();
  const last = { x: count * step, y: 0 };
  const lowerLeft = [...flight, last];
  const lowerRight = lowerLeft.toReversed().map(({ x, y }) => ({ x: width - x, y }));
  const upperRight = lowerLeft.map(({ x, y }) => ({ x: width - x, y: height - y }));
  const upperLeft = lowerRight.map(({ x, y }) => ({ x: width - x, y: height - y }));
  return [...lowerLeft, ...lowerRight, ...upperRight, ...upperLeft];
}
