/** How near outlines come to one another, and whether a point lies inside one. */
import { around, type Box, type Point } from './box';
import { partBeside } from './carrier';
import { directionOn, distance, pointOn, unit, type Edge } from './edge';
import { boxesMeet, meetingsWithin } from './meetings';
import { boundsOf, flatten, shiftOutline, type Outline } from './outline';

/** The nearest points of two outlines. */
export interface Nearest {
  /** mm; 0 where they touch or cross. */
  readonly distance: number;
  readonly one: Point;
  readonly other: Point;
}

/** Samples of a curved edge; a line has its two ends. */
const SAMPLES = 24;

/**
 * The least distance between two outlines, good to the last digits: for every pair of edges the samples of one that come
 * nearest to the other, then the stretch round them searched.
 */
export function nearest(one: Outline, other: Outline): Nearest {
  const [ones, others] = [one.map(boxed), other.map(boxed)];
  const met = meeting(ones, others);
  if (met) return { distance: 0, one: met, other: met };
  const first = nearestBoxes(ones, others);
  if (!first) return { distance: Infinity, one: ORIGIN, other: ORIGIN };
  let best = nearestOf(first.a, first.b, Infinity) ?? { distance: Infinity, one: ORIGIN, other: ORIGIN };
  // Those that can come nearest first: most of the others are then too far off to be looked at.
  for (const { a, b, least } of pairsWithin(ones, others, best.distance).sort((x, y) => x.least - y.least)) {
    if (least >= best.distance) break;
    const found = nearestOf(a, b, best.distance);
    if (found && found.distance < best.distance) best = found;
  }
  return best;
}

interface Boxed {
  readonly edge: Edge;
  readonly box: Box;
}

function boxed(edge: Edge): Boxed {
  return { edge, box: boundsOf([edge]) };
}

/** A point where two outlines cross or touch: along edges that cross, the distance is least between samples of both sides. */
function meeting(ones: readonly Boxed[], others: readonly Boxed[]): Point | undefined {
  for (const a of ones) {
    for (const b of others) {
      const [met] = boxesMeet(a.box, b.box) ? meetingsWithin(a.edge, b.edge) : [];
      if (met) return met.point;
    }
  }
  return undefined;
}

/** The two edges whose boxes lie nearest to one another. */
function nearestBoxes(ones: readonly Boxed[], others: readonly Boxed[]): { a: Edge; b: Edge } | undefined {
  let nearestPair: { a: Edge; b: Edge } | undefined;
  let far = Infinity;
  for (const a of ones) {
    for (const b of others) {
      const apartBy = boxesApart(a.box, b.box);
      if (apartBy >= far) continue;
      [far, nearestPair] = [apartBy, { a: a.edge, b: b.edge }];
      if (apartBy === 0) return nearestPair;
    }
  }
  return nearestPair;
}

/** Edges whose boxes lie nearer to one another than a distance; of the pairs of two long outlines a few. */
function pairsWithin(ones: readonly Boxed[], others: readonly Boxed[], limit: number) {
  const whole = around(others.map(({ box }) => box));
  const pairs: { a: Edge; b: Edge; least: number }[] = [];
  for (const a of ones) {
    if (whole && boxesApart(a.box, whole) >= limit) continue;
    for (const b of others) {
      const least = boxesApart(a.box, b.box);
      if (least < limit) pairs.push({ a: a.edge, b: b.edge, least });
    }
  }
  return pairs;
}

const ORIGIN: Point = { x: 0, y: 0 };
/** Golden sections of the stretch between two samples. */
const TURNS = 40;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Undefined where they come no nearer than `limit`. */
function nearestOf(a: Edge, b: Edge, limit: number): Nearest | undefined {
  const pairTo = (part: number): Nearest => {
    const one = pointOn(a, part);
    const other = nearestOn(b, one);
    return { distance: distance(one, other), one, other };
  };
  const count = samplesIn(a);
  const pairs = Array.from({ length: count + 1 }, (_, index) => pairTo(index / count));
  const far = (index: number) => pairs[index]?.distance ?? Infinity;
  // Between two samples the edge comes no nearer than by the way from one to the next.
  const step = Math.max(...pairs.slice(1).map(({ one }, index) => distance(one, pairs[index]?.one ?? one)));
  let best: Nearest | undefined;
  // Several stretches may come about equally near, as the two ends of a strip do.
  const valleys = [...pairs.keys()].filter((index) => far(index) <= far(index - 1) && far(index) <= far(index + 1));
  for (const index of valleys.sort((x, y) => far(x) - far(y))) {
    if (far(index) - step >= Math.min(limit, best?.distance ?? Infinity)) break;
    const found = search(a, pairTo, index, count);
    if (!best || found.distance < best.distance) best = found;
  }
  return best;
}

