/** Corners of parallel curves: how two neighbours, moved, are joined. */
import type { Point } from './box';
import { carrierOf, levelOf, partBeside } from './carrier';
import { arc, directionOn, distance, line, unit, type Edge } from './edge';
import { carriersMeet } from './meetings';
import type { MovedEdge } from './moved-edge';
import { linesWithin, type Strand } from './strand';
import { SAME } from './tolerance';

/** Where the first of two moved neighbours now ends, where the second now begins, and what leads from one to the other. */
export interface Corner {
  readonly arrives: Point;
  readonly leaves: Point;
  readonly between: readonly Strand[];
  /** True where both are shortened to where they cross. */
  readonly shortens: boolean;
}

export interface Side {
  readonly edge: Edge;
  readonly moved: MovedEdge;
}

/** Directions that differ by less, radians, go on smoothly. */
const SMOOTH = 1e-6;

/** A corner runs out no further from the outline's than so many times the distance. */
const LONGEST_CORNER = 8;

/** Curves are led on to where they meet by no more of a turn. */
const LED_ON = Math.PI / 2;

/** A corner that curves led on make much sharper than it was is no point any more under 30 degrees; radians of turn. */
const NEEDLE = (150 / 180) * Math.PI;
const MUCH_SHARPER = (15 / 180) * Math.PI;

/** A hair of a part of an edge. */
const HAIR = 1e-9;

/** The corner between an edge and the next one, both moved outward by `away`, mm (negative: inward). */
export function cornerBetween(before: Side, after: Side, away: number): Corner {
  const turn = turnBetween(before.edge, after.edge, away);
  if (turn === 'smooth') return atPoint(before.moved.end, false);
  if (turn === 'closes') return shortened(before, after) ?? throughCorner(before, after);
  return ledOn(before, after, away) ?? squared(before, after, away) ?? rounded(before, after, away);
}

/** Whether the moved neighbours go on from one another, move apart, or into one another. */
function turnBetween(before: Edge, after: Edge, away: number): 'smooth' | 'opens' | 'closes' {
  const [a, b] = [directionOn(before, 1), directionOn(after, 0)];
  const sine = a.x * b.y - a.y * b.x;
  const isForward = a.x * b.x + a.y * b.y > 0;
  // An edge that goes straight back leaves a tip; where it is a cleft, its rounding falls inside and does no harm.
  if (Math.abs(sine) < SMOOTH) return isForward ? 'smooth' : 'opens';
  return sine * away > 0 ? 'opens' : 'closes';
}

/**
 * True of an arc, hollow as a scooped corner is, that the distance leaves no radius, where the edges before and after it
 * meet without it: they do so in a corner, as those of a plain one would. Neither may reach beyond the other's line: the
 * corner would come too near to its end.
 */
export function isPassedOver(before: Side, hollow: Side, after: Side, away: number): boolean {
  const { edge } = hollow;
  if (edge.kind !== 'arc' || edge.sweep * away > 0 || edge.radius > Math.abs(away)) return false;
  const neighbours: readonly [Edge, Edge][] = [
    [before.edge, edge],
    [edge, after.edge],
    [before.edge, after.edge],
  ];
  if (liesBeyond(edge.from, after.edge) || liesBeyond(edge.to, before.edge)) return false;
  const opens = neighbours.every(([one, other]) => turnBetween(one, other, away) === 'opens');
  return opens && ledOn(before, after, away) !== undefined;
}

/** True of a point on the outer side of the whole line, circle or oval that an edge lies on. */
function liesBeyond(point: Point, edge: Edge): boolean {
  const { value } = levelOf(carrierOf(edge), point);
  return (edge.kind !== 'line' && edge.sweep > 0 ? value : -value) > SAME;
}

function atPoint(point: Point, shortens: boolean): Corner {
  return { arrives: point, leaves: point, between: [], shortens };
}

/** Both edges whole up to the corner; the raw curve crosses itself there, and closes by way of the outline's own corner. */
export function throughCorner({ edge, moved: { end } }: Side, { moved: { start } }: Side): Corner {
  return { arrives: end, leaves: start, between: linesWithin([end, edge.to, start]), shortens: false };
}

