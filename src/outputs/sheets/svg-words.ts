/** Where words go in a drawing at its true size, and how large: upright on the sheet wherever they can be read so. */
import { boxAt, grow, heightOf, widthOf, type Box, type Point } from '../../core/geometry/box';

/** Of the type size: width of a letter on the average in any plain type, and how far the middle of capitals lies over the line. */
export const LETTER = 0.62;
export const HALF_CAPITAL = 0.36;
const LINE = 1.3;
/** Type sizes, mm: the smallest, what is well read at the bench, and the largest. */
const SMALLEST = 4;
const READABLE = 6;
const LARGEST = 24;

export interface PlacedWords {
  readonly lines: readonly string[];
  /** mm. */
  readonly size: number;
  readonly middle: Point;
  /** Reading upward, where upright it would be too small. */
  readonly isUpward: boolean;
  /** What it takes, mm. */
  readonly box: Box;
}

/**
 * The first of several ways to tell it that can be read in one of the boxes, from the fullest on; the last at any size. What
 * reads upright and well in a box goes before what is larger reading upward: only an arrow tells where the top of a piece is.
 */
export function placeWords(boxes: readonly Box[], ways: readonly (readonly string[])[]): PlacedWords | undefined {
  for (const [index, lines] of ways.entries()) {
    const best = bestIn(boxes, lines);
    if (best && (best.size >= SMALLEST || index === ways.length - 1)) return best;
  }
  return undefined;
}

function bestIn(boxes: readonly Box[], lines: readonly string[]): PlacedWords | undefined {
  const ways = boxes.flatMap((box) => [false, true].map((isUpward) => ({ box, isUpward, size: sizeIn(box, lines, isUpward) }))); // prettier-ignore
  const worth = ({ size, isUpward }: (typeof ways)[number]) => (isUpward || size < READABLE ? size : size + LARGEST);
  const [best] = ways.toSorted((a, b) => worth(b) - worth(a));
  if (!best || best.size <= 0) return undefined;
  const { box, isUpward, size } = best;
  const middle = { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 };
  const [long, high] = [longest(lines) * LETTER * size, LINE * lines.length * size];
  const taken = isUpward ? { width: high, height: long } : { width: long, height: high };
  return { lines, size, middle, isUpward, box: boxAt({ x: middle.x - taken.width / 2, y: middle.y - taken.height / 2 }, taken) }; // prettier-ignore
}

function sizeIn(box: Box, lines: readonly string[], isUpward: boolean): number {
  const [along, across] = isUpward ? [heightOf(box), widthOf(box)] : [widthOf(box), heightOf(box)];
  return Math.min(LARGEST, (0.9 * along) / (longest(lines) * LETTER), (0.75 * across) / (LINE * lines.length));
}

/** Lines from the first down: how far below the middle each has its base line, of reading upright. */
export function baseLines({ lines, size }: PlacedWords): readonly number[] {
  return lines.map((_, index) => (index - (lines.length - 1) / 2) * LINE * size + HALF_CAPITAL * size);
}

function longest(lines: readonly string[]): number {
  return Math.max(...lines.map((line) => [...line].length));
}

/** What a drawing tells a window by: its letter, in the lower left corner. */
export interface PlacedLetter {
  readonly size: number;
  readonly box: Box;
}

export function placeLetter(window: Box, name: string): PlacedLetter {
  const size = Math.min(8, 0.16 * heightOf(window), (0.4 * widthOf(window)) / (name.length * LETTER));
  const corner = { x: window.left + size / 2, y: window.bottom + size / 2 };
  return { size, box: boxAt(corner, { width: name.length * LETTER * size, height: 2 * HALF_CAPITAL * size }) };
}

/**
 * Where a piece's words may go: within its one window or beside it; of several windows beside all of them, since words in one
 * would seem to tell of that.
 */
export function partsForWords(room: Box, windows: readonly { readonly box: Box; readonly letter: Box }[]): Box[] {
  const [first] = windows;
  if (!first) return [room];
  const edge = (side: 'left' | 'bottom', of: (...all: number[]) => number) =>
    of(...windows.map(({ box }) => box[side]));
  const far = (side: 'right' | 'top') => Math.max(...windows.map(({ box }) => box[side]));
  const [left, bottom, right, top] = [edge('left', Math.min), edge('bottom', Math.min), far('right'), far('top')];
  const beside = [
    { ...room, bottom: top },
    { ...room, top: bottom },
    { ...room, right: left },
    { ...room, left: right },
  ].filter((box) => box.right > box.left && box.top > box.bottom);
  if (windows.length > 1) return beside;
  const inside = { ...grow(first.box, -0.5), bottom: first.letter.top };
  return [inside, ...beside];
}
