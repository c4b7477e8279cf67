/** The board left between windows: wide enough to be cut and to hold. */
import { apart } from '../../geometry/nearness';
import type { Job } from '../../job/job';
import type { Edit, Problem } from '../../problem';
import { MM_PER_INCH } from '../../units';
import type { Leaf } from '../cells';
import { gapPath } from '../gaps';
import type { Gap, PlacedLayout, PlacedWindow } from '../layout';
import { nearPairs, separation } from '../neighbours';
import { openingOutline } from '../shaped-openings';
import type { Show } from '../show';
import { ringRemedy } from './rings';
import { SLACK } from './slack';

/** Board left between two openings, mm: warn under 3/4 in, refuse under 3/8 in. Common practice, no source. */
export const BRIDGE_WARN = 0.75 * MM_PER_INCH;
const BRIDGE_LEAST = 0.375 * MM_PER_INCH;

/** Nearer than this windows are said to touch, mm: no blade tells it, and how far shapes lie apart is found less exactly. */
const TOUCHING = 0.001;

/** Two windows, and the board between them in the top layer, where it is narrowest. */
interface Bridge {
  readonly one: number;
  readonly other: number;
  readonly width: number;
  /** Undefined where the windows stand aslant to one another, or lie in each other. */
  readonly gap: Gap | undefined;
  /** Path of the gap that governs it, or of a window. */
  readonly at: string;
}

/** One problem for each written gap that leaves too little, telling of the narrowest bridge. */
export function narrowBridges(job: Job, layout: PlacedLayout, leaves: readonly Leaf[], show: Show): Problem[] {
  const groups = new Map<string, Bridge[]>();
  for (const bridge of bridgesOf(layout, leaves)) {
    const group = groups.get(bridge.at);
    if (group) group.push(bridge);
    else groups.set(bridge.at, [bridge]);
  }
  return [...groups.values()].map((group) => {
    const narrowest = group.reduce((a, b) => (b.width < a.width ? b : a));
    return bridgeProblem(job, layout, leaves, narrowest, group.length - 1, show);
  });
}

function bridgesOf(layout: PlacedLayout, leaves: readonly Leaf[]): Bridge[] {
  const openings = layout.windows.map((window) => window.layers[0]?.opening ?? window.window);
  const gaps = new Map(layout.gaps.map((gap) => [pairKey(...gap.between), gap]));
  return nearPairs(openings, BRIDGE_WARN - SLACK).flatMap(([one, other]) => {
    const [a, b] = [openings[one], openings[other]];
    if (!a || !b) return [];
    const gap = gaps.get(pairKey(one, other));
    const at =
      gap?.at ??
      gapPath('across', leaves[one], leaves[other]) ??
      gapPath('up', leaves[one], leaves[other]) ??
      layout.windows[other]?.at ??
      '';
    const width = widthBetween(layout.windows[one], layout.windows[other]) ?? separation(a, b);
    return width < BRIDGE_WARN - SLACK ? [{ one, other, width, gap, at }] : [];
  });
}

/** Board between the top layer's openings of two windows of which one at least is no rectangle; undefined of two rectangles. */
function widthBetween(one: PlacedWindow | undefined, other: PlacedWindow | undefined): number | undefined {
  const [a, b] = [one?.layers[0], other?.layers[0]];
  if (!a || !b || !(a.outlines ?? b.outlines)) return undefined;
  return apart(openingOutline(a), openingOutline(b));
}

function bridgeProblem(
  job: Job,
  layout: PlacedLayout,
  leaves: readonly Leaf[],
  bridge: Bridge,
  more: number,
  show: Show,
): Problem {
  const { at, width, gap } = bridge;
  const severe = width < BRIDGE_LEAST - SLACK;
  const limit = severe ? BRIDGE_LEAST : BRIDGE_WARN;
  const limits = severe ? [BRIDGE_LEAST, BRIDGE_WARN] : [BRIDGE_WARN];
  const ring = ringRemedy(job, layout, leaves, at, { narrowest: width, limits }, show);
  const remedy = ring?.remedy ?? remedyOf(bridge, severe, show);
  const wanted = gap && show.stepUp(gap.gap - gap.bridge + BRIDGE_WARN);
  return {
    code: width <= TOUCHING ? 'windows-collide' : 'bridge-narrow',
    severity: severe ? 'error' : 'warning',
    at,
    message: `${foundOf(layout, bridge, more, limit, show)}. ${(ring ?? gap) ? `A${remedy.slice(1)} would do` : `M${remedy.slice(1)}`}.`,
    value: show.missing(width, limit),
    limit: show.limit(limit),
    remedy,
    ...(ring ? { fix: ring.fix } : {}),
    ...(!ring && wanted !== undefined && /gap$/i.test(at)
      ? { fix: { label: `Make the gap ${show.limit(wanted)}`, edits: gapEdits(job, at, show.exact(wanted)) } }
      : {}),
  };
}

function foundOf(layout: PlacedLayout, { one, other, width }: Bridge, more: number, limit: number, show: Show): string {
  const names = `${layout.windows[one]?.name} and ${layout.windows[other]?.name}`;
  const others = more > 0 ? ` (and between ${more} more)` : '';
  if (width < -TOUCHING)
    return `In the top layer windows ${names} run into each other by ${show.length(-width)}${others}`;
  if (width <= TOUCHING) return `In the top layer windows ${names} touch${others}`;
  const why =
    limit === BRIDGE_LEAST
      ? `under ${show.limit(limit)} it cannot be cut safely`
      : `it bends and tears easily under ${show.limit(limit)}`;
  return `Only ${show.missing(width, limit)} of board is left between windows ${names} in the top layer${others}; ${why}`;
}

/** What can be cut, and what holds well, on the step that lengths are shown to. */
function remedyOf({ gap, width }: Bridge, severe: boolean, show: Show): string {
  const from = (limit: number) => show.limit(show.stepUp((gap ? gap.gap - gap.bridge : -width) + limit));
  const least = severe ? `at least ${from(BRIDGE_LEAST)}, better ` : '';
  if (!gap) return `move them ${least}${from(BRIDGE_WARN)} further apart`;
  return `a gap of ${least}${from(BRIDGE_WARN)}${severe ? '' : ' or more'}`;
}

/** A gap can only be written in a group that is written. */
function gapEdits(job: Job, at: string, value: string): Edit[] {
  const spelledOut = job.impliedWindows === undefined ? [] : [{ at: 'windows', value: job.impliedWindows }];
  return [...spelledOut, { at, value }];
}

function pairKey(one: number, other: number): string {
  return one < other ? `${one} ${other}` : `${other} ${one}`;
}
