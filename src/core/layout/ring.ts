/** Windows round another, or on an ellipse: where their middles lie so that the true distances between outlines come out. */
import type { Point, Size } from '../geometry/box';
import { nearest } from '../geometry/nearness';
import { boundsOf, boxOutline, shiftOutline, type Outline } from '../geometry/outline';
import type { RingItem } from '../job/job';
import type { Leaf } from './cells';
import { evenGaps, type Centred, type PlaceAt } from './even-gaps';

/** How exactly distances come out, mm. */
const CLOSE = 1e-9;

/** Middles of the windows round the ring, from its middle, clockwise from the start. */
export function ringPoints(ring: RingItem, middle: Leaf | undefined, around: readonly Leaf[]): readonly Point[] {
  const outlines = around.map(centred);
  const place = ring.on ? onEllipse(ring.on) : besideMiddle(middle ? centred(middle) : [], outlines, ring.gap);
  const angles = around.map((_, index) => ring.start - (2 * Math.PI * index) / around.length);
  const solved = ring.spacing === 'equal gaps' ? evenGaps(outlines, place, angles) : angles;
  return solved.map((angle, index) => place(index, angle));
}

function centred({ outline, size }: Leaf): Centred {
  const shape = outline ?? boxOutline({ left: 0, bottom: 0, right: size.width, top: size.height });
  return shiftOutline(shape, { x: -size.width / 2, y: -size.height / 2 });
}

function onEllipse({ width, height }: Size): PlaceAt {
  return (_, angle) => ({ x: (width / 2) * Math.cos(angle), y: (height / 2) * Math.sin(angle) });
}

/** As far out in a direction as leaves the gap between the outlines. */
function besideMiddle(middle: Centred, outlines: readonly Centred[], gap: number): PlaceAt {
  return remembered((index, angle) => {
    const outline = outlines[index] ?? [];
    const way = { x: Math.cos(angle), y: Math.sin(angle) };
    const at = (far: number) => ({ x: way.x * far, y: way.y * far });
    const distance = (far: number) => nearest(middle, shiftOutline(outline, at(far))).distance;
    return at(inwardTo(distance, gap, reachOf(middle) + reachOf(outline) + gap));
  });
}

/** Equal gaps ask for the same places over and over, and each takes many distances to find. */
function remembered(place: PlaceAt): PlaceAt {
  const places = new Map<number, Map<number, Point>>();
  return (index, angle) => {
    const own = places.get(index) ?? new Map<number, Point>();
    places.set(index, own);
    const point = own.get(angle) ?? place(index, angle);
    own.set(angle, point);
    return point;
  };
}

function reachOf(outline: Outline): number {
  if (outline.length === 0) return 0;
  const { left, right, bottom, top } = boundsOf(outline);
  return Math.hypot(Math.max(-left, right), Math.max(-bottom, top));
}

/**
 * From outside in to where the distance has fallen to `wanted`. No step overshoots: moving inward by a length takes no
 * more than that from the distance. Secants then sharpen it.
 */
function inwardTo(distance: (far: number) => number, wanted: number, from: number): number {
  let [far, before] = [from, Infinity];
  let [over, overBefore] = [distance(far) - wanted, Infinity];
  for (let step = 0; step < 100 && Math.abs(over) > CLOSE; step += 1) {
    const slope = before === Infinity ? 1 : (overBefore - over) / (before - far);
    [before, overBefore] = [far, over];
    // Nearly square to the way the distance changes slowly; a flat secant would leap away.
    far -= over / Math.min(1, Math.max(0.05, slope));
    over = distance(far) - wanted;
  }
  return far;
}