/** Halvings, at the least, of the stretch between two samples: enough for the last digits of a distance. */
const MOST_STEPS = 80;
const SAME_PART = 1e-13;

/**
 * The nearest pair on either side of a sample: where the way to the other edge stands square to this one. Going along,
 * the distance changes by the part of that way that lies along the edge; its sign says on which side the pair lies.
 * Secants find it (the Illinois rule); where they shorten the stretch by less than half, as round a kink, it is halved.
 */
function search(edge: Edge, pairTo: (part: number) => Nearest, index: number, count: number): Nearest {
  const at = (part: number) => {
    const pair = pairTo(part);
    const way = directionOn(edge, part);
    return { part, pair, slope: (pair.one.x - pair.other.x) * way.x + (pair.one.y - pair.other.y) * way.y };
  };
  const middle = at(index / count);
  let low = middle.slope > 0 ? at(Math.max(0, (index - 1) / count)) : middle;
  let high = middle.slope > 0 ? middle : at(Math.min(1, (index + 1) / count));
  let best = nearer(nearer(low.pair, high.pair), middle.pair);
  let [below, above, last, halve] = [low.slope, high.slope, 0, false];
  for (let step = 0; step < MOST_STEPS && high.part - low.part > SAME_PART; step += 1) {
    const length = high.part - low.part;
    const next = at(low.part + length * (halve || below >= 0 || above <= 0 ? 0.5 : below / (below - above)));
    best = nearer(best, next.pair);
    if (next.slope === 0) break;
    const side = Math.sign(next.slope);
    if (side < 0) {
      if (side === last) above /= 2;
      [low, below] = [next, next.slope];
    } else {
      if (side === last) below /= 2;
      [high, above] = [next, next.slope];
    }
    last = side;
    halve = high.part - low.part > length / 2;
  }
  return best;
}

function nearer(one: Nearest, other: Nearest): Nearest {
  return other.distance < one.distance ? other : one;
}

/**
 * The least distance between two outlines, mm; negative where they run into each other or one lies in the other: then how
 * far one must be moved from the other's middle, straight away from it, until they only touch.
 */
export function apart(one: Outline, other: Outline): number {
  const gap = between(one, other);
  if (gap > 0) return gap;
  const [a, b] = [middleOf(one), middleOf(other)];
  const far = distance(a, b);
  const way = far > 0 ? unit({ x: b.x - a.x, y: b.y - a.y }) : { x: 1, y: 0 };
  let [near, clear] = [0, reach(one) + reach(other)];
  for (let turn = 0; turn < 50 && clear - near > CLOSE; turn += 1) {
    const middle = (near + clear) / 2;
    if (between(one, shiftOutline(other, { x: way.x * middle, y: way.y * middle })) > 0) clear = middle;
    else near = middle;
  }
  return -clear;
}

/** How exactly the way apart is found, mm. */
const CLOSE = 1e-6;

/** 0 where they cross or one lies in the other. */
function between(one: Outline, other: Outline): number {
  const gap = nearest(one, other).distance;
  const [a, b] = [one[0], other[0]];
  if (gap < CLOSE || !a || !b) return 0;
  return isInside(one, b.from) || isInside(other, a.from) ? 0 : gap;
}

function middleOf(outline: Outline): Point {
  const { left, right, bottom, top } = boundsOf(outline);
  return { x: (left + right) / 2, y: (bottom + top) / 2 };
}

function reach(outline: Outline): number {
  const { left, right, bottom, top } = boundsOf(outline);
  return Math.hypot(right - left, top - bottom);
}

/** How far the furthest point of one outline lies from the other, mm; good to the last digits where the distance changes smoothly. */
export function greatestDistance(from: Outline, to: Outline): number {
  const away = (edge: Edge, part: number) => {
    const point = pointOn(edge, part);
    return Math.min(...to.map((other) => distance(point, nearestOn(other, point))));
  };
  return Math.max(...from.map((edge) => greatestAlong((part) => away(edge, part))));
}

