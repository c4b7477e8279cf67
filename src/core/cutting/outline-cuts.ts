/** The cuts of a window that is no rectangle: straight lines one by one, curves as far as they run on without a corner. */
import { insets, type Box, type Point, type Side } from '../geometry/box';
import { continued, directionOn, distance, lengthOfEdge, reversed, type Edge } from '../geometry/edge';
import type { Outline } from '../geometry/outline';
import { assert } from '../problem';
import { guideOf, overcutAt, SMOOTH, type Manner } from './manner';
import type { CutLine } from './plan';

/** One cut on its way: edges that follow one another smoothly, and how the outline turns at either end, radians. */
interface Stretch {
  readonly edges: readonly Edge[];
  readonly turnBefore: number;
  readonly turnAfter: number;
}

/** In the order of travel: clockwise round the window with the waste on the right, else counter-clockwise. */
export function outlineCuts(outline: Outline, board: Box, manner: Manner): CutLine[] {
  const clockwise = manner.waste === 'right';
  const travel = clockwise ? outline.toReversed().map(reversed) : outline;
  const stretches = stretchesOf(travel, clockwise ? -1 : 1);
  const sides = stretches.map(({ edges }) => sideOf(edges, clockwise));
  const names = namesOf(stretches, sides);
  return stretches.map((stretch, index) => lineOf(stretch, sides[index], names[index] ?? '', board, manner));
}

/** Split at every corner and at both ends of every straight line. `sense` makes turns outward positive. */
function stretchesOf(travel: Outline, sense: 1 | -1): Stretch[] {
  const turns = travel.map((edge, index) => turnInto(travel.at(index - 1) ?? edge, edge) * sense);
  const splits = travel.flatMap((edge, index) => {
    const before = travel.at(index - 1) ?? edge;
    const goesOn = Math.abs(turns[index] ?? 0) < SMOOTH && edge.kind !== 'line' && before.kind !== 'line';
    return goesOn ? [] : [index];
  });
  if (splits.length === 0) return [{ edges: travel, turnBefore: 0, turnAfter: 0 }];
  return splits.map((from, place) => {
    const to = splits[place + 1] ?? (splits[0] ?? 0) + travel.length;
    const edges = Array.from({ length: to - from }, (_, step) => travel[(from + step) % travel.length]).filter(
      (edge) => edge !== undefined,
    );
    return { edges, turnBefore: turns[from] ?? 0, turnAfter: turns[to % travel.length] ?? 0 };
  });
}

/** How far the direction turns from one edge into the next, anticlockwise positive, radians. */
function turnInto(before: Edge, after: Edge): number {
  const [a, b] = [directionOn(before, 1), directionOn(after, 0)];
  return Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
}

/** The side of the window that an upright or level straight cut runs along. */
function sideOf(edges: readonly Edge[], clockwise: boolean): Side | undefined {
  const [edge] = edges;
  if (edge?.kind !== 'line') return undefined;
  const { x, y } = directionOn(edge, 0);
  if (Math.abs(x) < SMOOTH) return y > 0 === clockwise ? 'left' : 'right';
  if (Math.abs(y) < SMOOTH) return x > 0 === clockwise ? 'top' : 'bottom';
  return undefined;
}

/** Sides by their name, the others by what they are; numbered where there are several. */
function namesOf(stretches: readonly Stretch[], sides: readonly (Side | undefined)[]): string[] {
  const words = stretches.map(({ edges }, index) => sides[index] ?? (edges[0]?.kind === 'line' ? 'slant' : 'curve'));
  const seen = new Map<string, number>();
  return words.map((word) => {
    const number = (seen.get(word) ?? 0) + 1;
    seen.set(word, number);
    return words.filter((other) => other === word).length > 1 ? `${word} ${number}` : word;
  });
}

function lineOf(stretch: Stretch, side: Side | undefined, name: string, board: Box, manner: Manner): CutLine {
  const { edges } = stretch;
  const [first, last] = [edges[0], edges.at(-1)];
  assert(first && last, 'a cut follows at least one edge');
  const closed = distance(first.from, last.to) < SMOOTH;
  // Round a curve without corners the blade starts on the line and ends where its cut is already through.
  const overcutStart = closed ? 0 : overcutAt(stretch.turnBefore, manner);
  const overcutEnd = closed ? (manner.overcut ?? manner.run) : overcutAt(stretch.turnAfter, manner);
  return {
    name,
    ...(side ? { side } : {}),
    start: first.from,
    end: last.to,
    ...(first.kind === 'line' ? {} : { curve: edges }),
    bladeStart: overcutStart === 0 ? first.from : continued(reversed(first), overcutStart).to,
    bladeEnd: overcutEnd === 0 ? last.to : continued(last, overcutEnd).to,
    overcutStart,
    overcutEnd,
    bevelSide: manner.bevelSide,
    slopesTo: manner.slopesTo,
    ...(side ? guideOf(settingOf(first.from, side, board), manner) : {}),
  };
}

function settingOf({ x, y }: Point, side: Side, board: Box): number {
  return insets(board, { left: x, right: x, bottom: y, top: y })[side];
}

/** Everything the blade follows, from where it enters to where it leaves. */
export function bladePath({ start, end, bladeStart, bladeEnd, curve, overcutStart, overcutEnd }: CutLine): Edge[] {
  if (!curve) return [{ kind: 'line', from: bladeStart, to: bladeEnd }];
  const [first, last] = [curve[0], curve.at(-1)];
  assert(first && last, `a curve from ${start.x} to ${end.x} follows at least one edge`);
  return [
    ...(overcutStart === 0 ? [] : [reversed(continued(reversed(first), overcutStart))]),
    ...curve,
    ...(overcutEnd === 0 ? [] : [continued(last, overcutEnd)]),
  ];
}

/** How far the blade travels in the board along a cut, mm. */
export function bladeLength(line: CutLine): number {
  return bladePath(line).reduce((sum, edge) => sum + lengthOfEdge(edge), 0);
}
