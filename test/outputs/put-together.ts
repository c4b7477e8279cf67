/** Puts the tiles of a template together as a person would: by the registration marks and the numbers beside them. */
import type { Point } from '../../src/core/geometry/box';
import type { Bezier, ReadPage, Stroke, Words } from './read-pdf';

/** Cut lines are drawn with the heaviest pen of a tile, mm. */
const CUT_PEN = 0.4;
/** Arms of a registration cross from end to end, mm. */
const CROSS = 8;
const NEAR = 0.005;

export interface ReadTile {
  readonly layer: number;
  readonly page: ReadPage;
  /** Cut lines in the blank's coordinates. */
  readonly cuts: readonly (readonly [Point, Point])[];
  /** Curved cut lines there too. */
  readonly curves: readonly Bezier['points'][];
  /** Size of the page's own part, from cross to cross. */
  readonly own: { readonly width: number; readonly height: number };
  /** Where its lower left cross lies on the blank, from the numbers beside it. */
  readonly corner: Point;
  /** From the page, upright, to the blank. */
  readonly move: (point: Point) => Point;
}

/** The tiles among a document's pages. */
export function readTiles(pages: readonly ReadPage[], mmPerUnit: number): ReadTile[] {
  return pages
    .filter((page) => page.words.some(({ text }) => /^(origin {2})?x \S.* {2}y /.test(text)))
    .map((page) => readTile(page, mmPerUnit));
}

function readTile(turnedPage: ReadPage, mmPerUnit: number): ReadTile {
  const page = upright(turnedPage);
  const crosses = crossesOf(page.strokes);
  const left = Math.min(...crosses.map(({ x }) => x));
  const bottom = Math.min(...crosses.map(({ y }) => y));
  const cross = { x: left, y: bottom };
  const corner = numbersBeside(cross, page, mmPerUnit);
  const move = (point: Point): Point => ({ x: point.x - cross.x + corner.x, y: point.y - cross.y + corner.y });
  return {
    layer: layerOf(page),
    page,
    cuts: page.strokes.filter(isCut).map(({ from, to }) => [move(from), move(to)] as const),
    curves: page.beziers.filter(isCut).map(({ points }) => flipAll(points, move)),
    own: {
      width: Math.max(...crosses.map(({ x }) => x)) - left,
      height: Math.max(...crosses.map(({ y }) => y)) - bottom,
    },
    corner,
    move,
  };
}

/** A page whose words stand head down is turned by half a turn before it is joined to the others. */
function upright(page: ReadPage): ReadPage {
  const title = page.words.find(({ text }) => ['BACK', 'FRONT', 'WALL'].includes(text));
  if (title?.turn !== 180) return page;
  const flip = ({ x, y }: Point): Point => ({ x: page.width - x, y: page.height - y });
  return {
    ...page,
    strokes: page.strokes.map((stroke) => ({ ...stroke, from: flip(stroke.from), to: flip(stroke.to) })),
    curves: page.curves.map(flip),
    beziers: page.beziers.map((bezier) => ({ ...bezier, points: flipAll(bezier.points, flip) })),
    words: page.words.map((word) => ({
      ...word,
      at: flip(word.at),
      last: flip(word.last),
      turn: (word.turn + 180) % 360,
    })),
  };
}

function flipAll(points: Bezier['points'], flip: (point: Point) => Point): Bezier['points'] {
  return [flip(points[0]), flip(points[1]), flip(points[2]), flip(points[3])];
}

export function isCut(stroke: Pick<Stroke, 'width' | 'dashed'>): boolean {
  return Math.abs(stroke.width - CUT_PEN) < 0.01 && !stroke.dashed;
}

/** Middles of pairs of strokes that cross in their middles and are as long as a registration cross. */
function crossesOf(strokes: readonly Stroke[]): Point[] {
  const arms = strokes.filter(({ from, to }) => Math.abs(Math.hypot(to.x - from.x, to.y - from.y) - CROSS) < NEAR);
  const lying = arms.filter(({ from, to }) => Math.abs(from.y - to.y) < NEAR).map(middle);
  const standing = arms.filter(({ from, to }) => Math.abs(from.x - to.x) < NEAR).map(middle);
  return lying.filter((at) => standing.some((other) => Math.hypot(at.x - other.x, at.y - other.y) < NEAR));
}

function middle({ from, to }: Stroke): Point {
  return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
}

/** The numbers printed nearest to a cross. */
function numbersBeside(cross: Point, page: ReadPage, mmPerUnit: number): Point {
  const named = page.words
    .map((word) => ({ word, away: Math.min(distance(word.at, cross), distance(word.last, cross)) }))
    .filter(({ word }) => /(^| )x .* y /.test(word.text))
    .sort((a, b) => a.away - b.away)[0]?.word;
  const found = /x (.+?) {2}y (.+)$/.exec(named?.text ?? '');
  if (!found) throw new Error('no numbers beside the registration mark');
  return { x: number(found[1] ?? '') * mmPerUnit, y: number(found[2] ?? '') * mmPerUnit };
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** Reads `5 1⁄2` or `12.5`, on its own account. */
export function number(text: string): number {
  return text
    .trim()
    .split(' ')
    .map((part) => {
      const [over = '0', under] = part.split('\u2044');
      return under === undefined ? Number(over) : Number(over) / Number(under);
    })
    .reduce((sum, part) => sum + part, 0);
}

function layerOf(page: ReadPage): number {
  const words = page.words.find((word: Words) => /^Layer \d+ of \d+/.test(word.text));
  return Number(/^Layer (\d+)/.exec(words?.text ?? '')?.[1]);
}

/**
 * How far the pieces of cut lines are from drawing exactly the line between two points: the largest distance of
 * an end, a gap, or a piece off the line, mm. Infinity when nothing of it is drawn.
 */
export function error(line: readonly [Point, Point], pieces: readonly (readonly [Point, Point])[]): number {
  const [from, to] = line;
  const length = distance(from, to);
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const at = (point: Point) => (point.x - from.x) * along.x + (point.y - from.y) * along.y;
  const off = (point: Point) => Math.abs((point.x - from.x) * along.y - (point.y - from.y) * along.x);
  const on = pieces
    .filter((piece) => piece.every((point) => off(point) < 0.1))
    .map((piece) => ({
      low: Math.min(...piece.map(at)),
      high: Math.max(...piece.map(at)),
      off: Math.max(...piece.map(off)),
    }))
    .filter(({ low, high }) => high > 0.1 && low < length - 0.1)
    .sort((a, b) => a.low - b.low);
  if (on.length === 0) return Infinity;
  let worst = Math.abs(on[0]?.low ?? 0);
  let reach = 0;
  for (const piece of on) {
    worst = Math.max(worst, piece.off, piece.low - reach);
    reach = Math.max(reach, piece.high);
  }
  return Math.max(worst, Math.abs(reach - length));
}
