/** An outline imported from the text of an SVG file. */
import { heightOf, widthOf, type Box, type Point, type Size } from '../geometry/box';
import { distance } from '../geometry/edge';
import { bad, good, type Problem, type Result } from '../problem';
import { manyOutlines, naturalSize, pathOutline } from './path-outline';
import { boundsOfPieces, mapPiece, type Piece } from './piece';
import { MOST_COMMANDS } from './read-path';
import { refusal } from './refusal';
import { notSvg, readDrawing, type Drawn } from './svg-drawing';
import { mmText } from './words';
import { writePath } from './write-path';

/** One closed outline, free of the file it came from. */
export interface ImportedOutline {
  /** Absolute path data, mm, y down, its upper left corner at the origin. */
  readonly path: string;
  /** Its exact width and height, mm. */
  readonly size: Size;
}

const MOST_CHARACTERS = 5_000_000;
/** Ends that come this near are one: drawing programs write three decimals. mm. */
const CLOSED = 0.001;
/** Smaller outlines are specks, larger ones have units that were misread, mm. */
const SMALLEST = 0.01;
const LARGEST = 10_000;

/**
 * Reads the one closed outline that an SVG file draws (SVG 1.1): a path, rect, circle, ellipse or polygon, under any
 * groups, transforms, nested views and absolute units; a px is 1/96 in. Definitions, titles and what isn't displayed are
 * passed over. Refused, with the line: text, pictures, programs, copies, what is cut off; an outline that is open, with
 * both ends, or that crosses itself, with the place; more than one; files that are no SVG or too large.
 */
export function readSvg(text: string): Result<ImportedOutline> {
  if (text.length > MOST_CHARACTERS) {
    const found = `The file has ${text.length} characters; a drawing of one outline has ${MOST_CHARACTERS} at most.`;
    return bad([refusal('outline-too-large', found, 'take everything else out of it')]);
  }
  if (text.trim() === '') return bad([notSvg('The file is empty.')]);
  const drawing = readDrawing(text.replace(/^\uFEFF/, ''));
  if (!drawing.ok) return drawing;
  const [only, ...others] = drawing.value;
  if (!only) return bad([refusal('outline-empty', 'The file draws no outline.', 'draw one closed outline')]);
  if (others.length > 0) return bad([manyOutlines(drawing.value.length)]);
  return imported(only);
}

function imported(drawn: Drawn): Result<ImportedOutline> {
  const box = boundsOfPieces(drawn.pieces);
  const [width, height] = [widthOf(box), heightOf(box)];
  const fault = faultOfSize(drawn, width, height) ?? faultOfEnds(drawn, box);
  if (fault) return bad([fault]);
  const placed = snapClosed(drawn.pieces).map((piece) => mapPiece(piece, [1, 0, 0, 1, -box.left, -box.bottom]));
  const path = writePath(placed, decimalsFor(Math.max(width, height)));
  const size = naturalSize(path);
  const outline = pathOutline(path, size);
  return outline.ok ? good({ path, size }) : outline;
}

/** So many that made a metre wide the outline is still good to a ten-thousandth of a millimetre. */
function decimalsFor(longest: number): number {
  return Math.min(10, Math.max(4, Math.ceil(7 - Math.log10(longest))));
}

function faultOfSize({ what, pieces }: Drawn, width: number, height: number): Problem | undefined {
  if (pieces.length > MOST_COMMANDS) {
    const found = `${what} has ${pieces.length} pieces; an outline may have ${MOST_COMMANDS}.`;
    return refusal('outline-too-large', found, 'simplify it in the drawing program');
  }
  const measures = `${what} is ${mmText(width)} mm wide and ${mmText(height)} mm high`;
  if (!(Math.max(width, height) <= LARGEST))
    return refusal('outline-too-large', `${measures}.`, 'give it a width and a height of 10 m at most');
  if (!(Math.min(width, height) >= SMALLEST))
    return refusal('outline-empty', `${measures}, which leaves no room inside.`, 'draw one closed outline');
  return undefined;
}

function faultOfEnds({ what, pieces, closed }: Drawn, box: Box): Problem | undefined {
  const [from, to] = [pieces[0]?.from, pieces.at(-1)?.to];
  if (!from || !to || closed || distance(from, to) <= CLOSED) return undefined;
  const place = ({ x, y }: Point) =>
    `${mmText(x - box.left)} mm from its left and ${mmText(box.top - y)} mm from its bottom`;
  const gap = `${mmText(distance(from, to))} mm apart`;
  const found = `${what} is open: it begins ${place(from)} and ends ${place(to)}, ${gap}.`;
  return refusal('outline-open', found, 'join its ends in the drawing program');
}

/** A last line that is only a rounding left out: the piece before it ends where the outline begins. */
function snapClosed(pieces: readonly Piece[]): readonly Piece[] {
  const last = pieces.at(-1);
  const isRounding = pieces.length > 2 && last?.kind === 'line' && distance(last.from, last.to) <= CLOSED;
  return isRounding ? pieces.slice(0, -1) : pieces;
}
