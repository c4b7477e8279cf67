/** Two circular arcs that leave one point in a given direction and reach another in a given direction, joined smoothly. */
import type { Point } from '../geometry/box';
import { arc, distance, line, unit, type Edge } from '../geometry/edge';

/** A point and the unit vector of travel there. */
export interface Station {
  readonly at: Point;
  readonly heading: Point;
}

export interface Biarc {
  readonly edges: readonly [Edge, Edge];
  /** Where the two arcs meet. */
  readonly joint: Station;
}

/** An arc that turns by less, radians, is drawn as a line: its bow is less than a ten-millionth of its chord. */
const STRAIGHT = 4e-7;

/** The biarc whose two tangents to the joint are equally long (K. M. Bolton, Biarc curves, Computer-Aided Design 7, 1975; from memory). */
export function biarcBetween(start: Station, end: Station): Biarc {
  const chord = minus(end.at, start.at);
  const both = { x: start.heading.x + end.heading.x, y: start.heading.y + end.heading.y };
  const turn = minus(end.heading, start.heading);
  const [along, square] = [dot(chord, both), dot(chord, chord)];
  // The positive root of |chord - d (t0 + t1)| = 2 d, in the form that loses no digits where both headings agree.
  const reach = square / (along + Math.sqrt(along * along + dot(turn, turn) * square));
  const first = { x: start.at.x + reach * start.heading.x, y: start.at.y + reach * start.heading.y };
  const last = { x: end.at.x - reach * end.heading.x, y: end.at.y - reach * end.heading.y };
  const at = { x: (first.x + last.x) / 2, y: (first.y + last.y) / 2 };
  const joint = { at, heading: unit(minus(last, first)) };
  return { edges: [arcFrom(start, at), arcTo(at, end)], joint };
}

function arcFrom({ at, heading }: Station, to: Point): Edge {
  const chord = minus(to, at);
  return bow(at, to, 2 * Math.atan2(cross(heading, chord), dot(heading, chord)), at, heading);
}

function arcTo(from: Point, { at, heading }: Station): Edge {
  const chord = minus(at, from);
  return bow(from, at, 2 * Math.atan2(cross(chord, heading), dot(chord, heading)), at, heading);
}

/** The arc of a known sweep, whose direction at one of its points is known. */
function bow(from: Point, to: Point, sweep: number, at: Point, { x, y }: Point): Edge {
  if (Math.abs(sweep) < STRAIGHT) return line(from, to);
  const radius = distance(from, to) / (2 * Math.sin(sweep / 2));
  return arc(from, to, { x: at.x - radius * y, y: at.y + radius * x }, sweep);
}

/** How far a point lies from the arc on its side of the joint, mm. */
export function distanceFrom({ edges, joint }: Biarc, point: Point): number {
  const edge = edges[dot(minus(point, joint.at), joint.heading) < 0 ? 0 : 1];
  if (edge.kind === 'arc') return Math.abs(distance(point, edge.centre) - edge.radius);
  return Math.abs(cross(joint.heading, minus(point, joint.at)));
}

function minus(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}

function cross(a: Point, b: Point): number {
  return a.x * b.y - a.y * b.x;
}
