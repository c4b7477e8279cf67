/** Basic shapes and paths of SVG (SVG 1.1, chapters 8 and 9) as strokes, in their own units. */
import type { Point, Size } from '../geometry/box';
import { bad, good, type Result } from '../problem';
import { arcBetween } from './elliptic-arc';
import type { EllipsePiece, Piece, Stroke } from './piece';
import { readPath } from './read-path';
import { refusal } from './refusal';
import { readNumbers, readPx } from './svg-numbers';

/** An element that draws a shape. */
export interface ShapeElement {
  readonly name: string;
  /** As a message calls it: `The <rect> on line 4`. */
  readonly what: string;
  readonly attribute: (name: string) => string | undefined;
  /** What percentages are parts of. */
  readonly viewport: Size | undefined;
}

/** Strokes that draw something; none of a shape that has no width or no height. */
type Drawer = (element: ShapeElement) => Result<readonly Stroke[]>;

const DRAWERS: Readonly<Record<string, Drawer>> = {
  path: ({ attribute, what }) => readPath(attribute('d')?.trim() === 'none' ? '' : (attribute('d') ?? ''), what),
  rect: withMeasures(['x', 'y', 'width', 'height'], (element, [x, y, width, height]) => {
    const radii = cornerRadii(element, width, height);
    if (!radii) return unclear(element, 'rx or ry');
    return good(width > 0 && height > 0 ? [closed(rectPieces({ x, y }, { width, height }, radii))] : []);
  }),
  circle: withMeasures(['cx', 'cy', 'r', 'r'], (_, [x, y, r]) => good(roundStrokes({ x, y }, { x: r, y: r }))),
  ellipse: withMeasures(['cx', 'cy'], (element, [x, y]) => {
    const [across, down] = [radius(element, 'rx'), radius(element, 'ry')];
    if (Number.isNaN(across) || Number.isNaN(down)) return unclear(element, 'rx or ry');
    return good(roundStrokes({ x, y }, { x: across ?? down ?? 0, y: down ?? across ?? 0 }));
  }),
  line: withMeasures(['x1', 'y1', 'x2', 'y2'], (_, [x1, y1, x2, y2]) =>
    good(chain([{ x: x1, y: y1 }, { x: x2, y: y2 }], false)),
  ),
  polyline: (element) => points(element, false),
  polygon: (element) => points(element, true),
}; // prettier-ignore

export function drawsShape(name: string): boolean {
  return Object.hasOwn(DRAWERS, name);
}

export function strokesOfShape(element: ShapeElement): Result<readonly Stroke[]> {
  return DRAWERS[element.name]?.(element) ?? good([]);
}

type Four = readonly [number, number, number, number];

function withMeasures(
  names: readonly string[],
  draw: (element: ShapeElement, measures: Four) => Result<readonly Stroke[]>,
): Drawer {
  return (element) => {
    const measures = names.map((name) => measureOf(element, name) ?? 0);
    const wrong = names.find((_, index) => Number.isNaN(measures[index]));
    if (wrong !== undefined) return unclear(element, wrong);
    const [a = 0, b = 0, c = 0, d = 0] = measures;
    return draw(element, [a, b, c, d]);
  };
}

/** Undefined where it is left out, not a number where it can't be told. */
function measureOf({ attribute, viewport }: ShapeElement, name: string): number | undefined {
  const text = attribute(name);
  if (text === undefined) return undefined;
  return readPx(text, viewport && wholeOf(name, viewport)) ?? NaN;
}

/** SVG 1.1, 7.10: of the width, of the height, or of the diagonal over the square root of 2. */
function wholeOf(name: string, { width, height }: Size): number {
  if (/^(x[12]?|cx|rx|width)$/.test(name)) return width;
  if (/^(y[12]?|cy|ry|height)$/.test(name)) return height;
  return Math.hypot(width, height) / Math.SQRT2;
}

