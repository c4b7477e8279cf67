/** Parallel curves of outlines: every edge moved square to itself by one distance, corners kept as corners. */
import type { Point } from './box';
import { arc, directionOn, distance, oval, startAngle, type ArcEdge, type Edge, type LineEdge } from './edge';
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
 * the outline has room for, or than the tightest bend of an oval. Corners stay corners, outward and inward: neighbours
 * are lengthened or shortened to where they meet. An edge that has shrunk to nothing is left out, its neighbours meet.
 */
export function parallelTo(outline: Outline, away: number): Parallel | undefined {
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
    vanished.push(...gone.map(({ index }) => index));
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
    return before && after && moved && next && join(before.edge, after.edge, moved, next) !== undefined;
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
  return false;
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
    return here && there && after ? join(one.edge, after.edge, here, there) : undefined;
  });
  const joined = edges.map(({ index }, place) => {
    const from = corners[(place + edges.length - 1) % edges.length];
    const to = corners[place];
    const edge = moved[place];
    const cut = edge && from && to ? between(edge, from, to) : undefined;
    return cut && { edge: cut, index };
  });
  return joined.every((one) => one !== undefined) ? joined : undefined;
}

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

/** Where two moved neighbours meet. */
function join(before: Edge, after: Edge, moved: Edge, next: Edge): Point | undefined {
  const [a, b] = [directionOn(before, 1), directionOn(after, 0)];
  if (Math.abs(a.x * b.y - a.y * b.x) < SMOOTH && a.x * b.x + a.y * b.y > 0) return moved.to;
  if (moved.kind === 'oval' || next.kind === 'oval') return undefined;
  const points = meetings(moved, next);
  return nearest(points, middle(moved.to, next.from));
}

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function nearest(points: readonly Point[], to: Point): Point | undefined {
  return points.toSorted((a, b) => distance(a, to) - distance(b, to))[0];
}

/** Where the whole lines and circles that two edges lie on meet. */
function meetings(a: LineEdge | ArcEdge, b: LineEdge | ArcEdge): Point[] {
  if (a.kind === 'line') return b.kind === 'line' ? lineWithLine(a, b) : lineWithCircle(a, b);
  return b.kind === 'line' ? lineWithCircle(b, a) : circleWithCircle(a, b);
}

function lineWithLine(a: LineEdge, b: LineEdge): Point[] {
  const [u, v] = [directionOn(a, 0), directionOn(b, 0)];
  const cross = u.x * v.y - u.y * v.x;
  if (Math.abs(cross) < SMOOTH) return [];
  const along = ((b.from.x - a.from.x) * v.y - (b.from.y - a.from.y) * v.x) / cross;
  return [{ x: a.from.x + along * u.x, y: a.from.y + along * u.y }];
}

function lineWithCircle(of: LineEdge, { centre, radius }: ArcEdge): Point[] {
  const u = directionOn(of, 0);
  const to = { x: centre.x - of.from.x, y: centre.y - of.from.y };
  const along = to.x * u.x + to.y * u.y;
  const off = to.x * u.y - to.y * u.x;
  const square = radius ** 2 - off ** 2;
  if (square < -NOTHING * radius) return [];
  const half = Math.sqrt(Math.max(0, square));
  return [along - half, along + half].map((at) => ({ x: of.from.x + at * u.x, y: of.from.y + at * u.y }));
}

function circleWithCircle(a: ArcEdge, b: ArcEdge): Point[] {
  const apart = distance(a.centre, b.centre);
  if (apart < NOTHING) return [];
  const along = (apart ** 2 + a.radius ** 2 - b.radius ** 2) / (2 * apart);
  const square = a.radius ** 2 - along ** 2;
  if (square < -NOTHING * a.radius) return [];
  const half = Math.sqrt(Math.max(0, square));
  const u = { x: (b.centre.x - a.centre.x) / apart, y: (b.centre.y - a.centre.y) / apart };
  return [half, -half].map((side) => ({
    x: a.centre.x + along * u.x - side * u.y,
    y: a.centre.y + along * u.y + side * u.x,
  }));
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
    case 'oval':
      return edge;
  }
}
