/** Directions round a ring in which the distance from each window to the next is the same, all round. */
import type { Point } from '../geometry/box';
import { distance } from '../geometry/edge';
import { nearest } from '../geometry/nearness';
import { flatten, shiftOutline, type Outline } from '../geometry/outline';
import { solveLinear } from './solve-linear';

/** A window's outline with its middle at the origin. */
export type Centred = Outline;

/** Where one window's middle lies for a direction, radians anticlockwise. */
export type PlaceAt = (index: number, angle: number) => Point;

/** From the window of an index to the next one round, with their middles at these points, mm. */
type GapBetween = (index: number, here: Point, there: Point) => number;

/** How exactly gaps come out alike, mm. */
const CLOSE = 1e-8;

/** The first window keeps its direction. Where windows run into one another, about as even as they can be. */
export function evenGaps(outlines: readonly Centred[], place: PlaceAt, start: readonly number[]): readonly number[] {
  if (outlines.length < 3) return start;
  const count = outlines.length;
  const trueGap: GapBetween = (index, here, there) => {
    const [one, other] = [outlines[index] ?? [], outlines[(index + 1) % count] ?? []];
    return nearest(shiftOutline(one, here), shiftOutline(other, there)).distance;
  };
  // Equal angles may lay windows over one another, between which there is no distance to be made even.
  let angles = allAtOnce(roughGaps(outlines), place, start, ROUGH);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const gaps = gapsOf(trueGap, place, angles);
    if (gaps.some((gap) => gap <= 0)) return angles;
    if (unevenness(gaps) < CLOSE) break;
    angles = allAtOnce(trueGap, place, round === 0 ? angles : oneByOne(trueGap, place, angles), CLOSE);
  }
  return angles;
}

/** Of moving windows one by one, where moving all at once has come to a stand. */
const MOST_ROUNDS = 9;
/** How even the rough gaps need to be, mm, and how finely outlines are followed for them. */
const ROUGH = 0.01;

/**
 * Along the way from middle to middle, how far the two outlines' shadows on it lie apart: of round shapes nearly the
 * distance itself, and below zero where they run into one another.
 */
function roughGaps(outlines: readonly Centred[]): GapBetween {
  const corners = outlines.map((outline) => flatten(outline, ROUGH));
  const reach = (index: number, way: Point) =>
    Math.max(...(corners[index % corners.length] ?? []).map(({ x, y }) => x * way.x + y * way.y));
  return (index, here, there) => {
    const far = distance(here, there);
    if (far === 0) return -reach(index, { x: 1, y: 0 });
    const way = { x: (there.x - here.x) / far, y: (there.y - here.y) / far };
    return far - reach(index, way) - reach(index + 1, { x: -way.x, y: -way.y });
  };
}

/** Each window but the first halfway between its neighbours, one after the other: slow, but never stuck in a kink. */
function oneByOne(gap: GapBetween, place: PlaceAt, start: readonly number[]): readonly number[] {
  const angles = [...start];
  const count = angles.length;
  for (let index = 1; index < count; index += 1) {
    const [last, next] = [index - 1, (index + 1) % count];
    const here = angles[index] ?? 0;
    const [before, after] = [place(last, angles[last] ?? 0), place(next, angles[next] ?? 0)];
    // Clockwise is away from the last one: angles fall from window to window.
    let [far, near] = [here - Math.PI / count, here + Math.PI / count];
    for (let step = 0; step < 30; step += 1) {
      const middle = (far + near) / 2;
      const at = place(index, middle);
      if (gap(last, before, at) > gap(index, at, after)) far = middle;
      else near = middle;
    }
    angles[index] = (far + near) / 2;
  }
  return angles;
}

/** Newton's method; no further than where it helps. */
function allAtOnce(gap: GapBetween, place: PlaceAt, start: readonly number[], close: number): readonly number[] {
  const count = start.length;
  let [angles, gaps] = [start, gapsOf(gap, place, start)];
  const collides = (all: readonly number[]) => all.some((one) => one === 0);
  for (let round = 0; round < 60 && unevenness(gaps) >= close; round += 1) {
    const turns = solveLinear(...equations(gap, place, angles, gaps));
    if (!turns) return start;
    const from = angles;
    // Corners make the gaps grow in kinks, over which a whole step may leap to and fro for ever: no step may make it worse.
    for (let part = 1; ; part /= 2) {
      const tried = from.map((angle, index) => angle + part * clamp(turns[index - 1] ?? 0, Math.PI / count));
      const found = gapsOf(gap, place, tried);
      const isBetter = !collides(found) && unevenness(found) < unevenness(gaps);
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
function gapsOf(gap: GapBetween, place: PlaceAt, angles: readonly number[]): number[] {
  const middles = angles.map((angle, index) => place(index, angle));
  return middles.map((here, index) => gap(index, here, middles[(index + 1) % middles.length] ?? here));
}

const TURN = 1e-6;

/** Unknown are the turns of all windows but the first, and the common gap: `gap + slopes . turns = common`. */
function equations(
  gap: GapBetween,
  place: PlaceAt,
  angles: readonly number[],
  gaps: readonly number[],
): [number[][], number[]] {
  const count = angles.length;
  const at = (index: number, turn = 0) => place(index % count, (angles[index % count] ?? 0) + turn);
  const rows = gaps.map((found, index) => {
    const [here, there] = [at(index), at(index + 1)];
    const row = Array.from({ length: count }, () => 0);
    const next = (index + 1) % count;
    if (index > 0) row[index - 1] = (gap(index, at(index, TURN), there) - found) / TURN;
    if (next > 0) row[next - 1] = (row[next - 1] ?? 0) + (gap(index, here, at(next, TURN)) - found) / TURN;
    row[count - 1] = -1;
    return row;
  });
  return [rows, gaps.map((found) => -found)];
}
