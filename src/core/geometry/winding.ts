/** How often a closed curve goes round a point. */
import type { Point } from './box';
import { pointOn, startAngle, type Edge } from './edge';

/** A part of an edge that only rises or only falls. */
interface Flank {
  readonly low: number;
  readonly high: number;
  readonly left: number;
  readonly right: number;
  /** 1 where it rises along the curve, -1 where it falls. */
  readonly turn: 1 | -1;
  /** Where it crosses a height, by the edge's own closed form or by bisection. */
  readonly crossing: (y: number) => number;
}

/**
 * Tells how often closed edges go round a point, anticlockwise, by what a ray to the right crosses. Edges must follow one
 * another in the very same points; of a point on the curve it tells either side's number.
 */
export function windingOf(edges: readonly Edge[]): (at: Point) => number {
  const flanks = edges.flatMap(flanksOf).toSorted((a, b) => a.low - b.low);
  return ({ x, y }) => {
    let turns = 0;
    for (const { low, high, left, right, turn, crossing } of flanks) {
      if (low > y) break;
      if (high > y && x < right && (x < left || x < crossing(y))) turns += turn;
    }
    return turns;
  };
}

function flanksOf(edge: Edge): Flank[] {
  if (edge.kind === 'line') return flankOf(edge, 0, edge.from, 1, edge.to);
  // Highest and lowest where the normal stands upright.
  const start = edge.kind === 'arc' ? startAngle(edge) : edge.start;
  const { sweep } = edge;
  const [low, high] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
  const parts: number[] = [];
  for (let turn = Math.ceil(low / Math.PI - 0.5); (turn + 0.5) * Math.PI < high; turn += 1)
    parts.push(((turn + 0.5) * Math.PI - start) / sweep);
  const inner = parts.filter((part) => part > 0 && part < 1).sort((a, b) => a - b);
  const stops: [number, Point][] = [
    [0, edge.from],
    ...inner.map((part): [number, Point] => [part, pointOn(edge, part)]),
    [1, edge.to],
  ];
  return stops.slice(1).flatMap(([end, to], index) => {
    const [begin, from] = stops[index] ?? [0, edge.from];
    return flankOf(edge, begin, from, end, to);
  });
}

function flankOf(edge: Edge, begin: number, from: Point, end: number, to: Point): Flank[] {
  if (from.y === to.y) return [];
  const bulge = edge.kind === 'line' ? 0 : SLACK;
  const shared = {
    low: Math.min(from.y, to.y),
    high: Math.max(from.y, to.y),
    // A flank between two heights turns round at neither side more than at its ends or its leftmost and rightmost point.
    ...sidesOf(edge, begin, from, end, to, bulge),
    turn: to.y > from.y ? (1 as const) : (-1 as const),
  };
  return [{ ...shared, crossing: (y) => crossingAt(edge, [begin, from], [end, to], y) }];
}

/** Rounding of points on curves, mm. */
const SLACK = 1e-9;

function sidesOf(edge: Edge, begin: number, from: Point, end: number, to: Point, bulge: number) {
  const xs = [from.x, to.x];
  if (edge.kind !== 'line') {
    const start = edge.kind === 'arc' ? startAngle(edge) : edge.start;
    const middle = start + (edge.sweep * (begin + end)) / 2;
    // The only place between top and bottom where the curve stands upright.
    const upright = (Math.round(middle / Math.PI) * Math.PI - start) / edge.sweep;
    if (upright > begin && upright < end) xs.push(pointOn(edge, upright).x);
  }
  return { left: Math.min(...xs) - bulge, right: Math.max(...xs) + bulge };
}

function crossingAt(edge: Edge, [begin, from]: [number, Point], [end, to]: [number, Point], y: number): number {
  if (edge.kind === 'line') return from.x + ((y - from.y) * (to.x - from.x)) / (to.y - from.y);
  if (edge.kind === 'arc') {
    const { centre, radius } = edge;
    const isRight = pointOn(edge, (begin + end) / 2).x > centre.x;
    const half = Math.sqrt(Math.max(0, (radius - (y - centre.y)) * (radius + (y - centre.y))));
    return isRight ? centre.x + half : centre.x - half;
  }
  const rises = to.y > from.y;
  let [low, high] = [begin, end];
  for (let step = 0; step < 50; step += 1) {
    const middle = (low + high) / 2;
    if (pointOn(edge, middle).y < y === rises) low = middle;
    else high = middle;
  }
  return pointOn(edge, (low + high) / 2).x;
}
