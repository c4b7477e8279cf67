/** The least gap, or the least ellipse, with which the windows of a ring keep enough board between them. */
import type { Point, Size } from '../../geometry/box';
import { isInside, nearest } from '../../geometry/nearness';
import { boundsOf, shiftOutline, type Outline } from '../../geometry/outline';
import { itemAt } from '../../job/item-at';
import type { Job, RingItem } from '../../job/job';
import { assert, type Fix } from '../../problem';
import { showingOf, stepLength } from '../../units';
import type { Leaf } from '../cells';
import type { PlacedLayout } from '../layout';
import { separation } from '../neighbours';
import { ringPoints } from '../ring';
import { openingOutline } from '../shaped-openings';
import type { Show } from '../show';
import { SLACK } from './slack';

interface RingRemedy {
  /** Such as `a gap of at least 1 1/8 in, better 1 1/2 in`. */
  readonly remedy: string;
  readonly fix: Fix;
}

/**
 * Of the ring whose gap or ellipse stands at this path: what leaves the first of the limits, and the last. Undefined of
 * every other path, and where no ring of any real size would do.
 */
export function ringRemedy(
  job: Job,
  layout: PlacedLayout,
  leaves: readonly Leaf[],
  at: string,
  { narrowest, limits }: { readonly narrowest: number; readonly limits: readonly number[] },
  show: Show,
): RingRemedy | undefined {
  const item = itemAt(job, at.replace(/\.(gap|on)$/, ''));
  if (item?.kind !== 'ring') return undefined;
  const step = stepLength(showingOf(job));
  const measure = item.on ? ellipseOf(item, item.on, step, show) : gapOf(item, step, show);
  const width = widthWith(item, layout, leaves, measure);
  // Round a circle the way round grows by 2 pi of what the radius does, and each window has a part of it.
  const slope = Math.min(1, (2 * Math.PI) / item.around.length) * step * (item.on ? 0.5 : 1);
  const found: (number | undefined)[] = [];
  for (const limit of limits) {
    const from = found.at(-1) ?? measure.from;
    found.push(
      leastSteps(
        from,
        LARGEST / step,
        limit - SLACK - (found.length > 0 ? width(from) : narrowest),
        slope,
        (steps) => width(steps) - limit + SLACK,
      ),
    );
  }
  const [least, best] = [found[0], found.at(-1)];
  if (least === undefined || best === undefined) return undefined;
  const [first, second] = [measure.words(least), measure.words(best)];
  const value = first === second ? `${second} or more` : `at least ${first}, better ${second}`;
  return {
    remedy: `${item.on ? 'an ellipse' : 'a gap'} of ${value}`,
    fix: { label: `Make the ${item.on ? 'ellipse' : 'gap'} ${second}`, edits: [{ at, value: second }] },
  };
}

/** Beyond which a ring is none that anyone would frame, mm. */
const LARGEST = 5000;

/** What governs how far out the windows stand, in whole steps that lengths are shown to. */
interface Measure {
  /** As many as are written, or a little fewer. */
  readonly from: number;
  readonly ring: (steps: number) => RingItem;
  readonly words: (steps: number) => string;
}

function gapOf(item: RingItem, step: number, show: Show): Measure {
  return {
    from: Math.floor(item.gap / step),
    ring: (steps) => ({ ...item, gap: steps * step }),
    words: (steps) => show.limit(steps * step),
  };
}

/** In its proportions, as near as steps come to them. */
function ellipseOf(item: RingItem, on: Size, step: number, show: Show): Measure {
  const sized = (steps: number): Size => ({
    width: steps * step,
    height: show.stepUp((steps * step * on.height) / on.width),
  });
  return {
    from: Math.floor(on.width / step),
    ring: (steps) => ({ ...item, on: sized(steps) }),
    words: (steps) => show.size(sized(steps)),
  };
}

/** The least board between any two windows of the ring in the top layer, for each number of steps found once. */
function widthWith(
  { at, middle, around }: RingItem,
  layout: PlacedLayout,
  leaves: readonly Leaf[],
  { ring }: Measure,
): (steps: number) => number {
  const indices = [...(middle ? [middle] : []), ...around].map((one) => leaves.findIndex((leaf) => leaf.at === one.at));
  assert(!indices.includes(-1), `all windows of ${at} are placed`);
  const cells = indices.flatMap((index) => leaves[index] ?? []);
  const tops = indices.map((index) => topOf(layout, index));
  const widths = new Map<number, number>();
  const widthOf = (steps: number) => {
    const points = middle
      ? [ORIGIN, ...ringPoints(ring(steps), cells[0], cells.slice(1))]
      : ringPoints(ring(steps), undefined, cells);
    return leastBetween(tops.map((top, index) => shiftOutline(top, points[index] ?? ORIGIN)));
  };
  return (steps) => {
    const width = widths.get(steps) ?? widthOf(steps);
    widths.set(steps, width);
    return width;
  };
}

const ORIGIN: Point = { x: 0, y: 0 };

function leastBetween(outlines: readonly Outline[]): number {
  const boxes = outlines.map(boundsOf);
  let least = Infinity;
  outlines.forEach((one, index) => {
    for (let next = index + 1; next < outlines.length && least > 0; next += 1) {
      const [box, beside, other] = [boxes[index], boxes[next], outlines[next]];
      if (!box || !beside || !other || separation(box, beside) >= least) continue;
      least = Math.min(least, between(one, other));
    }
  });
  return least;
}

/** What is seen through the top layer, about the middle of the window. */
function topOf({ windows }: PlacedLayout, index: number): Outline {
  const window = windows[index];
  const top = window?.layers[0];
  assert(window && top, 'every leaf is a window of every layer');
  const { left, right, bottom, top: upper } = window.window;
  return shiftOutline(openingOutline(top), { x: -(left + right) / 2, y: -(bottom + upper) / 2 });
}

/** 0 where they cross or one lies in the other. */
function between(one: Outline, other: Outline): number {
  const [a, b] = [one[0], other[0]];
  if (a && b && (isInside(one, b.from) || isInside(other, a.from))) return 0;
  return nearest(one, other).distance;
}

/**
 * The fewest steps over `from` that leave more than is needed. Windows that run into one another are slow to place and
 * tell nothing of how much is lacking, so that it is come at from above, along the slope.
 *
 * @param lacking with `from` steps. @param slope what one step more adds, at first about.
 */
function leastSteps(
  from: number,
  most: number,
  lacking: number,
  slope: number,
  over: (steps: number) => number,
): number | undefined {
  let [short, enough] = [from, from + Math.max(1, Math.ceil((1.25 * lacking) / slope))];
  while (over(enough) < 0) {
    [short, enough] = [enough, from + 2 * (enough - from)];
    if (enough > most) return undefined;
  }
  let rise = slope;
  for (let turn = 0; enough - short > 1; turn += 1) {
    const along = enough - Math.floor(over(enough) / rise);
    const halfway = Math.floor((short + enough) / 2);
    const tried = turn < MOST_ALONG ? Math.min(enough - 1, Math.max(short + 1, along)) : halfway;
    const found = (over(enough) - over(tried)) / (enough - tried);
    if (found > 0) rise = found;
    if (over(tried) >= 0) enough = tried;
    else short = tried;
  }
  return enough;
}

/** Of steps along the slope, before halving. */
const MOST_ALONG = 6;
