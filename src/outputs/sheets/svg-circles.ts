/** The numbers of steps in a drawing at its true size: in circles on their cuts, clear of words and of one another. */
import { boxAt, type Box, type Point, type Size } from '../../core/geometry/box';
import type { CutLine } from '../../core/sheets/cut-lines';
import type { Room } from '../paper/room';
import { PLACES } from './cut-numbers';
import { HALF_CAPITAL, LETTER } from './svg-words';

export interface StepCircle {
  readonly centre: Point;
  /** mm. */
  readonly radius: number;
  /** Of its type, mm. */
  readonly size: number;
}

/** Of the type, mm, and of the cut that it stands on at the most. */
const SIZES = [10, 8, 6, 4.5, 3.5, 2.5];
const OF_CUT = 0.4;

/**
 * One for each step, the shortest cuts first, since they have the least choice; then the others of a step, where there is room.
 *
 * @param lines the cuts of each step.
 * @param room where circles may lie; what is placed is taken there.
 * @returns for each step.
 */
export function placeCircles(lines: readonly (readonly CutLine[])[], room: Room, sheet: Size): StepCircle[][] {
  const circles = lines.map((): StepCircle[] => []);
  const all = lines.flatMap((cuts, step) => cuts.map((line) => ({ step, line }))).sort((a, b) => long(a.line) - long(b.line)); // prettier-ignore
  const left = all.filter(({ step, line }) => {
    if (circles[step]!.length > 0) return true;
    const circle = circleOn(line, step + 1, room);
    if (circle) circles[step]!.push(circle);
    return !circle;
  });
  for (const { step, line } of left) {
    const circle = circleOn(line, step + 1, room);
    if (circle) circles[step]!.push(circle);
  }
  for (const { step, line } of left) {
    // No step goes without its number, though it has to lie on something.
    if (circles[step]!.length === 0) circles[step]!.push(within(sheet, circleAt(middleOf(line, 0.5), step + 1, SIZES.at(-1) ?? 0))); // prettier-ignore
  }
  return circles;
}

function circleOn(line: CutLine, number: number, room: Room): StepCircle | undefined {
  for (const size of SIZES) {
    if (size > Math.max(OF_CUT * long(line), SIZES.at(-1) ?? 0)) continue;
    const places = PLACES.map((part) => circleAt(middleOf(line, part), number, size));
    const found = room.takeFirst(places.map((circle) => ({ circle, box: boxOf(circle) })));
    if (found) return found.circle;
  }
  return undefined;
}

function circleAt(centre: Point, number: number, size: number): StepCircle {
  const radius = Math.hypot((String(number).length * LETTER * size) / 2, HALF_CAPITAL * size) + 0.12 * size;
  return { centre, radius, size };
}

/** Moved so far that all of it is on the sheet. */
function within({ width, height }: Size, { centre, radius, size }: StepCircle): StepCircle {
  const inside = (at: number, far: number) => Math.max(radius, Math.min(far - radius, at));
  return { centre: { x: inside(centre.x, width), y: inside(centre.y, height) }, radius, size };
}

function boxOf({ centre, radius }: StepCircle): Box {
  return boxAt({ x: centre.x - radius, y: centre.y - radius }, { width: 2 * radius, height: 2 * radius });
}

function long([from, to]: CutLine): number {
  return Math.hypot(to.x - from.x, to.y - from.y);
}

function middleOf([from, to]: CutLine, part: number): Point {
  return { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
}
