/** A smooth curve as arcs of circles that run into one another without a corner, within a tolerance of it. */
import type { Point } from '../geometry/box';
import { arc, directionOn, distance, line, type Edge } from '../geometry/edge';

/** A curve without a bend inside that turns by less than half a turn. */
export interface Bend {
  readonly from: Point;
  readonly to: Point;
  /** Angles of travel at both ends, radians. */
  readonly startAngle: number;
  readonly endAngle: number;
  /** The point at a part of it, 0 to 1. */
  readonly at: (part: number) => Point;
  /** The angle of travel there. */
  readonly angleAt: (part: number) => number;
}

/** The distance from the curve is taken at so many steps along each pair. */
const SAMPLES = 12;
/** Between samples the curve may lie a little further off than at them. */
const SHARE = 0.9;
/** No stretch is made shorter, as a part of the curve, however tightly it bends. */
const LEAST = 1e-5;

/**
 * Pairs of arcs, each pair leaving and arriving in the curve's own directions and changing over in one direction, so that
 * the whole has no corner (biarcs: Bolton, "Biarc curves", 1975). As long as the tolerance allows, the last not shorter
 * than the others.
 */
export function biarcsAlong(bend: Bend, tolerance: number): Edge[] {
  const edges: Edge[] = [];
  let from = 0;
  while (from < 1) {
    let to = 1;
    let pair = biarc(bend, from, to);
    while (pair.error > SHARE * tolerance && to - from > LEAST) {
      // The distance grows with the third power of the length.
      const scale = Math.cbrt((SHARE * tolerance) / pair.error);
      const longest = (to - from) * Math.min(0.95, Math.max(0.1, 0.95 * scale));
      to = from + (1 - from) / Math.ceil((1 - from) / longest);
      pair = biarc(bend, from, to);
    }
    edges.push(...pair.edges);
    from = to;
  }
  return edges;
}

interface Biarc {
  readonly edges: readonly Edge[];
  /** The furthest that a sample of the curve lies from its arc, mm. */
  readonly error: number;
}

function biarc(bend: Bend, from: number, to: number): Biarc {
  const start = from === 0 ? bend.from : bend.at(from);
  const end = to === 1 ? bend.to : bend.at(to);
  const startAngle = from === 0 ? bend.startAngle : bend.angleAt(from);
  const endAngle = to === 1 ? bend.endAngle : bend.angleAt(to);
  const joint = jointOf(start, end, turned(endAngle - startAngle), bend.at((from + to) / 2));
  const first = arcBetween(start, joint, 2 * turned(angle(start, joint) - startAngle));
  const second = arcBetween(joint, end, 2 * turned(endAngle - angle(joint, end)));
  return { edges: [first, second], error: farthest(bend, from, to, first, second) };
}

/**
 * The point nearest to the curve's middle at which two arcs can change over in one direction: such points lie on the arc
 * from end to end that turns by as much as the curve does.
 */
function jointOf(start: Point, end: Point, turn: number, middle: Point): Point {
  const path = arcBetween(start, end, turn);
  if (path.kind === 'arc') {
    const far = path.radius / distance(middle, path.centre);
    const { x, y } = path.centre;
    return { x: x + (middle.x - x) * far, y: y + (middle.y - y) * far };
  }
  const [x, y] = [end.x - start.x, end.y - start.y];
  const part = ((middle.x - start.x) * x + (middle.y - start.y) * y) / (x * x + y * y);
  return { x: start.x + part * x, y: start.y + part * y };
}

/** Arcs that turn by less are lines, radians. */
const STRAIGHT = 1e-8;

/** The arc of a sweep over a chord: its middle lies beside the chord's by half the chord over the tangent of half the sweep. */
function arcBetween(from: Point, to: Point, sweep: number): Edge {
  if (Math.abs(sweep) < STRAIGHT) return line(from, to);
  const off = 1 / (2 * Math.tan(sweep / 2));
  const centre = {
    x: (from.x + to.x) / 2 - off * (to.y - from.y),
    y: (from.y + to.y) / 2 + off * (to.x - from.x),
  };
  return arc(from, to, centre, sweep);
}

function farthest(bend: Bend, from: number, to: number, first: Edge, second: Edge): number {
  let most = 0;
  for (let sample = 1; sample < SAMPLES; sample += 1) {
    const point = bend.at(from + ((to - from) * sample) / SAMPLES);
    // A point lies beside the arc on its own side of the line square to both where they change over.
    const way = directionOn(first, 1);
    const isPast = (point.x - first.to.x) * way.x + (point.y - first.to.y) * way.y > 0;
    most = Math.max(most, awayFrom(isPast ? second : first, point));
  }
  return most;
}

function awayFrom(edge: Edge, point: Point): number {
  if (edge.kind === 'line') {
    const [x, y] = [edge.to.x - edge.from.x, edge.to.y - edge.from.y];
    return Math.abs((point.x - edge.from.x) * y - (point.y - edge.from.y) * x) / Math.hypot(x, y);
  }
  return Math.abs(distance(point, edge.centre) - ('radius' in edge ? edge.radius : 0));
}

function angle(from: Point, to: Point): number {
  return Math.atan2(to.y - from.y, to.x - from.x);
}

/** An angle from minus half a turn to half a turn. */
function turned(by: number): number {
  return by - 2 * Math.PI * Math.round(by / (2 * Math.PI));
}
