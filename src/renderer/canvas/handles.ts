/** Points on the mat to drag a shape's measure by: where each lies, what it changes and how far it can go. */
import { grow, heightOf, SIDES, widthOf, type Box, type Point, type Side, type Size } from '../../core/geometry/box';
import { itemAt } from '../../core/job/item-at';
import type { Job, RingItem, WindowItem } from '../../core/job/job';
import type { Layout, PlacedWindow } from '../../core/layout/layout';
import { measureOf, type Measure } from '../../core/layout/leaf-shape';
import type { Edit } from '../../core/problem';
import { exactText } from '../../core/job/exact-text';

export interface Handle {
  /** Path of what it changes, to be lit. */
  readonly at: string;
  readonly label: string;
  /** mm, in front view. */
  readonly point: Point;
  /** How far it moves for each millimetre the value grows. */
  readonly along: Point;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  /** `text`: the new value as it is to be written. */
  readonly edits: (text: string) => readonly Edit[];
}

/** The handles of what is selected; none of a plain rectangle or a row. */
export function handlesOf(job: Job, layout: Layout, selected: string | undefined): readonly Handle[] {
  // What is said of shapes is kept for a mat.
  const item = selected === undefined || layout.layers.length === 0 ? undefined : itemAt(job, selected);
  if (item?.kind === 'window') return [...shapeHandle(item, job, layout), ...joinedHandles(item, layout)];
  return item?.kind === 'ring' ? ellipseHandles(item, job, layout) : [];
}

const LABELS: Readonly<Record<Measure['key'], string>> = {
  radius: 'Radius of the corners',
  rise: 'Rise of the arch',
  cut: 'Cut of the corners',
  step: 'Step of the corners',
};

function shapeHandle(item: WindowItem, job: Job, layout: Layout): readonly Handle[] {
  const placed = layout.windows.find(({ at }) => at === item.at);
  if (!placed) return [];
  const box = measuredBox(placed, job, layout);
  const [width, height] = item.turned % 180 === 0 ? [widthOf(box), heightOf(box)] : [heightOf(box), widthOf(box)];
  const measure = measureOf(item.shape, { width, height });
  if (!measure) return [];
  const { key, value, most, least = 0 } = measure;
  const at = `${item.at}.shape.${key}`;
  const own = inItsSize(item, key, value, { width, height });
  return [
    {
      at,
      label: LABELS[key],
      ...turnedWith(item, box, { width, height }, own),
      value,
      least,
      most,
      edits: (text) => [{ at, value: text }],
    },
  ];
}

/** Round the window itself, where its size is meant. */
function measuredBox({ main, window, windowAtFace }: PlacedWindow, job: Job, layout: Layout): Box {
  const bevel = layout.layers.at(-1)?.bevel;
  if (job.measuredAt === 'opening' || bevel?.direction !== 'standard') return main ?? window;
  return main ? grow(main, bevel.run) : windowAtFace;
}

interface Spot {
  readonly point: Point;
  readonly along: Point;
}

/** Before the window is turned, from its own lower left corner: at the foot of the arch, or where the left corner's top ends. */
function inItsSize({ shape }: WindowItem, key: Measure['key'], value: number, { height }: Size): Spot {
  if (key === 'rise') return { point: { x: 0, y: height - value }, along: { x: 0, y: -1 } };
  const count = shape.kind === 'stepped' ? shape.count : 1;
  return { point: { x: value * count, y: height }, along: { x: count, y: 0 } };
}

function turnedWith(item: WindowItem, box: Box, { width, height }: Size, { point, along }: Spot): Spot {
  const way = turnedWay(item);
  const fromMiddle = way({ x: point.x - width / 2, y: point.y - height / 2 });
  const middle = middleOf(box);
  return { point: { x: middle.x + fromMiddle.x, y: middle.y + fromMiddle.y }, along: way(along) };
}

/** How directions turn with a window. */
function turnedWay({ turned, mirrored }: WindowItem): (way: Point) => Point {
  const over = mirrored ? -1 : 1;
  const turn = (turned * Math.PI) / 180;
  const [cos, sin] = [Math.round(Math.cos(turn)), Math.round(Math.sin(turn))];
  return ({ x, y }) => ({ x: over * x * cos - y * sin, y: over * x * sin + y * cos });
}

function middleOf({ left, right, bottom, top }: Box): Point {
  return { x: (left + right) / 2, y: (bottom + top) / 2 };
}

/** Inward from each edge of a window. */
const INWARD: Readonly<Record<Side, Point>> = {
  left: { x: 1, y: 0 },
  right: { x: -1, y: 0 },
  bottom: { x: 0, y: 1 },
  top: { x: 0, y: -1 },
};

/** In the middle of each side that a joined opening is held by. */
function joinedHandles(item: WindowItem, layout: Layout): readonly Handle[] {
  const parts = layout.windows.find(({ at }) => at === item.at)?.parts ?? [];
  const way = turnedWay(item);
  const most = Math.max(layout.frame.blank.width, layout.frame.blank.height);
  return item.joined.flatMap((part, index) =>
    SIDES.flatMap((side): Handle[] => {
      const box = parts[index]?.box;
      const value = part[side];
      if (!box || value === undefined) return [];
      const along = way(INWARD[side]);
      const middle = middleOf(box);
      const point = {
        x: middle.x - (along.x * widthOf(box)) / 2,
        y: middle.y - (along.y * heightOf(box)) / 2,
      };
      const at = `${part.at}.at.${side}`;
      const label = `Joined opening ${index + 1} from the ${side}`;
      return [{ at, label, point, along, value, least: -most, most, edits: (text) => [{ at, value: text }] }];
    }),
  );
}

/** The ends of the right and the upper axis of the ellipse that a ring's windows stand on. */
function ellipseHandles(ring: RingItem, job: Job, layout: Layout): readonly Handle[] {
  const { on } = ring;
  const first = on && ringMiddle(ring, on, layout);
  if (!on || !first) return [];
  const at = `${ring.at}.on`;
  const most = Math.max(layout.frame.blank.width, layout.frame.blank.height);
  const end = (side: 'width' | 'height', along: Point): Handle => ({
    at,
    label: side === 'width' ? 'Width of the ellipse' : 'Height of the ellipse',
    point: { x: first.x + along.x * on[side], y: first.y + along.y * on[side] },
    along,
    value: on[side],
    least: 1,
    most,
    edits: (text) => [
      {
        at,
        value:
          side === 'width'
            ? `${text} x ${exactText(on.height, job.units)}`
            : `${exactText(on.width, job.units)} x ${text}`,
      },
    ],
  });
  return [end('width', { x: 0.5, y: 0 }), end('height', { x: 0, y: 0.5 })];
}

/** From the middle window, or else back from the first window, whose direction is known with equal angles and equal gaps alike. */
function ringMiddle(ring: RingItem, on: Size, layout: Layout): Point | undefined {
  const at = ring.middle?.at ?? ring.around[0]?.at;
  const box = layout.windows.find((window) => window.at === at)?.window;
  if (!box) return undefined;
  const middle = { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 };
  if (ring.middle) return middle;
  return {
    x: middle.x - (on.width / 2) * Math.cos(ring.start),
    y: middle.y - (on.height / 2) * Math.sin(ring.start),
  };
}