function shortened(before: Side, after: Side): Corner | undefined {
  const point = meetingOf(before, after, (one, other) => one > 0 && one <= 1 && other >= 0 && other < 1);
  return point && atPoint(point, true);
}

function ledOn(before: Side, after: Side, away: number): Corner | undefined {
  const most = ({ moved: { strands } }: Side, last: boolean) => {
    const edge = strands.at(last ? -1 : 0)?.edge;
    return !edge || edge.kind === 'line' ? Infinity : LED_ON / Math.abs(edge.sweep);
  };
  const [further, earlier] = [most(before, true), most(after, false)];
  const point = meetingOf(
    before,
    after,
    (one, other) => one >= 1 - HAIR && one <= 1 + further && other <= HAIR && other >= -earlier,
  );
  const reach = LONGEST_CORNER * Math.abs(away);
  const isCorner = point && distance(point, before.edge.to) <= reach && !isNeedle(before, after, point);
  return isCorner ? atPoint(point, false) : undefined;
}

/** True where curves led on meet in so sharp a point that it could not be cut; they may even only graze one another. */
function isNeedle(before: Side, after: Side, point: Point): boolean {
  const [last, first] = [before.moved.strands.at(-1)?.edge, after.moved.strands[0]?.edge];
  if (!last || !first || (last.kind === 'line' && first.kind === 'line')) return false;
  const turn = turnOf(directionOn(last, partBeside(last, point)), directionOn(first, partBeside(first, point)));
  const own = turnOf(directionOn(before.edge, 1), directionOn(after.edge, 0));
  return turn > Math.max(NEEDLE, own + MUCH_SHARPER);
}

/** Between two directions, 0 to a half turn. */
function turnOf(a: Point, b: Point): number {
  return Math.abs(Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y));
}

/** The meeting of two moved neighbours, or of what they lie on, nearest to the corner, where its parts of both will do. */
function meetingOf(before: Side, after: Side, fits: (one: number, other: number) => boolean): Point | undefined {
  const [last, first] = [before.moved.strands.at(-1), after.moved.strands[0]];
  if (!last || !first || last.within || first.within) return undefined;
  const { end } = before.moved;
  const { start } = after.moved;
  const corner = { x: (end.x + start.x) / 2, y: (end.y + start.y) / 2 };
  return carriersMeet(last.edge, first.edge)
    .filter((point) => fits(partBeside(last.edge, point), partBeside(first.edge, point)))
    .sort((a, b) => distance(a, corner) - distance(b, corner))[0];
}

/** Two lines whose corner would run out too far, cut off square where it is as far away as it may be. */
function squared(before: Side, after: Side, away: number): Corner | undefined {
  if (before.edge.kind !== 'line' || after.edge.kind !== 'line') return undefined;
  const { to } = before.edge;
  const [a, b] = [directionOn(before.edge, 0), directionOn(after.edge, 0)];
  const out = unit({ x: a.x - b.x, y: a.y - b.y });
  const reach = LONGEST_CORNER * Math.abs(away);
  const led = (from: Point, along: Point): Point => {
    const gone = (from.x - to.x) * out.x + (from.y - to.y) * out.y;
    const length = (reach - gone) / (along.x * out.x + along.y * out.y);
    return { x: from.x + length * along.x, y: from.y + length * along.y };
  };
  const arrives = led(before.moved.end, a);
  const leaves = led(after.moved.start, b);
  return { arrives, leaves, between: [{ edge: line(arrives, leaves), within: false }], shortens: false };
}

function rounded(before: Side, after: Side, away: number): Corner {
  const [a, b] = [directionOn(before.edge, 1), directionOn(after.edge, 0)];
  const turn = turnOf(a, b);
  const [arrives, leaves] = [before.moved.end, after.moved.start];
  const edge = arc(arrives, leaves, before.edge.to, Math.sign(away) * turn);
  return { arrives, leaves, between: [{ edge, within: false }], shortens: false };
}
