/** Which windows stand beside one another, found in bands so that the work grows with their number and not its square. */
import { heightOf, type Box } from '../geometry/box';

/** Indices of two boxes, the first left of or below the second. */
export type Pair = readonly [number, number];

/** Pairs of boxes that face each other across a free strip, left to right. */
export function facingAcross(boxes: readonly Box[]): Pair[] {
  const bands = bandsOf(boxes);
  const seen = new Set<number>();
  const pairs: Pair[] = [];
  for (const band of bands) {
    band.forEach((one, place) => {
      const next = band.slice(place + 1, place + 1 + LOOK_AHEAD).find((other) => facing(boxes, one, other));
      const key = one * boxes.length + (next ?? 0);
      if (next === undefined || seen.has(key)) return;
      seen.add(key);
      pairs.push([one, next]);
    });
  }
  return pairs;
}

/** Pairs of boxes that come nearer to one another than a distance, or overlap. */
export function nearPairs(boxes: readonly Box[], distance: number): Pair[] {
  const bands = bandsOf(boxes, distance);
  const seen = new Set<number>();
  const pairs: Pair[] = [];
  for (const band of bands) {
    band.forEach((one, place) => {
      for (let next = place + 1; next < band.length; next += 1) {
        const other = band[next] ?? 0;
        const a = boxes[one];
        const b = boxes[other];
        if (!a || !b || b.left - a.right >= distance) break;
        const key = Math.min(one, other) * boxes.length + Math.max(one, other);
        if (seen.has(key) || separation(a, b) >= distance) continue;
        seen.add(key);
        pairs.push([one, other]);
      }
    });
  }
  return pairs;
}

/** Shortest distance between two boxes, corner to corner where they lie aslant; negative where they overlap. */
export function separation(a: Box, b: Box): number {
  const across = Math.max(a.left - b.right, b.left - a.right);
  const up = Math.max(a.bottom - b.top, b.bottom - a.top);
  if (across > 0 && up > 0) return Math.hypot(across, up);
  return Math.max(across, up);
}

/** The boxes turned so that up becomes across. */
export function turned(boxes: readonly Box[]): Box[] {
  return boxes.map(({ left, bottom, right, top }) => ({ left: bottom, right: top, bottom: left, top: right }));
}

/** A box further along a band than this is never the nearest facing one in practice. */
const LOOK_AHEAD = 64;

/** Horizontal bands of about one box's height, each with the boxes that reach into it from left to right. */
function bandsOf(boxes: readonly Box[], margin = 0): number[][] {
  if (boxes.length === 0) return [];
  const bottom = Math.min(...boxes.map((box) => box.bottom)) - margin;
  const height = Math.max(boxes.reduce((sum, box) => sum + heightOf(box), 0) / boxes.length + 2 * margin, 1e-3);
  const bands = new Map<number, number[]>();
  const order = boxes.map((_, index) => index).sort((a, b) => (boxes[a]?.left ?? 0) - (boxes[b]?.left ?? 0) || a - b);
  for (const index of order) {
    const box = boxes[index];
    if (!box) continue;
    const last = Math.floor((box.top + margin - bottom) / height);
    for (let band = Math.floor((box.bottom - margin - bottom) / height); band <= last; band += 1) {
      const list = bands.get(band);
      if (list) list.push(index);
      else bands.set(band, [index]);
    }
  }
  return [...bands.values()];
}

function facing(boxes: readonly Box[], one: number, other: number): boolean {
  const a = boxes[one];
  const b = boxes[other];
  return !!a && !!b && b.left >= a.right && Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom) > 1e-6;
}
