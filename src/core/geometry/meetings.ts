/** Where two edges meet: cross, touch, or begin and cease to lie on one another. */
import type { Box, Point } from './box';
import { carrierOf, levelOf, onOneCarrier, partBeside } from './carrier';
import {
  directionOn,
  distance,
  lengthOfEdge,
  pointOn,
  type ArcEdge,
  type Edge,
  type LineEdge,
  type OvalEdge,
} from './edge';
import { boundsOf } from './outline';
import { SAME, TOUCH } from './tolerance';

/** A point on two edges, and the part of each at which it lies, 0 at the start to 1 at the end. */
export interface Meeting {
  readonly a: number;
  readonly b: number;
  readonly point: Point;
}

/**
 * All points two edges have in common, in no order; of stretches that lie on one another the two ends. Lines and circles
 * by closed forms, ovals by bisection to the last digits.
 */
export function meetingsOf(a: Edge, b: Edge): Meeting[] {
  return boxesMeet(boundsOf([a]), boundsOf([b])) ? meetingsWithin(a, b) : [];
}

export function boxesMeet(a: Box, b: Box): boolean {
  return a.left <= b.right + SAME && b.left <= a.right + SAME && a.bottom <= b.top + SAME && b.bottom <= a.top + SAME;
}

/** The same of edges whose boxes are known to meet. */
export function meetingsWithin(a: Edge, b: Edge): Meeting[] {
  const found: Meeting[] = [];
  const add = (meeting: Meeting) => {
    if (found.every(({ point }) => distance(point, meeting.point) > SAME)) found.push(meeting);
  };
  // Ends first, so that what lies at an end has that end's very point.
  for (const end of [0, 1] as const) endOn(a, end, b, (part, point) => add({ a: end, b: part, point }));
  for (const end of [0, 1] as const) endOn(b, end, a, (part, point) => add({ a: part, b: end, point }));
  if (onOneCarrier(a, b)) {
    for (const meeting of ownCrossings(a, b)) add(meeting);
    return found;
  }
  for (const point of crossings(a, b)) {
    const [partA, partB] = [partWithin(a, point), partWithin(b, point)];
    if (partA !== undefined && partB !== undefined) add({ a: partA, b: partB, point });
  }
  return found;
}

function endOn(of: Edge, end: 0 | 1, edge: Edge, tell: (part: number, point: Point) => void): void {
  const point = end === 0 ? of.from : of.to;
  if (distance(edge.from, point) <= SAME) return tell(0, point);
  if (distance(edge.to, point) <= SAME) return tell(1, point);
  const part = partBeside(edge, point);
  if (part > 0 && part < 1 && distance(pointOn(edge, part), point) <= SAME) tell(part, point);
}

/** The part of an edge at which a point of its carrier lies; undefined beyond its ends. */
function partWithin(edge: Edge, point: Point): number | undefined {
  const part = partBeside(edge, point);
  if (part >= 0 && part <= 1) return part;
  const beyond = (part < 0 ? -part : part - 1) * lengthOfEdge(edge);
  return beyond <= SAME ? Math.round(part) : undefined;
}

/**
 * Where two parts of one carrier cross: inside an ellipse its parallel curve does so on the longer axis, at two points of the
 * ellipse that lie across the axis from one another.
 */
function ownCrossings(a: Edge, b: Edge): Meeting[] {
  if (a.kind !== 'oval' || b.kind !== 'oval' || a.away >= 0) return [];
  const { x, y } = a.radii;
  const [long, short] = [Math.max(x, y), Math.min(x, y)];
  // There the normal is as long, down to the axis, as the distance: sqrt(a² sin²t + b² cos²t) b / a, t from the longer axis.
  const bend = (a.away * long) / short;
  const square = (bend * bend - short * short) / ((long - short) * (long + short));
  if (!(square > 0 && square < 1)) return [];
  const turn = Math.asin(Math.sqrt(square));
  return [turn, -turn, Math.PI - turn, Math.PI + turn].flatMap((one) => {
    const [t, mirrored] = x > y ? [one, -one] : [Math.PI / 2 + one, Math.PI / 2 - one];
    const [partA, partB] = [partAt(a, t), partAt(b, mirrored)];
    return partA <= 1 && partB <= 1 ? [{ a: partA, b: partB, point: pointOn(a, partA) }] : [];
  });
}

/** The part of an oval edge at an anomaly; more than 1 beyond its ends. */
function partAt({ start, sweep }: OvalEdge, t: number): number {
  const whole = 2 * Math.PI;
  const gone = (sweep > 0 ? t - start : start - t) % whole;
  return (gone < 0 ? gone + whole : gone) / Math.abs(sweep);
}

/** Where the carriers cross or touch; with an oval, along that oval's own stretch. */
function crossings(a: Edge, b: Edge): Point[] {
  if (a.kind === 'oval') return alongOval(a, b);
  if (b.kind === 'oval') return alongOval(b, a);
  return plainCarriersMeet(a, b);
}

/** Where the whole lines, circles and ovals meet that two edges lie on. */
export function carriersMeet(a: Edge, b: Edge): Point[] {
  if (a.kind === 'oval') return alongOval({ ...a, sweep: 2 * Math.PI }, b);
  if (b.kind === 'oval') return alongOval({ ...b, sweep: 2 * Math.PI }, a);
  return plainCarriersMeet(a, b);
}