/** A radius left out, automatic or below nothing follows the other one. */
function radius(element: ShapeElement, name: string): number | undefined {
  if (element.attribute(name)?.trim() === 'auto') return undefined;
  const value = measureOf(element, name);
  return value !== undefined && value < 0 ? undefined : value;
}

function unclear(element: ShapeElement, name: string): Result<readonly Stroke[]> {
  const found = `${element.what} has a value of ${name} that can't be told.`;
  return bad([refusal('outline-unreadable', found, 'write it as a number, or with px, in, mm, cm, pt, pc or Q')]);
}

function closed(pieces: readonly Piece[]): Stroke {
  return { pieces, closed: true };
}

function cornerRadii(element: ShapeElement, width: number, height: number): Point | undefined {
  const [across, down] = [radius(element, 'rx'), radius(element, 'ry')];
  const [x, y] = [across ?? down ?? 0, down ?? across ?? 0];
  if (Number.isNaN(x) || Number.isNaN(y)) return undefined;
  return { x: Math.min(x, width / 2), y: Math.min(y, height / 2) };
}

/** From the left of the upper side clockwise, as SVG 1.1, 9.2 has it. */
function rectPieces({ x, y }: Point, { width, height }: Size, radii: Point): Piece[] {
  const [right, bottom] = [x + width, y + height];
  const { x: a, y: b } = radii.x > 0 && radii.y > 0 ? radii : { x: 0, y: 0 };
  const stops: Point[] = [
    { x: x + a, y }, { x: right - a, y }, { x: right, y: y + b }, { x: right, y: bottom - b },
    { x: right - a, y: bottom }, { x: x + a, y: bottom }, { x, y: bottom - b }, { x, y: y + b },
  ]; // prettier-ignore
  return stops.flatMap((from, index): Piece[] => {
    const to = stops[(index + 1) % 8] ?? from;
    if (from.x === to.x && from.y === to.y) return [];
    if (index % 2 === 0) return [{ kind: 'line', from, to }];
    return [arcBetween(from, { radii: { x: a, y: b }, turnDegrees: 0, large: false, growing: true, to })];
  });
}

function roundStrokes(centre: Point, radii: Point): Stroke[] {
  if (!(radii.x > 0 && radii.y > 0)) return [];
  const corners = [
    { x: centre.x + radii.x, y: centre.y }, { x: centre.x, y: centre.y + radii.y },
    { x: centre.x - radii.x, y: centre.y }, { x: centre.x, y: centre.y - radii.y },
  ]; // prettier-ignore
  const quarter = Math.PI / 2;
  const shared = { kind: 'ellipse', centre, across: { x: radii.x, y: 0 }, along: { x: 0, y: radii.y } } as const;
  const pieces = corners.map((from, index): EllipsePiece => {
    return { ...shared, from, to: corners[(index + 1) % 4] ?? from, start: index * quarter, sweep: quarter };
  });
  return [closed(pieces)];
}

function points(element: ShapeElement, isClosed: boolean): Result<readonly Stroke[]> {
  const numbers = readNumbers(element.attribute('points') ?? '');
  if (!numbers || numbers.length % 2 !== 0) {
    const found = `${element.what} has points that can't be told.`;
    return bad([refusal('outline-unreadable', found, 'give every point two numbers, x and y')]);
  }
  const found = numbers.flatMap((x, index) => (index % 2 === 0 ? [{ x, y: numbers[index + 1] ?? 0 }] : []));
  return good(chain(found, isClosed));
}

function chain(stops: readonly Point[], isClosed: boolean): Stroke[] {
  const ends = isClosed ? [...stops, ...stops.slice(0, 1)] : stops;
  const pieces = ends.slice(1).flatMap((to, index): Piece[] => {
    const from = ends[index] ?? to;
    return from.x === to.x && from.y === to.y ? [] : [{ kind: 'line', from, to }];
  });
  return pieces.length > 0 ? [{ pieces, closed: isClosed }] : [];
}
