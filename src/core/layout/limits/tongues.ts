/** Tongues of board that reach into one window: its own outline may leave less of them than can be cut. */
import type { Box, Point } from '../../geometry/box';
import { directionOn, distance, lengthOfEdge, pointOn, type Edge } from '../../geometry/edge';
import { nearest, nearestOn } from '../../geometry/nearness';
import { partBeside } from '../../geometry/carrier';
import { boundsOf, lengthOf, type Outline } from '../../geometry/outline';
import { windingOf } from '../../geometry/winding';
import type { Problem } from '../../problem';
import type { PlacedLayout, PlacedWindow } from '../layout';
import { openingOutline } from '../shaped-openings';
import type { Show } from '../show';
import { BRIDGE_WARN } from './bridges';
import { SLACK, titled } from './slack';

/** Along an edge, from one place that is looked at to the next, mm. */
const STEP = 2;
/** Board that is narrow for less than this many times its width is a corner or a lobe, no tongue. */
const LONG = 3;
/** Sides of a tongue run beside one another: the way across stands square to both, but for so much. */
const SQUARE = 0.1;

/** One warning for each window that has any, telling of the narrowest. */
export function narrowTongues({ windows }: PlacedLayout, show: Show): Problem[] {
  return windows.flatMap((window): Problem[] => {
    const widths = tonguesOf(window);
    const width = Math.min(...widths);
    if (!(width < BRIDGE_WARN - SLACK)) return [];
    const layer = widths.indexOf(width) + 1;
    const found = show.missing(width, BRIDGE_WARN);
    return [
      {
        code: 'tongue-narrow',
        severity: 'warning',
        at: window.at,
        message: `Window ${window.name} ${titled(window.title)}leaves a tongue of board in its own outline that is only ${found} wide in layer ${layer}; it bends and tears easily under ${show.limit(BRIDGE_WARN)}.`,
        value: found,
        limit: show.limit(BRIDGE_WARN),
        remedy: 'an outline that leaves it wider, a larger window, or narrower reveals',
      },
    ];
  });
}

/** Width of the narrowest in each layer; only drawings of one's own and joined openings turn back on themselves so far. */
function tonguesOf({ shape, layers }: PlacedWindow): number[] {
  if (shape !== 'outline' && shape !== 'joined') return [];
  return layers.map((layer) => narrowest(openingOutline(layer)));
}

/** Infinity where there is none. */
function narrowest(outline: Outline): number {
  const whole = lengthOf(outline);
  const isInside = windingOf(outline);
  const edges = placesAlong(outline);
  let least = Infinity;
  let sides: readonly Edge[] = [];
  for (const one of edges) {
    for (const { point, at, way } of samplesOf(one)) {
      for (const other of edges) {
        const limit = Math.min(least, BRIDGE_WARN);
        if (other === one || outOf(other.box, point) >= limit) continue;
        const across = acrossTo(other, point);
        if (across.width >= limit || across.width < SLACK) continue;
        const along = Math.abs(at - across.at);
        if (Math.min(along, whole - along) < LONG * across.width) continue;
        if (!across.isSquareTo(way)) continue;
        if (isInside(across.middle) === 0) [least, sides] = [across.width, [one.edge, other.edge]];
      }
    }
  }
  // Between the places that are looked at its sides may come a little nearer.
  const [one, other] = sides;
  const exact = one && other ? nearest([one], [other]).distance : least;
  return least - exact < STEP ? exact : least;
}

/** An edge, how far along the outline it begins, and the box round it. */
interface Placed {
  readonly edge: Edge;
  readonly start: number;
  readonly length: number;
  readonly box: Box;
}

function placesAlong(outline: Outline): Placed[] {
  let start = 0;
  return outline.map((edge) => {
    const length = lengthOfEdge(edge);
    const placed = { edge, start, length, box: boundsOf([edge]) };
    start += length;
    return placed;
  });
}

function samplesOf({ edge, start, length }: Placed) {
  const count = Math.max(1, Math.ceil(length / STEP));
  return Array.from({ length: count }, (_, index) => {
    const part = (index + 0.5) / count;
    return { point: pointOn(edge, part), at: start + part * length, way: directionOn(edge, part) };
  });
}

/** From a point straight to another edge. */
function acrossTo({ edge, start, length }: Placed, from: Point) {
  const to = nearestOn(edge, from);
  const part = Math.min(1, Math.max(0, partBeside(edge, to)));
  const width = distance(from, to);
  const across = { x: (to.x - from.x) / width, y: (to.y - from.y) / width };
  const there = directionOn(edge, part);
  const slant = (way: Point) => Math.abs(across.x * way.x + across.y * way.y);
  return {
    width,
    at: start + part * length,
    middle: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
    isSquareTo: (way: Point) => slant(way) < SQUARE && slant(there) < SQUARE,
  };
}

function outOf(box: Box, { x, y }: Point): number {
  return Math.hypot(Math.max(0, box.left - x, x - box.right), Math.max(0, box.bottom - y, y - box.top));
}
