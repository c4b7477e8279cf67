/** A small control for G-code: obeys the words of RS-274 that it knows, refuses all others, and tells what the tool cut. */
import type { Point } from '../../../src/core/geometry/box';
import type { Piece, ReadStroke } from './pieces';

export interface ReadProgram {
  readonly strokes: readonly ReadStroke[];
  readonly comments: readonly string[];
  /** Heights that the tool moved sideways at without cutting, and while cutting, mm. */
  readonly travelHeights: ReadonlySet<number>;
  readonly cutHeights: ReadonlySet<number>;
  /** By how much the knife turned in the board on the spot, and the largest jump between two blocks, degrees. */
  readonly turnsInBoard: readonly number[];
  readonly feed: number;
  /** After how many strokes it stops for a change of tool. */
  readonly stops: readonly number[];
  /** Where it stands at the end. */
  readonly end: Point;
}

const LINE = /^(?:\([\x20-\x27\x2a-\x7e]*\)|[GMFXYZIJABC]-?\d+(?:\.\d+)?(?: [GMFXYZIJABC]-?\d+(?:\.\d+)?)*)$/;
const SETTINGS = new Set(['G17', 'G20', 'G21', 'G40', 'G49', 'G80', 'G90', 'G94']);

export function readGcode(text: string): ReadProgram {
  const strokes: Piece[][] = [];
  const comments: string[] = [];
  const [travelHeights, cutHeights] = [new Set<number>(), new Set<number>()];
  const turnsInBoard: number[] = [];
  const stops: number[] = [];
  const seen = new Set<string>();
  let scale = NaN;
  let feed = NaN;
  let at = { x: 0, y: 0, z: Infinity, turn: 0 };
  let ended = false;
  for (const line of text.replace(/\n$/, '').split('\n')) {
    if (!LINE.test(line)) throw new Error(`not a line of G-code: ${line}`);
    if (line.length > 256) throw new Error('a line is longer than RS-274 allows');
    if (ended) throw new Error(`after the end: ${line}`);
    if (line.startsWith('(')) {
      comments.push(line.slice(1, -1));
      continue;
    }
    const words = line.split(' ');
    const value = (letter: string) => {
      const word = words.find((one) => one.startsWith(letter));
      return word === undefined ? undefined : Number(word.slice(1));
    };
    const length = (letter: string) => {
      const number = value(letter);
      return number === undefined ? undefined : number * scale;
    };
    if (words.every((word) => SETTINGS.has(word))) {
      words.forEach((word) => seen.add(word));
      scale = seen.has('G20') ? 25.4 : 1;
      continue;
    }
    if (words.length === 1 && words[0] === 'M0') {
      if (at.z <= 0) throw new Error('it stops with the tool in the board');
      stops.push(strokes.length);
      continue;
    }
    if (words.length === 1 && words[0] === 'M2') {
      ended = true;
      continue;
    }
    if (words.length === 1 && words[0]?.startsWith('F')) {
      feed = (value('F') ?? NaN) * scale;
      continue;
    }
    const [motion] = words;
    if (!['G0', 'G1', 'G2', 'G3'].includes(motion ?? '')) throw new Error(`unknown: ${line}`);
    const next = {
      x: length('X') ?? at.x,
      y: length('Y') ?? at.y,
      z: length('Z') ?? at.z,
      turn: value('A') ?? value('B') ?? value('C') ?? at.turn,
    };
    const moves = next.x !== at.x || next.y !== at.y;
    const falls = next.z < at.z && Number.isFinite(at.z);
    if (moves && next.z !== at.z) throw new Error(`up or down and sideways at once: ${line}`);
    if (falls) {
      if (motion !== 'G1') throw new Error(`into the board in a hurry: ${line}`);
      strokes.push([]);
    }
    // A pen draws at height 0.
    const down = next.z <= 0;
    if (down && !moves && !falls && next.turn !== at.turn) turnsInBoard.push(next.turn - at.turn);
    if (moves) {
      if (down !== (motion !== 'G0')) throw new Error(`the wrong kind of motion: ${line}`);
      (down ? cutHeights : travelHeights).add(Math.round(next.z * 1e4) / 1e4);
    }
    if (moves && down) {
      const piece = { from: { x: at.x, y: at.y }, to: { x: next.x, y: next.y } };
      const headings = [at.turn, next.turn] as const;
      const centre = { x: at.x + (length('I') ?? NaN), y: at.y + (length('J') ?? NaN) };
      strokes
        .at(-1)
        ?.push(
          motion === 'G1'
            ? { ...piece, headings }
            : { ...piece, headings, bend: { centre, sweep: sweepOf(piece, centre, motion === 'G3') } },
        );
    }
    at = next;
  }
  if (!ended) throw new Error('the program does not end');
  for (const wanted of ['G17', 'G40', 'G49', 'G80', 'G90', 'G94']) {
    if (!seen.has(wanted)) throw new Error(`${wanted} is missing`);
  }
  return { strokes, comments, travelHeights, cutHeights, turnsInBoard, feed, stops, end: { x: at.x, y: at.y } };
}

function sweepOf({ from, to }: Piece, centre: Point, anticlockwise: boolean): number {
  const [a, b] = [from, to].map(({ x, y }) => Math.atan2(y - centre.y, x - centre.x)) as [number, number];
  const radii = [from, to].map(({ x, y }) => Math.hypot(x - centre.x, y - centre.y)) as [number, number];
  // RS274/NGC (NIST IR 6556, 3.5.3.2): the two radii may differ by 0.002 mm, or 0.0002 in.
  if (Math.abs(radii[0] - radii[1]) > 0.002) throw new Error(`an arc whose radii are ${radii.join(' and ')}`);
  const turn = (b - a) % (2 * Math.PI);
  if (anticlockwise) return turn <= 0 ? turn + 2 * Math.PI : turn;
  return turn >= 0 ? turn - 2 * Math.PI : turn;
}
