/** The part of the wall that a template covers: round all hook seats and nails, from an origin on a round measure. */
import type { Box, Point, Size } from '../../core/geometry/box';
import type { HangerKind } from '../../core/job/hanging';
import type { HungFrame, WallPlan } from '../../core/hanging/wall-plan';
import { MM_PER_INCH, type Showing } from '../../core/units';
import type { Matter } from '../template/matter';
import { clipLine, cornersOf, shared } from '../template/view-geometry';

export interface WallMark {
  /** The nail's hole, or where the wire or ring sits. */
  readonly kind: 'nail' | 'seat';
  /** From the origin. */
  readonly at: Point;
  readonly frame: HungFrame;
  /** `left`, `right`, or nothing where there is one hook. */
  readonly hook: 'left' | 'right' | '';
  /** What is pricked through: the nail's hole, or the seat where the hole is unknown. */
  readonly isMain: boolean;
}

export interface WallArea {
  /** What sits on the hooks. */
  readonly kind: HangerKind;
  /** The lower left corner, on the wall. */
  readonly origin: Point;
  /** Of the origin from the edge that places are counted from. */
  readonly fromEdge: number;
  readonly size: Size;
  readonly marks: readonly WallMark[];
  /** Of the frames, from the origin; they reach past the area. */
  readonly outlines: readonly { readonly frame: HungFrame; readonly box: Box }[];
  /** Of the level line, which runs through the lowest seats, from the origin. */
  readonly level: number;
}

/** Round the marks, mm: nothing that matters lies nearer to the edge. */
const AIR = 30;
/** The top of a frame is shown where it lies no further above its hooks than this, mm. */
const TOP_REACH = 80;
/** Round a mark, mm: a page that holds so much of it is printed. */
const REACH = 12;

export function wallArea(wall: WallPlan, showing: Showing): WallArea {
  const step = showing.unit === 'in' ? MM_PER_INCH / 4 : 5;
  const points = wall.frames.flatMap(({ hooks }) => hooks.flatMap(({ seat, nail }) => (nail ? [seat, nail] : [seat])));
  const tops = wall.frames.flatMap(({ box, hooks }) =>
    hooks.some(({ seat }) => box.top - seat.y <= TOP_REACH) ? [box.top - AIR / 2] : [],
  );
  const down = (mm: number) => Math.floor(mm / step + 1e-9) * step;
  const up = (mm: number) => Math.ceil(mm / step - 1e-9) * step;
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const left = Math.min(...xs) - AIR;
  // Its distance from the edge that is counted from is the round one.
  const fromEdge = wall.from === 'left' ? down(left) : up(widthCounted(wall) - left);
  const origin = { x: wall.from === 'left' ? fromEdge : widthCounted(wall) - fromEdge, y: down(Math.min(...ys) - AIR) };
  const size = {
    width: up(Math.max(...xs) + AIR - origin.x),
    height: up(Math.max(...ys, ...tops) + AIR - origin.y),
  };
  const seats = wall.frames.flatMap(({ hooks }) => hooks.map(({ seat }) => seat.y));
  return {
    kind: wall.kind,
    origin,
    fromEdge,
    size,
    marks: wall.frames.flatMap((frame) => marksOf(frame, origin)),
    outlines: wall.frames.map((frame) => ({ frame, box: fromOrigin(frame.box, origin) })),
    level: Math.min(...seats) - origin.y,
  };
}

/** From the left edge of what is counted to the right one. */
function widthCounted({ frames }: WallPlan): number {
  const [first] = frames;
  return first ? first.near + first.box.right : 0;
}

function marksOf(frame: HungFrame, origin: Point): WallMark[] {
  const relative = ({ x, y }: Point): Point => ({ x: x - origin.x, y: y - origin.y });
  return frame.hooks.flatMap(({ seat, nail }, index) => {
    const hook = frame.hooks.length === 1 ? '' : index === 0 ? 'left' : 'right';
    const mark = (kind: WallMark['kind'], point: Point): WallMark => ({
      kind,
      at: relative(point),
      frame,
      hook,
      isMain: kind === 'nail' || nail === undefined,
    });
    return [mark('seat', seat), ...(nail ? [mark('nail', nail)] : [])];
  });
}

function fromOrigin(box: Box, { x, y }: Point): Box {
  return { left: box.left - x, right: box.right - x, bottom: box.bottom - y, top: box.top - y };
}

/** What the pages of a wall template hold. */
export function wallMatter({ size, marks, outlines, level }: WallArea): Matter {
  const rooms = marks.map(({ at: { x, y } }) => ({
    left: x - REACH,
    right: x + REACH,
    bottom: y - REACH,
    top: y + REACH,
  }));
  const meets = (part: Box) => rooms.some((room) => shared(room, part) !== undefined);
  // The letter of a join is not to lie under an edge or the level line.
  const isCrossed = (part: Box) =>
    (level > part.bottom && level < part.top) ||
    outlines.some(({ box }) => {
      const corners = cornersOf(box);
      return corners.some((corner, index) => clipLine(corner, corners[(index + 1) % 4] ?? corner, part));
    });
  return {
    blank: size,
    avoid: { across: marks.map(({ at }) => at.x), up: marks.map(({ at }) => at.y) },
    holds: meets,
    meets: (spot) => meets(spot) || isCrossed(spot),
  };
}
