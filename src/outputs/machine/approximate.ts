/** Curves in words that machines know: ovals as arcs of circles that run on smoothly, and every curve as straight pieces. */
import type { Point } from '../../core/geometry/box';
import {
  arc,
  directionOn,
  distance,
  lengthOfEdge,
  line,
  oval,
  pointOn,
  type ArcEdge,
  type Edge,
  type OvalEdge,
} from '../../core/geometry/edge';

/** Where along a piece its distance from the curve is looked at. */
const LOOKS = Array.from({ length: 19 }, (_, index) => (index + 1) / 20);
/** Between two looks it may be a little farther. */
const SURE = 0.9;
/** Halvings of one edge; as fine as doubles go long before. */
const MOST_HALVINGS = 16;

/** The edge in lines and arcs, none farther from it than `tolerance`, mm, each running into the next without a corner. */
export function arcsOf(edge: Edge, tolerance: number): readonly Edge[] {
  if (edge.kind !== 'oval') return [edge];
  const circle = asCircle(edge);
  return circle ? [circle] : halvedUntil(edge, biarcOf, biarcError, tolerance);
}

/** The edge in straight pieces from point to point on it, none farther from it than `tolerance`, mm. */
export function chordsOf(edge: Edge, tolerance: number): readonly Edge[] {
  if (edge.kind === 'line') return [edge];
  if (edge.kind === 'oval') return halvedUntil(edge, (piece) => [line(piece.from, piece.to)], chordError, tolerance);
  const step = 2 * Math.acos(1 - Math.min(1, tolerance / edge.radius));
  const count = Math.max(1, Math.ceil(Math.abs(edge.sweep) / step));
  const points = Array.from({ length: count + 1 }, (_, index) =>
    index === 0 ? edge.from : index === count ? edge.to : pointOn(edge, index / count),
  );
  return points.slice(1).map((to, index) => line(points[index] ?? edge.from, to));
}

/** Shorter curves are written as lines, mm: an arc whose ends round to one point would be a whole circle to a machine. */
const SPECK = 0.001;

export function withoutSpecks(edges: readonly Edge[]): readonly Edge[] {
  return edges.map((edge) => (edge.kind !== 'line' && lengthOfEdge(edge) < SPECK ? line(edge.from, edge.to) : edge));
}

/** An oval whose ellipse is a circle is an arc itself. */
export function asCircle(edge: OvalEdge): ArcEdge | undefined {
  return edge.radii.x === edge.radii.y ? arc(edge.from, edge.to, edge.centre, edge.sweep) : undefined;
}

type Pieces = (piece: OvalEdge) => readonly Edge[];

function halvedUntil(
  edge: OvalEdge,
  drawn: Pieces,
  error: (piece: OvalEdge, edges: readonly Edge[]) => number,
  tolerance: number,
  depth = 0,
): readonly Edge[] {
  const edges = drawn(edge);
  if (error(edge, edges) <= tolerance * SURE || depth === MOST_HALVINGS) return edges;
  return halvesOf(edge).flatMap((half) => halvedUntil(half, drawn, error, tolerance, depth + 1));
}

function halvesOf({ centre, radii, away, start, sweep, from, to }: OvalEdge): [OvalEdge, OvalEdge] {
  const first = oval(centre, radii, away, start, sweep / 2);
  const second = oval(centre, radii, away, start + sweep / 2, sweep / 2);
  return [
    { ...first, from },
    { ...second, from: first.to, to },
  ];
}

function chordError(piece: OvalEdge): number {
  const { x, y } = directionOn(line(piece.from, piece.to), 0);
  return Math.max(
    ...LOOKS.map((part) => {
      const at = pointOn(piece, part);
      return Math.abs((at.x - piece.from.x) * y - (at.y - piece.from.y) * x);
    }),
  );
}

/** Two arcs with the piece's own ends and directions that meet in one direction, at equal distances along both tangents. */
function biarcOf(piece: OvalEdge): readonly Edge[] {
  const { from, to } = piece;
  const [a, b] = [directionOn(piece, 0), directionOn(piece, 1)];
  const chord = { x: to.x - from.x, y: to.y - from.y };
  const both = { x: a.x + b.x, y: a.y + b.y };
  const along = dot(chord, both);
  const bend = 2 * (1 - dot(a, b));
  // d of |chord - d (a + b)| = 2 d, by the root that does not lose digits.
  const d = dot(chord, chord) / (along + Math.sqrt(along ** 2 + bend * dot(chord, chord)));
  const joint = { x: (from.x + to.x + d * (a.x - b.x)) / 2, y: (from.y + to.y + d * (a.y - b.y)) / 2 };
  return [arcLeaving(from, a, joint), backwards(arcLeaving(to, { x: -b.x, y: -b.y }, joint))];
}

/** The arc that starts in a direction and ends at a point; straight where that lies ahead. */
function arcLeaving(from: Point, way: Point, to: Point): Edge {
  const chord = { x: to.x - from.x, y: to.y - from.y };
  const aside = way.x * chord.y - way.y * chord.x;
  const reach = dot(chord, chord);
  if (Math.abs(aside) <= 1e-12 * Math.sqrt(reach)) return line(from, to);
  const radius = reach / (2 * aside);
  const centre = { x: from.x - way.y * radius, y: from.y + way.x * radius };
  return arc(from, to, centre, 2 * Math.atan2(aside, dot(way, chord)));
}

function backwards(edge: Edge): Edge {
  const ends = { from: edge.to, to: edge.from };
  return edge.kind === 'arc' ? { ...edge, ...ends, sweep: -edge.sweep } : { ...edge, ...ends };
}

function biarcError(piece: OvalEdge, [first, second]: readonly Edge[]): number {
  if (first?.kind !== 'arc' || second?.kind !== 'arc') return chordError(piece);
  const chord = { x: piece.to.x - piece.from.x, y: piece.to.y - piece.from.y };
  return Math.max(
    ...LOOKS.map((part) => {
      const at = pointOn(piece, part);
      const before = dot({ x: at.x - first.to.x, y: at.y - first.to.y }, chord) < 0;
      const { centre, radius } = before ? first : second;
      return Math.abs(distance(at, centre) - radius);
    }),
  );
}

function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}
