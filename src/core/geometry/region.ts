/** Outlines that cross: where one crosses itself. */
import type { Point } from './box';
import { distance } from './edge';
import { meetingsWithin, type Meeting } from './meetings';
import type { Outline } from './outline';
import { eachPair } from './pairs';
import { SAME } from './tolerance';

/**
 * The first place along the outline at which it crosses or touches itself; undefined of a simple outline. The corner that
 * two neighbours share does not count, what else they have in common does.
 */
export function crossingOf(outline: Outline): Point | undefined {
  // An edge of no length would make neighbours of those beside it that are none.
  const edges = outline.filter(({ kind, from, to }) => kind !== 'line' || distance(from, to) > SAME);
  let first: { at: number; point: Point } | undefined;
  const last = edges.length - 1;
  eachPair(edges, (lower, higher) => {
    if (first && lower > first.at) return;
    const [one, other] = [edges[lower], edges[higher]];
    if (!one || !other) return;
    const isCorner = ({ a, b }: Meeting) =>
      (higher === lower + 1 && a === 1 && b === 0) || (lower === 0 && higher === last && a === 0 && b === 1);
    for (const meeting of meetingsWithin(one, other)) {
      const at = lower + meeting.a;
      if (!isCorner(meeting) && !(first && first.at <= at)) first = { at, point: meeting.point };
    }
  });
  return first?.point;
}
