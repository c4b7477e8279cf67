/** An ellipse's arc as true edges: arcs of a circle, or of an ellipse whose axes lie across and up. */
import type { Point } from '../geometry/box';
import { arc, oval, type Edge } from '../geometry/edge';
import { axisOf } from './bends';
import { onEllipse, type EllipseSegment } from './segment';

/** Axes that differ by no more of their length are the same, and those that lie off by no more are level. */
const LEVEL = 1e-9;

/** Undefined of an ellipse that lies at a slant, for which there is no edge. */
export function ellipseEdges(segment: EllipseSegment): Edge[] | undefined {
  const turn = axisOf(segment);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const { one, other, centre, sweep } = segment;
  const long = { x: one.x * cos + other.x * sin, y: one.y * cos + other.y * sin };
  const short = { x: other.x * cos - one.x * sin, y: other.y * cos - one.y * sin };
  const [most, least] = [Math.hypot(long.x, long.y), Math.hypot(short.x, short.y)];
  const turns = Math.sign(long.x * short.y - long.y * short.x) * sweep;
  if (most - least <= LEVEL * most)
    return halves(segment, ({ from, to, share }) => arc(from, to, centre, turns * share));
  const isLevel = Math.abs(long.y) <= LEVEL * most;
  if (!isLevel && Math.abs(long.x) > LEVEL * most) return undefined;
  if (least <= LEVEL * most) return undefined;
  const radii: Point = isLevel ? { x: most, y: least } : { x: least, y: most };
  return halves(segment, ({ from, to, share }) => {
    const start = Math.atan2((from.y - centre.y) / radii.y, (from.x - centre.x) / radii.x);
    return { ...oval(centre, radii, 0, start, turns * share), from, to };
  });
}

interface Half {
  readonly from: Point;
  readonly to: Point;
  /** Of the whole sweep. */
  readonly share: number;
}

/** Whole up to half a turn, else in two, since an edge turns by no more. */
function halves(segment: EllipseSegment, edgeOf: (half: Half) => Edge): Edge[] {
  const { from, to, start, sweep } = segment;
  if (Math.abs(sweep) <= Math.PI) return [edgeOf({ from, to, share: 1 })];
  const middle = onEllipse(segment, start + sweep / 2);
  return [edgeOf({ from, to: middle, share: 1 / 2 }), edgeOf({ from: middle, to, share: 1 / 2 })];
}
