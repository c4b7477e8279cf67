/** Parallel curves of outlines: every edge moved square to itself by one distance, corners kept as corners. */
import type { Point } from './box';
import { partBeside } from './carrier';
import { cleaned, isConvex } from './clean';
import { arc, directionOn, distance, oval, startAngle, type ArcEdge, type Edge } from './edge';
import { carriersMeet } from './meetings';
import type { Outline } from './outline';

export interface Parallel {
  readonly outline: Outline;
  /** Edges of the outline that shrank to nothing on the way, by their index in it. */
  readonly vanished: readonly number[];
}

/** Directions that differ by less go on smoothly. */
const SMOOTH = 1e-9;
/** Shorter edges are no edges, mm. */
const NOTHING = 1e-9;

interface Tracked {
  readonly edge: Edge;
  readonly index: number;
}

/**
 * The curve at a distance outward (negative: inward), mm. Undefined where nothing is left: an inward distance larger than
 * the outline has room for, or than the tightest bend of an oval; and where it falls into several pieces. Corners stay
 * corners, outward and inward: neighbours are lengthened or shortened to where they meet. Where curves would not meet, or
 * only further away than a sharp corner is let run out, the corner is rounded at the distance. An edge that has shrunk to
 * nothing is left out, its neighbours meet.
 */
export function parallelTo(outline: Outline, away: number): Parallel | undefined {
  const raw = healedParallel(outline, away);
  if (!raw || isConvex(outline)) return raw;
  const simple = cleaned(raw.outline);
  return simple && { ...raw, outline: simple };
}

/** Right near every edge; parts of the outline far from one another may run into each other. */
function healedParallel(outline: Outline, away: number): Parallel | undefined {
  let edges: readonly Tracked[] = outline.map((edge, index) => ({ edge, index }));
  const vanished: number[] = [];
  let rest = away;
  for (;;) {
    const moved = moveAll(edges, rest);
    if (moved) return { outline: moved.map(({ edge }) => edge), vanished: vanished.sort((a, b) => a - b) };
    const near = furthestWhole(edges, rest);
    const at = near === 0 ? edges : moveAll(edges, near);
    if (!at) return undefined;
    const gone = goneFrom(at, rest - near);
    const left = at.filter((one) => !gone.includes(one));
    if (gone.length === 0 || left.length < 2) return undefined;
    vanished.push(...gone.map(({ index }) => index).filter((index) => index !== ADDED));
    const healed = moveAll(left, 0);
    if (!healed) return undefined;
    edges = healed;
    rest -= near;
  }
}

/** The largest distance towards `wanted` at which every edge is still there. */
function furthestWhole(edges: readonly Tracked[], wanted: number): number {
  let [whole, broken] = [0, wanted];
  for (let step = 0; step < 80; step += 1) {
    const middle = (whole + broken) / 2;
    if (middle === whole || middle === broken) break;
    if (moveAll(edges, middle)) whole = middle;
    else broken = middle;
  }
  return whole;
}

/** The edges that cannot go on: those shrunk to nothing, else the arcs that no longer reach a neighbour. */
function goneFrom(edges: readonly Tracked[], rest: number): readonly Tracked[] {
  const shrunk = edges.filter(({ edge }) => isGone(edge, rest));
  if (shrunk.length > 0) return shrunk;
  // A hair's breadth on, even where the end is no further: there a curve may just touch its neighbour and no more.
  const further = Math.sign(rest) * VANISHING;
  const meets = (before: Tracked | undefined, after: Tracked | undefined) => {
    const [moved, next] = [before && moveEdge(before.edge, further), after && moveEdge(after.edge, further)];
    return before && after && moved && next && join(before.edge, after.edge, moved, next, further) !== undefined;
  };
  return edges.filter((one, place) => {
    const before = edges[(place + edges.length - 1) % edges.length];
    const after = edges[(place + 1) % edges.length];
    return one.edge.kind === 'arc' && !(meets(before, one) && meets(one, after));
  });
}

/** True of an edge that is as good as nothing, or would be turned inside out by going on a hair's breadth. */
function isGone(edge: Edge, rest: number): boolean {
  if (edge.kind === 'line') return distance(edge.from, edge.to) <= VANISHING;
  if (edge.kind === 'arc') {
    const going = edge.sweep > 0 ? rest : -rest;
    return edge.radius * Math.abs(edge.sweep) <= VANISHING || (going < 0 && edge.radius <= VANISHING);
  }
  return distance(edge.from, edge.to) <= VANISHING;
}

/** What is left of a vanishing edge where the search for its end stops, mm. */
const VANISHING = 1e-6;