/** The greatest value of a function on 0..1 that has one summit between neighbouring samples. */
function greatestAlong(of: (part: number) => number): number {
  const values = Array.from({ length: SAMPLES + 1 }, (_, index) => of(index / SAMPLES));
  const summit = values.indexOf(Math.max(...values));
  let [low, high] = [Math.max(0, summit - 1) / SAMPLES, Math.min(SAMPLES, summit + 1) / SAMPLES];
  for (let turn = 0; turn < TURNS; turn += 1) {
    const [x, y] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
    if (of(x) > of(y)) high = y;
    else low = x;
  }
  return Math.max(values[summit] ?? 0, of((low + high) / 2));
}

function samplesIn(edge: Edge): number {
  return edge.kind === 'line' ? 4 : SAMPLES;
}

/** The point of an edge nearest to another point. */
export function nearestOn(edge: Edge, to: Point): Point {
  if (edge.kind === 'line') return onLine(edge, to);
  if (edge.kind === 'arc') {
    const angle = Math.atan2(to.y - edge.centre.y, to.x - edge.centre.x);
    const start = Math.atan2(edge.from.y - edge.centre.y, edge.from.x - edge.centre.x);
    const way = edge.sweep > 0 ? angle - start : start - angle;
    const part = (((way % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI)) / Math.abs(edge.sweep);
    return part <= 1 ? pointOn(edge, part) : nearerEnd(edge, to);
  }
  // The point of the whole curve that is nearest, if it is on this part of it.
  const part = partBeside(edge, to);
  return part >= 0 && part <= 1 ? pointOn(edge, part) : onCurve(edge, to);
}

function onLine(edge: Edge, to: Point): Point {
  const [dx, dy] = [edge.to.x - edge.from.x, edge.to.y - edge.from.y];
  const part = ((to.x - edge.from.x) * dx + (to.y - edge.from.y) * dy) / (dx * dx + dy * dy);
  return pointOn(edge, Math.min(1, Math.max(0, part)));
}

function nearerEnd(edge: Edge, to: Point): Point {
  return distance(edge.from, to) <= distance(edge.to, to) ? edge.from : edge.to;
}

/** Bisection for where the way to the point stands square to the curve, between the samples round the nearest one. */
function onCurve(edge: Edge, to: Point): Point {
  let near = 0;
  for (let step = 1; step <= SAMPLES; step += 1) {
    if (distance(pointOn(edge, step / SAMPLES), to) < distance(pointOn(edge, near / SAMPLES), to)) near = step;
  }
  let low = Math.max(0, near - 1) / SAMPLES;
  let high = Math.min(SAMPLES, near + 1) / SAMPLES;
  for (let turn = 0; turn < 60; turn += 1) {
    const middle = (low + high) / 2;
    const at = pointOn(edge, middle);
    const way = directionOn(edge, middle);
    if ((to.x - at.x) * way.x + (to.y - at.y) * way.y > 0) low = middle;
    else high = middle;
  }
  return pointOn(edge, (low + high) / 2);
}

/** How far two boxes lie from one another: what they hold comes no nearer. */
function boxesApart(a: Box, b: Box): number {
  const across = Math.max(0, a.left - b.right, b.left - a.right);
  const up = Math.max(0, a.bottom - b.top, b.bottom - a.top);
  return across === 0 ? up : up === 0 ? across : Math.sqrt(across * across + up * up);
}

/** How finely an outline is followed to tell inside from outside, mm. */
const FINE = 0.001;

/** True of a point inside the outline, counted by crossings of a ray; on the edge, to a micron, either answer. */
export function isInside(outline: Outline, { x, y }: Point): boolean {
  const { left, right, bottom, top } = boundsOf(outline);
  if (x < left || x > right || y < bottom || y > top) return false;
  const points = flatten(outline, FINE);
  return points.reduce((inside, from, index) => {
    const to = points[(index + 1) % points.length] ?? from;
    const crosses = from.y > y !== to.y > y && x < from.x + ((y - from.y) * (to.x - from.x)) / (to.y - from.y);
    return crosses ? !inside : inside;
  }, false);
}
