/** A curve followed by a smooth chain of circular arcs, as few as keep near enough to it. */
import type { Point } from '../geometry/box';
import { distance, line, unit, type Edge } from '../geometry/edge';
import { assert } from '../problem';
import { biarcBetween, distanceFrom, type Biarc, type Station } from './biarc';
import { onEllipse, pointAt, turningsOf, type CubicPiece, type CurvedPiece, type EllipsePiece } from './piece';

/** No point of the curve lies further from the chain, mm. */
export const CHAIN_ERROR = 0.001;
/** What is aimed at: the rest is for what may lie between the points at which the distance is measured. */
const AIM = 0.9 * CHAIN_ERROR;
const MEASURED = 24;

/**
 * The arcs, from the piece's start to its end, directions equal where two meet but for cusps. A stretch that bends back
 * less than a ten-thousandth of a millimetre is not parted there; else the chain's extremes are the curve's very own.
 */
export function arcChain(piece: CurvedPiece): Edge[] {
  const parts = monotoneParts(piece);
  return parts.slice(1).flatMap((end, index) => chainAlong(piece, parts[index] ?? 0, end));
}

/** Bends back across by less are no turning point, mm. */
const UNTURNED = 1e-7;

/** 0, the parts at which the curve turns back along an axis, and 1. */
function monotoneParts(piece: CurvedPiece): number[] {
  const kept = [0];
  const turnings = turningsOf(piece);
  turnings.forEach(({ part, axis }, index) => {
    const reach = (other: number) => Math.abs(pointAt(piece, other)[axis] - pointAt(piece, part)[axis]);
    const next = turnings[index + 1]?.part ?? 1;
    if (reach(kept.at(-1) ?? 0) > UNTURNED && reach(next) > UNTURNED) kept.push(part);
  });
  return [...kept, 1];
}

function chainAlong(piece: CurvedPiece, begin: number, end: number): Edge[] {
  const edges: Edge[] = [];
  let part = begin;
  let step = end - begin;
  while (part < end) {
    const longest = longestFit(piece, part, end, step);
    edges.push(...longest.edges);
    step = longest.end - part;
    part = longest.end;
  }
  return edges;
}

interface Fit {
  readonly edges: readonly Edge[];
  readonly end: number;
}

/** The trials settle on a step, or come down to a short chord, long before. */
const TRIALS = 200;

/** The error of a biarc grows with the third power of its length, which tells the next step to try. */
function longestFit(piece: CurvedPiece, part: number, end: number, guess: number): Fit {
  const rest = end - part;
  let [low, high] = [0, Infinity];
  let best: Fit | undefined;
  let step = Math.min(rest, guess);
  for (let trial = 0; trial < TRIALS; trial += 1) {
    const to = step >= rest ? end : part + step;
    const { biarc, error } = measure(piece, part, to);
    const wanted = step * Math.cbrt((0.85 * AIM) / error);
    if (error <= AIM) {
      [low, best] = [step, { edges: biarc.edges, end: to }];
      if (to === end || error > AIM / 2 || high - low < 0.05 * low) break;
      step = Math.min(rest, high === Infinity ? Math.max(1.1 * step, Math.min(8 * step, wanted)) : (low + high) / 2);
    } else {
      const chord = straight(piece, part, to);
      if (!best && chord) return chord;
      high = step;
      if (best && high - low < 0.05 * low) break;
      step = low > 0 ? (low + high) / 2 : Math.max(0.1 * step, Math.min(0.8 * step, wanted));
    }
  }
  assert(best, 'no arcs keep near a curve');
  return evened(piece, part, end, best);
}

/** Two equal stretches rather than a long one and a splinter. */
function evened(piece: CurvedPiece, part: number, end: number, best: Fit): Fit {
  if (best.end === end || end - part > 2 * (best.end - part)) return best;
  const middle = (part + end) / 2;
  const { biarc, error } = measure(piece, part, middle);
  return error <= AIM ? { edges: biarc.edges, end: middle } : best;
}

/** A stretch that turns back along no axis lies in the box of its chord: a short chord is near enough. */
function straight(piece: CurvedPiece, part: number, to: number): Fit | undefined {
  const [from, end] = [pointAt(piece, part), pointAt(piece, to)];
  return distance(from, end) <= CHAIN_ERROR / 2 ? { edges: [line(from, end)], end: to } : undefined;
}

/** The biarc over a stretch and its greatest distance from the curve; endless where it bends back and the curve doesn't. */
function measure(piece: CurvedPiece, part: number, to: number): { biarc: Biarc; error: number } {
  const [start, end] = [stationAt(piece, part, 1), stationAt(piece, to, -1)];
  const biarc = biarcBetween(start, end);
  if (!keepsQuarter(start, end, biarc.joint.heading)) return { biarc, error: Infinity };
  let error = 0;
  for (let index = 1; index < MEASURED; index += 1) {
    const off = distanceFrom(biarc, pointAt(piece, part + (index / MEASURED) * (to - part)));
    error = Math.max(error, off);
  }
  return { biarc, error: Number.isFinite(error) ? error : Infinity };
}

/** True where the joint's direction leads no further back along either axis than the ends' directions do. */
function keepsQuarter(start: Station, end: Station, joint: Point): boolean {
  return (['x', 'y'] as const).every((axis) => {
    const way = Math.sign(end.at[axis] - start.at[axis]);
    const back = Math.min(0, way * start.heading[axis], way * end.heading[axis]);
    return way * joint[axis] >= back - 1e-12;
  });
}

/** `side` 1: as the curve leaves the point; -1: as it comes there. They differ at a cusp. */
function stationAt(piece: CurvedPiece, part: number, side: 1 | -1): Station {
  const at = pointAt(piece, part);
  return { at, heading: piece.kind === 'cubic' ? cubicHeading(piece, part, side) : ellipseHeading(piece, part) };
}

function ellipseHeading(piece: EllipsePiece, part: number): Point {
  const ahead = { ...piece, centre: { x: 0, y: 0 } };
  const { x, y } = onEllipse(ahead, piece.start + part * piece.sweep + Math.PI / 2);
  const sign = Math.sign(piece.sweep);
  return unit({ x: sign * x, y: sign * y });
}

/** Slower than this part of its fastest, a curve counts as standing still. */
const STILL = 1e-6;

/** By the first derivative that isn't nothing. */
function cubicHeading({ from, one, two, to }: CubicPiece, part: number, side: 1 | -1): Point {
  const [a, b, c] = [step(from, one), step(one, two), step(two, to)];
  const fastest = Math.max(...[a, b, c].map(({ x, y }) => Math.hypot(x, y)));
  const rest = 1 - part;
  const first = sum([rest * rest, a], [2 * rest * part, b], [part * part, c]);
  if (Math.hypot(first.x, first.y) > STILL * fastest) return unit(first);
  const second = sum([side * rest, step(a, b)], [side * part, step(b, c)]);
  if (Math.hypot(second.x, second.y) > STILL * fastest) return unit(second);
  return unit(sum([1, a], [-2, b], [1, c]));
}

function step(from: Point, to: Point): Point {
  return { x: to.x - from.x, y: to.y - from.y };
}

function sum(...terms: readonly (readonly [number, Point])[]): Point {
  return terms.reduce((total, [by, { x, y }]) => ({ x: total.x + by * x, y: total.y + by * y }), { x: 0, y: 0 });
}