/** All edges moved and joined; undefined where one of them would be turned inside out. */
function moveAll(edges: readonly Tracked[], away: number): readonly Tracked[] | undefined {
  const moved = edges.map(({ edge }) => moveEdge(edge, away));
  if (moved.some((edge) => edge === undefined)) return undefined;
  const corners = edges.map((one, index) => {
    const next = (index + 1) % edges.length;
    const [here, there] = [moved[index], moved[next]];
    const after = edges[next];
    return here && there && after ? join(one.edge, after.edge, here, there, away) : undefined;
  });
  const joined: Tracked[] = [];
  for (const [place, { index }] of edges.entries()) {
    const start = corners[(place + edges.length - 1) % edges.length];
    const end = corners[place];
    const edge = moved[place];
    const cut = edge && start && end && between(edge, start.leaves, end.arrives);
    if (!cut) return undefined;
    joined.push({ edge: cut, index });
    if (end.round) joined.push({ edge: end.round, index: ADDED });
  }
  return joined;
}

/** Index of an edge that is none of the outline's own: the rounding of a corner. */
const ADDED = -1;

/** An edge moved outward, its ends square from where they were. */
function moveEdge(edge: Edge, away: number): Edge | undefined {
  switch (edge.kind) {
    case 'line': {
      const { x, y } = directionOn(edge, 0);
      const move = (point: Point) => ({ x: point.x + y * away, y: point.y - x * away });
      return { ...edge, from: move(edge.from), to: move(edge.to) };
    }
    case 'arc': {
      const radius = edge.radius + (edge.sweep > 0 ? away : -away);
      if (!(radius > 0)) return undefined;
      const scale = radius / edge.radius;
      const move = ({ x, y }: Point) => ({
        x: edge.centre.x + (x - edge.centre.x) * scale,
        y: edge.centre.y + (y - edge.centre.y) * scale,
      });
      return { ...edge, radius, from: move(edge.from), to: move(edge.to) };
    }
    case 'oval': {
      const further = edge.away + (edge.sweep > 0 ? away : -away);
      // Further in than the tightest bend the curve would cross itself.
      const { x, y } = edge.radii;
      if (further <= -(Math.min(x, y) ** 2) / Math.max(x, y)) return undefined;
      return oval(edge.centre, edge.radii, further, edge.start, edge.sweep);
    }
  }
}

/** A corner between two moved neighbours: where the one arrives and the other leaves, and the arc between if it is rounded. */
interface Corner {
  readonly arrives: Point;
  readonly leaves: Point;
  readonly round?: ArcEdge;
}

/** A corner that opens runs out no further than so many times the distance. */
const LONGEST_CORNER = 8;

function join(before: Edge, after: Edge, moved: Edge, next: Edge, away: number): Corner | undefined {
  const [a, b] = [directionOn(before, 1), directionOn(after, 0)];
  const turn = a.x * b.y - a.y * b.x;
  if (Math.abs(turn) < SMOOTH && a.x * b.x + a.y * b.y > 0) return { arrives: moved.to, leaves: moved.to };
  const point = nearest(carriersMeet(moved, next), middle(moved.to, next.from));
  if (!(turn * away > 0)) return point && { arrives: point, leaves: point };
  if (point && distance(point, before.to) <= LONGEST_CORNER * Math.abs(away)) return { arrives: point, leaves: point };
  // A hollow that no longer reaches its neighbours is at its end, and they meet without it.
  if (!point && (isHollow(before, away) || isHollow(after, away))) return undefined;
  const sweep = Math.atan2(turn, a.x * b.x + a.y * b.y);
  return { arrives: moved.to, leaves: next.from, round: arc(moved.to, next.from, before.to, sweep) };
}

/** True of a bend that the distance takes away from. */
function isHollow(edge: Edge, away: number): boolean {
  return edge.kind !== 'line' && edge.sweep * away < 0;
}

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function nearest(points: readonly Point[], to: Point): Point | undefined {
  return points.toSorted((a, b) => distance(a, to) - distance(b, to))[0];
}

/** A moved edge from corner to corner; undefined where it would run backwards. */
function between(edge: Edge, from: Point, to: Point): Edge | undefined {
  switch (edge.kind) {
    case 'line': {
      const { x, y } = directionOn(edge, 0);
      return (to.x - from.x) * x + (to.y - from.y) * y > NOTHING ? { ...edge, from, to } : undefined;
    }
    case 'arc': {
      const made = arc(from, to, edge.centre, edge.sweep);
      const angle = (point: Point) => Math.atan2(point.y - edge.centre.y, point.x - edge.centre.x);
      const raw = angle(to) - startAngle(made);
      // Of the sweeps that end there the one nearest to what it was.
      const sweep = raw + 2 * Math.PI * Math.round((edge.sweep - raw) / (2 * Math.PI));
      return sweep * Math.sign(edge.sweep) * edge.radius > NOTHING
        ? { ...made, radius: edge.radius, sweep }
        : undefined;
    }
    case 'oval': {
      const [start, end] = [partBeside(edge, from), partBeside(edge, to)];
      const ends = { from, to, start: edge.start + edge.sweep * start, sweep: edge.sweep * (end - start) };
      return end > start && distance(from, to) > NOTHING ? { ...edge, ...ends } : undefined;
    }
  }
}
