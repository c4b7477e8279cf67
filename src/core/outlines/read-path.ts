/** Path data of SVG read into strokes of lines, cubic curves and arcs of ellipses. */
import svgpath from 'svgpath';
import type { Point } from '../geometry/box';
import { distance } from '../geometry/edge';
import { bad, good, type Result } from '../problem';
import { arcBetween } from './elliptic-arc';
import type { Piece, Stroke } from './piece';
import { refusal } from './refusal';

/** More commands than any outline that is cut by hand or machine has. */
export const MOST_COMMANDS = 5000;
/** Larger numbers are no place on any board, whatever the unit. */
const FARTHEST = 1e9;

type Command = readonly [string, ...number[]];

/** Every subpath that draws something. `what` names the path in a message. */
export function readPath(data: string, what = 'The path'): Result<readonly Stroke[]> {
  const read = svgpath(data);
  // Of data it can't read svgpath keeps the beginning, and says so only here.
  const { err } = read as unknown as { readonly err: string };
  if (err) return bad([refusal('outline-unreadable', `${what} can't be read${placeIn(err)}.`, PLAIN)]);
  const commands: Command[] = [];
  read
    .abs()
    .unshort()
    .iterate((segment) => void commands.push(segment as unknown as Command));
  if (commands.length > MOST_COMMANDS) {
    const found = `${what} has ${commands.length} commands; an outline may have ${MOST_COMMANDS}.`;
    return bad([refusal('outline-too-large', found, 'simplify it in the drawing program')]);
  }
  const strange = commands.find(([name, ...numbers]) => name === 'R' || numbers.some(isStrange));
  if (strange) {
    const found = `${what} has ${strange[0] === 'R' ? 'a command R' : 'a number that is no place on a board'}.`;
    return bad([refusal('outline-unreadable', found, PLAIN)]);
  }
  return good(strokesOf(commands));
}

const PLAIN = 'save it again as plain SVG from the drawing program';

function isStrange(value: number): boolean {
  return !(Math.abs(value) <= FARTHEST);
}

function placeIn(err: string): string {
  const place = /at pos (\d+)/.exec(err)?.[1];
  return place === undefined ? '' : ` at its character ${Number(place) + 1}`;
}

function strokesOf(commands: readonly Command[]): Stroke[] {
  const strokes: Stroke[] = [];
  let pieces: Piece[] = [];
  let begin: Point = { x: 0, y: 0 };
  let pen = begin;
  const lift = (closed: boolean) => {
    if (pieces.length > 0) strokes.push({ pieces, closed });
    pieces = [];
  };
  for (const [name, ...numbers] of commands) {
    if (name === 'M' || name === 'Z') {
      if (name === 'Z' && distance(pen, begin) > 0) pieces.push({ kind: 'line', from: pen, to: begin });
      lift(name === 'Z');
      if (name === 'M') begin = endOf(name, numbers, pen);
      pen = begin;
      continue;
    }
    const to = endOf(name, numbers, pen);
    const piece = pieceOf(name, numbers, pen, to);
    if (piece) pieces.push(piece);
    pen = to;
  }
  lift(false);
  return strokes;
}

function endOf(name: string, numbers: readonly number[], pen: Point): Point {
  if (name === 'H') return { x: numbers[0] ?? 0, y: pen.y };
  if (name === 'V') return { x: pen.x, y: numbers[0] ?? 0 };
  return { x: numbers.at(-2) ?? 0, y: numbers.at(-1) ?? 0 };
}

/** Undefined of what goes nowhere. */
function pieceOf(name: string, numbers: readonly number[], from: Point, to: Point): Piece | undefined {
  const [a = 0, b = 0, c = 0, d = 0, e = 0] = numbers;
  if (name === 'C') {
    const goes = [{ x: a, y: b }, { x: c, y: d }, to].some((point) => distance(from, point) > 0);
    return goes ? { kind: 'cubic', from, one: { x: a, y: b }, two: { x: c, y: d }, to } : undefined;
  }
  if (name === 'Q') return raised(from, { x: a, y: b }, to);
  if (distance(from, to) === 0) return undefined;
  if (name !== 'A') return { kind: 'line', from, to };
  return arcBetween(from, { radii: { x: a, y: b }, turnDegrees: c, large: d !== 0, growing: e !== 0, to });
}

/** A quadratic curve as the cubic that it is. */
function raised(from: Point, bend: Point, to: Point): Piece | undefined {
  if (distance(from, bend) === 0 && distance(from, to) === 0) return undefined;
  const third = (end: Point): Point => ({ x: (end.x + 2 * bend.x) / 3, y: (end.y + 2 * bend.y) / 3 });
  return { kind: 'cubic', from, one: third(from), two: third(to), to };
}
