/** Words on a page that a line runs through, as an eye would see them: what is painted white over is not there. */
import type { Box, Point } from '../../src/core/geometry/box';
import type { Bezier, ReadPage, Stroke, Words } from './read-pdf';

/** Of the type size: Inter's capitals (1490 / 2048 in its OS/2 table), and a figure's width, about. */
const CAP_HEIGHT = 1490 / 2048;
const FIGURE = 0.5;
const MM_PER_POINT = 25.4 / 72;
/** What touches the edge of a letter does not run through it, mm. */
const TOUCH = 0.1;

/** The box of a text that stands upright, reads upward, or stands head down. */
export function boxOfWords({ at, last, size, turn }: Words): Box {
  const high = size * MM_PER_POINT * CAP_HEIGHT;
  const wide = size * MM_PER_POINT * FIGURE;
  const way = { 0: [1, 0], 90: [0, 1], 180: [-1, 0], 270: [0, -1] }[turn] as readonly [number, number] | undefined;
  if (!way) throw new Error(`words turned by ${turn}`);
  const [x, y] = way;
  const end = { x: last.x + x * wide, y: last.y + y * wide };
  const corners = [at, end, { x: at.x - y * high, y: at.y + x * high }, { x: end.x - y * high, y: end.y + x * high }];
  const [xs, ys] = [corners.map((corner) => corner.x), corners.map((corner) => corner.y)];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** A curve in short straight pieces. */
function inPieces({ points: [a, b, c, d], ...pen }: Bezier): Stroke[] {
  const at = (t: number): Point => {
    const along = (axis: 'x' | 'y') => (1 - t) ** 3 * a[axis] + 3 * (1 - t) ** 2 * t * b[axis] + 3 * (1 - t) * t ** 2 * c[axis] + t ** 3 * d[axis]; // prettier-ignore
    return { x: along('x'), y: along('y') };
  };
  return Array.from({ length: 8 }, (_, index) => ({ ...pen, from: at(index / 8), to: at((index + 1) / 8) }));
}

/** Words that a line runs through, and which line. */
export function crossedWords({ words, strokes, beziers, whites }: ReadPage): string[] {
  const lines = [...strokes, ...beziers.flatMap(inPieces)];
  return words.flatMap((word) => {
    const box = shrunk(boxOfWords(word));
    const covers = whites.filter((white) => white.order < word.order && holds(white.box, box));
    const over = Math.max(-1, ...covers.map(({ order }) => order));
    const through = lines.find((line) => line.order > over && runsThrough(line, box));
    return through ? [`“${word.text}” by a line of ${through.width.toFixed(2)} mm at ${where(through.from)} to ${where(through.to)}`] : []; // prettier-ignore
  });
}

/** Words that lie on one another. */
export function overlappingWords({ words }: ReadPage): string[] {
  const boxes = words.map((word) => ({ word, box: shrunk(boxOfWords(word)) }));
  return boxes.flatMap(({ word, box }, index) => {
    const other = boxes.slice(index + 1).find((one) => box.left < one.box.right && box.right > one.box.left && box.bottom < one.box.top && box.top > one.box.bottom); // prettier-ignore
    return other ? [`“${word.text}” and “${other.word.text}” at ${where(word.at)}`] : [];
  });
}

/** Those of the strokes that a white field hides, be it in part. */
export function hidden(strokes: readonly Stroke[], { whites }: Pick<ReadPage, 'whites'>): Stroke[] {
  return strokes.filter((stroke) => whites.some(({ box, order }) => order > stroke.order && runsThrough(stroke, box)));
}

function runsThrough({ from, to }: Pick<Stroke, 'from' | 'to'>, box: Box): boolean {
  let [enter, leave] = [0, 1];
  for (const [along, room] of [
    [from.x - to.x, from.x - box.left],
    [to.x - from.x, box.right - from.x],
    [from.y - to.y, from.y - box.bottom],
    [to.y - from.y, box.top - from.y],
  ] as const) {
    if (along === 0 && room <= 0) return false;
    if (along < 0) enter = Math.max(enter, room / along);
    if (along > 0) leave = Math.min(leave, room / along);
  }
  return enter < leave;
}

function shrunk({ left, right, bottom, top }: Box): Box {
  return { left: left + TOUCH, right: right - TOUCH, bottom: bottom + TOUCH, top: top - TOUCH };
}

function holds(outer: Box, inner: Box): boolean {
  return outer.left <= inner.left && outer.right >= inner.right && outer.bottom <= inner.bottom && outer.top >= inner.top; // prettier-ignore
}

function where({ x, y }: Point): string {
  return `${x.toFixed(1)}, ${y.toFixed(1)}`;
}
