/** A ring of windows as one cell: the box round all of them, and where each lies in it. */
import { around as boxesAround, sizeOf, type Box, type Point, type Size } from '../geometry/box';
import type { Job, RingItem } from '../job/job';
import type { Group, Leaf, Ring } from './cells';
import { leafOf } from './leaf';
import { ringPoints } from './ring';

export function ringOf(item: RingItem, job: Job, groups: readonly Group[]): Ring {
  const cells: Leaf[] = [];
  // Its windows know the ring they stand in, and the ring has its size only when they have theirs.
  const ring: { -readonly [key in keyof Ring]: Ring[key] } = {
    kind: 'ring',
    cells,
    around: [],
    corners: [],
    size: { width: 0, height: 0 },
    gapAt: `${item.at}.${item.on ? 'on' : 'gap'}`,
    ...(item.on ? {} : { gap: item.gap }),
  };
  const inside = [...groups, ring];
  const middle = item.middle && leafOf(item.middle, job, inside);
  const around = item.around.map((window) => leafOf(window, job, inside));
  const points = [...(middle ? [ORIGIN] : []), ...ringPoints(item, middle, around)];
  ring.around = around;
  cells.push(...(middle ? [middle] : []), ...around);
  const boxes = cells.map(({ size }, index) => boxRound(points[index] ?? ORIGIN, size));
  const whole = boxesAround(boxes) ?? boxRound(ORIGIN, { width: 0, height: 0 });
  ring.corners = boxes.map(({ left, bottom }) => ({ x: left - whole.left, y: bottom - whole.bottom }));
  ring.size = sizeOf(whole);
  return ring;
}

const ORIGIN: Point = { x: 0, y: 0 };

function boxRound({ x, y }: Point, { width, height }: Size): Box {
  return { left: x - width / 2, right: x + width / 2, bottom: y - height / 2, top: y + height / 2 };
}