function plainCarriersMeet(a: LineEdge | ArcEdge, b: LineEdge | ArcEdge): Point[] {
  if (a.kind === 'line') return b.kind === 'line' ? lineWithLine(a, b) : lineWithCircle(a, b);
  return b.kind === 'line' ? lineWithCircle(b, a) : circleWithCircle(a, b);
}

/** Lines whose directions differ by less never meet. */
const PARALLEL = 1e-12;

function lineWithLine(a: LineEdge, b: LineEdge): Point[] {
  const [u, v] = [directionOn(a, 0), directionOn(b, 0)];
  const cross = u.x * v.y - u.y * v.x;
  if (Math.abs(cross) < PARALLEL) return [];
  const along = ((b.from.x - a.from.x) * v.y - (b.from.y - a.from.y) * v.x) / cross;
  return [{ x: a.from.x + along * u.x, y: a.from.y + along * u.y }];
}

function lineWithCircle(of: LineEdge, { centre, radius }: ArcEdge): Point[] {
  const u = directionOn(of, 0);
  const to = { x: centre.x - of.from.x, y: centre.y - of.from.y };
  const along = to.x * u.x + to.y * u.y;
  const off = Math.abs(to.x * u.y - to.y * u.x);
  if (off > radius + TOUCH) return [];
  const half = off > radius - TOUCH ? 0 : Math.sqrt((radius - off) * (radius + off));
  const at = (way: number): Point => ({ x: of.from.x + way * u.x, y: of.from.y + way * u.y });
  return half === 0 ? [at(along)] : [at(along - half), at(along + half)];
}

function circleWithCircle(a: ArcEdge, b: ArcEdge): Point[] {
  const apart = distance(a.centre, b.centre);
  const [sum, difference] = [a.radius + b.radius, Math.abs(a.radius - b.radius)];
  if (apart < TOUCH || apart > sum + TOUCH || apart < difference - TOUCH) return [];
  const touches = apart > sum - TOUCH || apart < difference + TOUCH;
  const along = (apart + ((a.radius - b.radius) / apart) * sum) / 2;
  const half = touches ? 0 : Math.sqrt(Math.max(0, (a.radius - along) * (a.radius + along)));
  const u = { x: (b.centre.x - a.centre.x) / apart, y: (b.centre.y - a.centre.y) / apart };
  // Of circles that all but coincide rounding would show in the radius, but for this.
  const scale = a.radius / Math.hypot(along, half);
  const at = (side: number): Point => ({
    x: a.centre.x + scale * (along * u.x - side * u.y),
    y: a.centre.y + scale * (along * u.y + side * u.x),
  });
  return half === 0 ? [at(0)] : [at(half), at(-half)];
}

/** Steps along an oval: no two turns of its distance from a line, circle or oval come between two of them unseen. */
const STEP = Math.PI / 24;

interface Sample {
  readonly part: number;
  /** Distance from the other's carrier. */
  readonly value: number;
  /** True where it grows along the oval. */
  readonly grows: boolean;
}

/** Where an oval meets another edge's carrier: between samples and turning points of the distance from it, by bisection. */
function alongOval(edge: OvalEdge, other: Edge): Point[] {
  const carrier = carrierOf(other);
  const sample = (part: number): Sample => {
    const { value, rise } = levelOf(carrier, pointOn(edge, part));
    const way = directionOn(edge, part);
    return { part, value, grows: rise.x * way.x + rise.y * way.y > 0 };
  };
  const count = Math.ceil(Math.abs(edge.sweep) / STEP);
  const longest = longestStep(edge, count);
  const parts: number[] = [];
  let last = sample(0);
  // A meeting at the very start lies between no two samples where rounding puts both ends of a whole turn on one side.
  if (Math.abs(last.value) <= TOUCH) parts.push(0);
  for (let step = 1; step <= count; step += 1) {
    const next = sample(step / count);
    if (Math.abs(last.value) + Math.abs(next.value) <= longest) parts.push(...rootsBetween(sample, last, next));
    last = next;
  }
  return parts.map((part) => pointOn(edge, part));
}

/** No step along the oval is longer, mm. */
function longestStep({ radii, away, sweep }: OvalEdge, count: number): number {
  const long = Math.max(radii.x, radii.y);
  return ((long + Math.abs(away) * (long / Math.min(radii.x, radii.y))) * Math.abs(sweep)) / count;
}

function rootsBetween(sample: (part: number) => Sample, low: Sample, high: Sample): number[] {
  if (low.grows === high.grows) return root(sample, low, high);
  const turn = bisect(low.part, high.part, (part) => sample(part).grows === low.grows);
  const middle = sample(turn);
  if (Math.abs(middle.value) <= TOUCH) return [turn];
  return [...root(sample, low, middle), ...root(sample, middle, high)];
}

function root(sample: (part: number) => Sample, low: Sample, high: Sample): number[] {
  const outside = low.value > 0;
  if (high.value > 0 === outside) return [];
  return [bisect(low.part, high.part, (part) => sample(part).value > 0 === outside)];
}

/** The last number for which it is still so. */
function bisect(from: number, to: number, isStill: (at: number) => boolean): number {
  let [low, high] = [from, to];
  for (let turn = 0; turn < 54; turn += 1) {
    const middle = (low + high) / 2;
    if (isStill(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
