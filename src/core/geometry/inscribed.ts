/** The largest rectangle inside an outline, its sides lying across and up. */
import type { Box, Point } from './box';
import { boundsOf, flatten, type Outline } from './outline';

/** How finely an outline is followed, mm; the rectangle keeps so far off it. */
const FINE = 0.01;

/** Into how many strips of one height an outline is parted: a rectangle is whole strips high. */
const STRIPS = 120;

interface Line {
  readonly low: Point;
  readonly high: Point;
}

interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * Never beyond the outline. Its area is within a hundredth of the largest in shapes of windows, since sides lying across are
 * at whole strips only; those that stand upright are where the outline lets them.
 *
 * @returns undefined where nothing has room.
 */
export function largestRectangleIn(outline: Outline): Box | undefined {
  const bounds = boundsOf(outline);
  // So far in that an edge lying along the bottom is not in the way of the lowest strip.
  const [bottom, top] = [bounds.bottom + 2 * FINE, bounds.top - 2 * FINE];
  const high = (top - bottom) / STRIPS;
  if (high <= 0) return undefined;
  const lines = linesInStrips(flatten(outline, FINE), bottom, high);
  const open = lines.map((there, strip) => openIn(there, bottom + strip * high, bottom + (strip + 1) * high));
  let best: Box | undefined;
  let most = 0;
  for (let lowest = 0; lowest < STRIPS; lowest++) {
    let spans: readonly Span[] = open[lowest] ?? [];
    // Upwards it only becomes narrower.
    const mayBeMore = () => spans.some(({ from, to }) => (to - from) * (STRIPS - lowest) > most);
    for (let strip = lowest; strip < STRIPS && mayBeMore(); strip++) {
      spans = inBoth(spans, open[strip] ?? []);
      for (const { from, to } of spans) {
        const area = (to - from) * (strip + 1 - lowest);
        if (area <= most) continue;
        most = area;
        best = { left: from, right: to, bottom: bottom + lowest * high, top: bottom + (strip + 1) * high };
      }
    }
  }
  return best;
}

/** Those that pass through each strip or come as near as the outline is followed. */
function linesInStrips(points: readonly Point[], bottom: number, high: number): Line[][] {
  const strips = Array.from({ length: STRIPS }, (): Line[] => []);
  const stripAt = (y: number) => Math.floor((y - bottom) / high);
  points.forEach((a, index) => {
    const b = points[(index + 1) % points.length] ?? a;
    const line = a.y < b.y ? { low: a, high: b } : { low: b, high: a };
    const last = Math.min(STRIPS - 1, stripAt(line.high.y + FINE));
    for (let strip = Math.max(0, stripAt(line.low.y - FINE)); strip <= last; strip++) strips[strip]!.push(line);
  });
  return strips;
}

/** What is inside all through a strip: between the lines that pass through it, as wide as they are there. */
function openIn(lines: readonly Line[], from: number, to: number): Span[] {
  const blocked = merged(
    lines.map(({ low, high }) => {
      const ends = high.y === low.y ? [low.x, high.x] : [xAt(low, high, from - FINE), xAt(low, high, to + FINE)];
      return { from: Math.min(...ends) - FINE, to: Math.max(...ends) + FINE };
    }),
  );
  return blocked.slice(1).flatMap((next, index): Span[] => {
    const span = { from: blocked[index]!.to, to: next.from };
    return isWithin(lines, (span.from + span.to) / 2, (from + to) / 2) ? [span] : [];
  });
}

/** Where a line is at a height, or its nearer end where it does not come there. */
function xAt(low: Point, high: Point, y: number): number {
  return low.x + Math.min(1, Math.max(0, (y - low.y) / (high.y - low.y))) * (high.x - low.x);
}

function merged(spans: readonly Span[]): Span[] {
  const told: Span[] = [];
  for (const span of spans.toSorted((a, b) => a.from - b.from)) {
    const last = told.at(-1);
    if (last && span.from <= last.to) told[told.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
    else told.push(span);
  }
  return told;
}

function inBoth(some: readonly Span[], others: readonly Span[]): Span[] {
  return some.flatMap((one) =>
    others.flatMap((other): Span[] => {
      const both = { from: Math.max(one.from, other.from), to: Math.min(one.to, other.to) };
      return both.to > both.from ? [both] : [];
    }),
  );
}

/** By the crossings of a ray to the right. */
function isWithin(lines: readonly Line[], x: number, y: number): boolean {
  return lines.filter(({ low, high }) => low.y <= y && high.y > y && xAt(low, high, y) > x).length % 2 === 1;
}
