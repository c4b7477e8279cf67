/** Path data as one closed line, with its true curves, or what keeps it from being one. */
import svgpath from 'svgpath';
import { heightOf, widthOf, type Box, type Point } from '../geometry/box';
import { distance } from '../geometry/edge';
import { arcSegment } from './arc-segment';
import { boundsOfSegments, type Segment } from './segment';

export interface Contour {
  /** Each begins where the last one ended; the last ends where the first began. In the path's own numbers, y down. */
  readonly segments: readonly Segment[];
  readonly bounds: Box;
}

export type ContourFault =
  /** `place` counts characters from 1. */
  | { readonly kind: 'unreadable'; readonly place: number; readonly near: string }
  | { readonly kind: 'too-large'; readonly what: string; readonly count: number; readonly most: number }
  | { readonly kind: 'far-away'; readonly most: number }
  | { readonly kind: 'empty' }
  | { readonly kind: 'many'; readonly count: number }
  | { readonly kind: 'open'; readonly start: Point; readonly end: Point; readonly gap: number; readonly size: number };

export const MOST_CHARACTERS = 100_000;
/** Lines and curves of one outline. */
export const MOST_SEGMENTS = 2000;

/** No number of a path is larger, and no outline smaller than one over it: beyond them doubles lose count. */
const LARGEST = 1e7;

/** An end this near to the start, over the larger side of the outline, is closed by a line. */
const CLOSED = 1e-4;
/** What is no longer than this, over the larger side, is left out. */
const SPECK = 1e-6;

export function contourOf(path: string): Contour | ContourFault {
  if (path.length > MOST_CHARACTERS)
    return { kind: 'too-large', what: 'characters', count: path.length, most: MOST_CHARACTERS };
  const read = readPath(path);
  if (!Array.isArray(read)) return read;
  const drawn = read.filter(({ segments }) => segments.length > 0);
  const [only] = drawn;
  if (!only) return { kind: 'empty' };
  if (drawn.length > 1) return { kind: 'many', count: drawn.length };
  if (only.segments.length > MOST_SEGMENTS)
    return { kind: 'too-large', what: 'lines and curves', count: only.segments.length, most: MOST_SEGMENTS };
  return closedUp(only);
}

interface Stroke {
  readonly segments: readonly Segment[];
  readonly isClosed: boolean;
}

/** Every stroke that begins with a move; pieces without length are left out. */
function readPath(path: string): Stroke[] | ContourFault {
  const parsed = svgpath(path) as ReturnType<typeof svgpath> & { readonly err: string };
  const fault = parsed.err === '' ? undefined : unreadable(path, parsed.err);
  if (fault) return fault;
  const strokes: { segments: Segment[]; isClosed: boolean }[] = [];
  let strange: ContourFault | undefined;
  let start: Point = { x: 0, y: 0 };
  const draw = (segment: Segment) => {
    if (!pointsOf(segment).every(({ x, y }) => Math.abs(x) <= LARGEST && Math.abs(y) <= LARGEST))
      strange ??= { kind: 'far-away', most: LARGEST };
    const last = strokes.at(-1);
    if (last && !last.isClosed) last.segments.push(segment);
    else strokes.push({ segments: [segment], isClosed: false });
  };
  parsed
    .abs()
    .unshort()
    .iterate((command, _, x, y) => {
      const from = { x, y };
      const [letter] = command;
      if (letter === 'M') {
        start = { x: command[1], y: command[2] };
        strokes.push({ segments: [], isClosed: false });
      } else if (letter === 'Z') {
        if (from.x !== start.x || from.y !== start.y) draw({ kind: 'line', from, to: start });
        const last = strokes.at(-1);
        if (last) last.isClosed = true;
      } else {
        const segment = segmentOf(command, from);
        if (segment === undefined) strange ??= unreadable(path, '');
        else if (segment !== 'nothing') draw(segment);
      }
    });
  return strange ?? strokes;
}

function pointsOf(segment: Segment): readonly Point[] {
  if (segment.kind === 'cubic') return segment.points;
  if (segment.kind === 'line') return [segment.to];
  return [segment.to, segment.centre, segment.one, segment.other];
}

type Command = Parameters<Parameters<ReturnType<typeof svgpath>['iterate']>[0]>[0];

