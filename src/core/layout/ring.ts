/** Windows round another, or on an ellipse: where their middles lie so that the true distances between outlines come out. */
import type { Point, Size } from '../geometry/box';
import { nearest } from '../geometry/nearness';
import { boundsOf, boxOutline, shiftOutline, type Outline } from '../geometry/outline';
import type { RingItem } from '../job/job';
import type { Leaf } from './cells';
import { solveLinear } from './solve-linear';

/** A window's outline with its middle at the origin. */
type Centred = Outline;

/** Where one window's middle lies for a direction, radians anticlockwise. */
type PlaceAt = (index: number, angle: number) => Point;

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
  return (index, angle) => {
    const outline = outlines[index] ?? [];
    const way = { x: Math.cos(angle), y: Math.sin(angle) };
    const at = (far: number) => ({ x: way.x * far, y: way.y * far });
    const distance = (far: number) => nearest(middle, shiftOutline(outline, at(far))).distance;
    return at(inwardTo(distance, gap, reachOf(middle) + reachOf(outline) + gap));
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

/** Directions in which the distance from each window to the next is the same all round. */
function evenGaps(outlines: readonly Centred[], place: PlaceAt, start: readonly number[]): readonly number[] {
  if (outlines.length < 3) return start;
  let angles = allAtOnce(outlines, place, start);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const gaps = gapsOf(outlines, place, angles);
    if (gaps.some((gap) => gap <= 0) || unevenness(gaps) < CLOSE * 10) break;
    angles = allAtOnce(outlines, place, oneByOne(outlines, place, angles));
  }
  return angles;
}

/** Of moving windows one by one, where moving all at once has come to a stand. */
const MOST_ROUNDS = 8;

/** Each window but the first halfway between its neighbours, one after the other: slow, but never stuck in a kink. */
function oneByOne(outlines: readonly Centred[], place: PlaceAt, start: readonly number[]): readonly number[] {
  const angles = [...start];
  const at = (index: number, angle: number) => shiftOutline(outlines[index] ?? [], place(index, angle));
  for (let index = 1; index < angles.length; index += 1) {
    const [last, next] = [index - 1, (index + 1) % angles.length];
    const here = angles[index] ?? 0;
    const neighbours = { last: at(last, angles[last] ?? 0), next: at(next, angles[next] ?? 0) };
    // Clockwise is away from the last one: angles fall from window to window.
    let [far, near] = [here - Math.PI / angles.length, here + Math.PI / angles.length];
    for (let step = 0; step < 30; step += 1) {
      const middle = (far + near) / 2;
      const outline = at(index, middle);
      if (nearest(outline, neighbours.last).distance > nearest(outline, neighbours.next).distance) far = middle;
      else near = middle;
    }
    angles[index] = (far + near) / 2;
  }
  return angles;
}

/** Newton's method; no further than where it helps. */
function allAtOnce(outlines: readonly Centred[], place: PlaceAt, start: readonly number[]): readonly number[] {
  const count = outlines.length;
  let [angles, gaps] = [start, gapsOf(outlines, place, start)];
  if (gaps.some((gap) => gap <= 0)) return start;
  for (let round = 0; round < 60 && unevenness(gaps) >= CLOSE * 10; round += 1) {
    const turns = solveLinear(...equations(outlines, place, angles, gaps));
    if (!turns) return start;
    const from = angles;
    // Corners make the gaps grow in kinks, over which a whole step may leap to and fro for ever: no step may make it worse.
    for (let part = 1; ; part /= 2) {
      const tried = from.map((angle, index) => angle + part * clamp(turns[index - 1] ?? 0, Math.PI / count));
      const found = gapsOf(outlines, place, tried);
      const isBetter = found.every((gap) => gap > 0) && unevenness(found) < unevenness(gaps);
      if (!isBetter && part > LEAST_PART) continue;
      if (!isBetter) return angles;
      [angles, gaps] = [tried, found];
      break;
    }
  }
  return angles;
}

/** Of a step that is halved until it helps. */
const LEAST_PART = 1e-4;

/** How far gaps are from their mean, mm. */
function unevenness(gaps: readonly number[]): number {
  const mean = gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length;
  return Math.max(...gaps.map((gap) => Math.abs(gap - mean)));
}

function clamp(value: number, most: number): number {
  return Math.min(most, Math.max(-most, value));
}

/** From each window to the next, the last to the first. */
function gapsOf(outlines: readonly Centred[], place: PlaceAt, angles: readonly number[]): number[] {
  const placed = outlines.map((outline, index) => shiftOutline(outline, place(index, angles[index] ?? 0)));
  return placed.map((outline, index) => nearest(outline, placed[(index + 1) % placed.length] ?? outline).distance);
}

const TURN = 1e-6;

/** Unknown are the turns of all windows but the first, and the common gap: `gap + slopes . turns = common`. */
function equations(
  outlines: readonly Centred[],
  place: PlaceAt,
  angles: readonly number[],
  gaps: readonly number[],
): [number[][], number[]] {
  const count = outlines.length;
  const at = (index: number, turn = 0) => {
    const place_ = index % count;
    return shiftOutline(outlines[place_] ?? [], place(place_, (angles[place_] ?? 0) + turn));
  };
  const rows = gaps.map((gap, index) => {
    const [here, there] = [at(index), at(index + 1)];
    const row = Array.from({ length: count }, () => 0);
    const next = (index + 1) % count;
    if (index > 0) row[index - 1] = (nearest(at(index, TURN), there).distance - gap) / TURN;
    if (next > 0) row[next - 1] = (row[next - 1] ?? 0) + (nearest(here, at(next, TURN)).distance - gap) / TURN;
    row[count - 1] = -1;
    return row;
  });
  return [rows, gaps.map((gap) => -gap)];
}
