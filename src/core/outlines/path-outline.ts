/** The outline that path data draws, made as wide and as high as asked. */
import { heightOf, widthOf, type Point, type Size } from '../geometry/box';
import { distance, line, reversed, type Edge } from '../geometry/edge';
import { areaOf, type Outline } from '../geometry/outline';
import { crossingOf } from '../geometry/region';
import { bad, good, type Problem, type Result } from '../problem';
import { edgesOf } from './edges-of';
import { joinArcs } from './join-arcs';
import { boundsOfPieces, mapPiece, type Piece } from './piece';
import { readPath } from './read-path';
import { refusal } from './refusal';
import { remembering } from './remember';
import { mmText } from './words';

/** As many as a job has windows of different shapes; a drag asks for the same again and again. */
const REMEMBERED = 32;
/** Shorter pieces are none, mm. */
const NOTHING = 1e-7;
/** A line this near to where its neighbours lead is part of theirs, mm. */
const STRAIGHT = 1e-6;
/** Ends this near, in parts of the width or height, are one point, written rounded. */
const CLOSED = 1e-6;

/**
 * The outline of the one closed subpath of path data (SVG 1.1, chapter 8; y down), anticlockwise with y up, in a box of
 * the size with its lower left corner at the origin: lines, circles and ellipses that lie upright as such, other curves
 * as smooth chains of arcs within 0.001 mm. Refused with what is wrong: data that can't be read, nothing drawn, more
 * than one subpath, one that is open, or that crosses or touches itself.
 */
export function pathOutline(path: string, size: Size): Result<Outline> {
  return sizedOutline(`${size.width} ${size.height} ${path}`, () => makeOutline(path, size));
}

/** Exact width and height in the path's own units; both 0 of a path that draws no outline. */
export function naturalSize(path: string): Size {
  const loop = readLoop(path);
  return loop.ok ? loop.value.size : { width: 0, height: 0 };
}

interface Loop {
  readonly pieces: readonly Piece[];
  readonly left: number;
  /** The greatest y: y goes down. */
  readonly lowest: number;
  readonly size: Size;
}

const sizedOutline = remembering<Result<Outline>>(REMEMBERED);
const loops = remembering<Result<Loop>>(REMEMBERED);
const crossings = remembering<Point | undefined>(REMEMBERED);

function readLoop(path: string): Result<Loop> {
  return loops(path, () => makeLoop(path));
}

function makeLoop(path: string): Result<Loop> {
  const strokes = readPath(path);
  if (!strokes.ok) return strokes;
  const [stroke, ...others] = strokes.value;
  const box = boundsOfPieces(stroke?.pieces ?? []);
  const size = { width: widthOf(box), height: heightOf(box) };
  if (!stroke || size.width === 0 || size.height === 0)
    return bad([refusal('outline-empty', 'The path draws nothing that has a width and a height.', DRAW)]);
  if (others.length > 0) return bad([manyOutlines(strokes.value.length)]);
  const [from, to] = [stroke.pieces.at(-1)?.to, stroke.pieces[0]?.from];
  const gap = from && to ? distance(from, to) : 0;
  if (from && to && !stroke.closed && gap > CLOSED * Math.max(size.width, size.height)) {
    const found = `The path is open: it begins at ${place(to)} and ends at ${place(from)}.`;
    return bad([refusal('outline-open', found, 'end it where it begins, or close it with Z')]);
  }
  const closing: Piece[] = from && to && gap > 0 ? [{ kind: 'line', from, to }] : [];
  return good({ pieces: joinArcs([...stroke.pieces, ...closing]), left: box.left, lowest: box.top, size });
}

const DRAW = 'draw one closed outline';

/** More subpaths, or more shapes, than the one that is wanted. */
export function manyOutlines(count: number): Problem {
  const found = `There are ${count} outlines where one is wanted; holes count too.`;
  return refusal('outline-many', found, 'keep one of them, or unite them to one in the drawing program');
}

function place({ x, y }: { readonly x: number; readonly y: number }): string {
  return `${mmText(x)}, ${mmText(y)}`;
}

function makeOutline(path: string, size: Size): Result<Outline> {
  const loop = readLoop(path);
  if (!loop.ok) return loop;
  if (!(size.width > 0 && size.height > 0))
    return bad([refusal('outline-empty', 'The outline is given no width or no height.', 'give it a size')]);
  const { pieces, left, lowest, size: own } = loop.value;
  const [across, up] = [size.width / own.width, size.height / own.height];
  const placed = pieces.map((piece) => mapPiece(piece, [across, 0, 0, -up, -left * across, lowest * up]));
  const drawn = mergeLines(withoutNothings(placed).flatMap(edgesOf));
  const crossing = crossings(path, () => partsOf(crossingOf(drawn), size));
  if (crossing) return bad([crosses(crossing, size)]);
  const area = areaOf(drawn);
  if (!(Math.abs(area) > 0)) return bad([refusal('outline-empty', 'The outline has nothing inside.', DRAW)]);
  return good(area > 0 ? drawn : drawn.toReversed().map(reversed));
}

/** A place in parts of the width and height: no size makes an outline cross itself, or keeps it from that. */
function partsOf(point: Point | undefined, { width, height }: Size): Point | undefined {
  return point && { x: point.x / width, y: point.y / height };
}

function crosses(parts: Point, { width, height }: Size): Problem {
  const [x, y] = [mmText(parts.x * width), mmText(parts.y * height)];
  const found = `The outline crosses or touches itself ${x} mm from its left and ${y} mm from its bottom.`;
  return refusal('outline-crosses-itself', found, 'draw it so that it goes round once and meets itself nowhere');
}

/** What is shorter than nothing left out, its neighbours made to meet. */
function withoutNothings(pieces: readonly Piece[]): Piece[] {
  const kept = pieces.filter((piece) => {
    const box = boundsOfPieces([piece]);
    return widthOf(box) > NOTHING || heightOf(box) > NOTHING;
  });
  return kept.map((piece, index) => ({ ...piece, from: kept.at(index - 1)?.to ?? piece.from }));
}

/** Lines that go straight on made one, over the first point too. */
function mergeLines(edges: readonly Edge[]): Edge[] {
  const merged: Edge[] = [];
  for (const edge of edges) {
    const last = merged.at(-1);
    if (last && goesOn(last, edge)) merged[merged.length - 1] = line(last.from, edge.to);
    else merged.push(edge);
  }
  const [first, last] = [merged[0], merged.at(-1)];
  if (merged.length > 2 && first && last && goesOn(last, first))
    return [line(last.from, first.to), ...merged.slice(1, -1)];
  return merged;
}

function goesOn(a: Edge, b: Edge): boolean {
  if (a.kind !== 'line' || b.kind !== 'line') return false;
  const [x, y] = [b.to.x - a.from.x, b.to.y - a.from.y];
  const [u, v] = [a.to.x - a.from.x, a.to.y - a.from.y];
  const length = Math.hypot(x, y);
  return u * (b.to.x - b.from.x) + v * (b.to.y - b.from.y) > 0 && Math.abs(x * v - y * u) <= STRAIGHT * length;
}