/** Undefined of a letter that SVG does not have. */
function segmentOf(command: Command, from: Point): Segment | 'nothing' | undefined {
  switch (command[0]) {
    case 'L':
      return lineTo(from, { x: command[1], y: command[2] });
    case 'H':
      return lineTo(from, { x: command[1], y: from.y });
    case 'V':
      return lineTo(from, { x: from.x, y: command[1] });
    case 'C': {
      const [, x1, y1, x2, y2, x, y] = command;
      return cubicTo(from, { x: x1, y: y1 }, { x: x2, y: y2 }, { x, y });
    }
    case 'Q': {
      // A quadratic curve is the cubic one with handles two thirds as long.
      const [, x1, y1, x, y] = command;
      const handle = (end: Point) => ({ x: end.x + (2 / 3) * (x1 - end.x), y: end.y + (2 / 3) * (y1 - end.y) });
      return cubicTo(from, handle(from), handle({ x, y }), { x, y });
    }
    case 'A': {
      const [, across, up, turnDegrees, large, growing, x, y] = command;
      if (x === from.x && y === from.y) return 'nothing';
      const shape = { radii: { x: across, y: up }, turnDegrees, large: large !== 0, growing: growing !== 0 };
      return arcSegment({ from, to: { x, y }, ...shape });
    }
    default:
      return undefined;
  }
}

function lineTo(from: Point, to: Point): Segment | 'nothing' {
  return from.x === to.x && from.y === to.y ? 'nothing' : { kind: 'line', from, to };
}

function cubicTo(from: Point, second: Point, third: Point, to: Point): Segment | 'nothing' {
  const points = [from, second, third, to] as const;
  const isPoint = points.every(({ x, y }) => x === from.x && y === from.y);
  return isPoint ? 'nothing' : { kind: 'cubic', from, to, points };
}

function unreadable(path: string, fault: string): ContourFault {
  const place = Number(/at pos (\d+)/.exec(fault)?.[1] ?? 0);
  return { kind: 'unreadable', place: place + 1, near: path.slice(place, place + 20) };
}

function closedUp({ segments, isClosed }: Stroke): Contour | ContourFault {
  const bounds = boundsOfSegments(segments);
  const [first, last] = [segments[0], segments.at(-1)];
  const size = Math.max(widthOf(bounds), heightOf(bounds));
  const least = Math.max(size * SPECK, 1 / LARGEST);
  if (!first || !last || !(Math.min(widthOf(bounds), heightOf(bounds)) > least)) return { kind: 'empty' };
  const gap = distance(last.to, first.from);
  if (!isClosed && gap > size * CLOSED) return { kind: 'open', start: first.from, end: last.to, gap, size };
  const whole: readonly Segment[] =
    gap === 0 ? segments : [...segments, { kind: 'line', from: last.to, to: first.from }];
  const kept = withoutSpecks(whole, size * SPECK);
  return { segments: kept, bounds: boundsOfSegments(kept) };
}

/** Leaves out pieces that are next to nothing, and closes what gapes where they were. */
function withoutSpecks(segments: readonly Segment[], least: number): readonly Segment[] {
  const isSpeck = (segment: Segment) => {
    const { left, right, bottom, top } = boundsOfSegments([segment]);
    return Math.max(right - left, top - bottom) <= least;
  };
  const kept = segments.filter((segment) => !isSpeck(segment));
  return kept.flatMap((segment, index) => {
    const [before, after] = [kept.at(index - 1) ?? segment, kept[(index + 1) % kept.length] ?? segment];
    // An arc keeps its ends, which its middle goes with; the others follow.
    const from = segment.kind === 'ellipse' ? segment.from : before.to;
    const to = segment.kind !== 'ellipse' && after.kind === 'ellipse' ? after.from : segment.to;
    const gapes = segment.kind === 'ellipse' && before.kind === 'ellipse' && !isSame(before.to, from);
    const bridge: Segment[] = gapes ? [{ kind: 'line', from: before.to, to: from }] : [];
    return [...bridge, withEnds(segment, from, to)];
  });
}

function withEnds(segment: Segment, from: Point, to: Point): Segment {
  if (segment.kind !== 'cubic') return { ...segment, from, to };
  const [, second, third] = segment.points;
  return { ...segment, from, to, points: [from, second, third, to] };
}

function isSame(a: Point, b: Point): boolean {
  return a.x === b.x && a.y === b.y;
}
