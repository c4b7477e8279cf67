/** The raw parallel curve: every edge of an outline moved and joined to its neighbours, wherever far parts of it may run. */
import type { Point } from './box';
import { partBeside } from './carrier';
import { cornerBetween, isPassedOver, throughCorner, type Corner, type Side } from './corner';
import { arc, directionOn, line, startAngle, type Edge } from './edge';
import { moveEdge } from './moved-edge';
import type { Outline } from './outline';
import type { Strand } from './strand';

/** Shorter edges are no edges, mm. */
const NOTHING = 1e-9;

/**
 * A closed curve that goes round what the parallel curve encloses once, and round all else no times or clockwise: the
 * outline, and with it (outward) or against it (inward) the strips its edges sweep on their way and the corners they open
 * (winding numbers of raw offsets: Chen and McMains, "Polygon Offsetting by Computing Winding Numbers", 2005).
 */
export function rawParallel(outline: Outline, away: number): readonly Strand[] {
  const sides = withoutPassedOver(
    outline.map((edge, index) => ({ edge, moved: moveEdge(edge, index, away) })),
    away,
  );
  const next = (index: number) => (index + 1) % sides.length;
  const pairs = sides.flatMap((before, index) => {
    const after = sides[next(index)];
    return after ? [{ before, after }] : [];
  });
  const corners = pairs.map(({ before, after }) => cornerBetween(before, after, away));
  const runsBack = sides.map((side, index) => !spanned(side, corners.at(index - 1), corners[index]));
  // Too short to be shortened from both ends: left whole, to be cut where it leaves the curve.
  const mended = pairs.map(({ before, after }, index) => {
    const corner = corners[index];
    const stays = corner && !(corner.shortens && (runsBack[index] || runsBack[next(index)]));
    return stays ? corner : throughCorner(before, after);
  });
  return sides.flatMap((side, index) => {
    const corner = mended[index];
    return [...(spanned(side, mended.at(index - 1), corner) ?? []), ...(corner?.between ?? [])];
  });
}

function withoutPassedOver(sides: readonly Side[], away: number): readonly Side[] {
  return sides.filter((side, index) => {
    const [before, after] = [sides.at(index - 1), sides[(index + 1) % sides.length]];
    return !before || !after || !isPassedOver(before, side, after, away);
  });
}

/** The strands of a moved edge from corner to corner; undefined where one would run backwards. */
function spanned({ moved }: Side, start: Corner | undefined, end: Corner | undefined): Strand[] | undefined {
  const last = moved.strands.length - 1;
  const made: Strand[] = [];
  for (const [index, strand] of moved.strands.entries()) {
    const from = index === 0 ? (start?.leaves ?? moved.start) : strand.edge.from;
    const to = index === last ? (end?.arrives ?? moved.end) : strand.edge.to;
    const isWhole = from === strand.edge.from && to === strand.edge.to;
    const edge = isWhole ? strand.edge : strand.within ? line(from, to) : between(strand.edge, from, to);
    if (!edge) return undefined;
    made.push({ ...strand, edge });
  }
  return made;
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
      const start = from === edge.from ? 0 : partBeside(edge, from);
      const end = to === edge.to ? 1 : partBeside(edge, to);
      const ends = { from, to, start: edge.start + edge.sweep * start, sweep: edge.sweep * (end - start) };
      return end > start ? { ...edge, ...ends } : undefined;
    }
  }
}
