/** The wall to scale: floor, ceiling and edges as far as they are known, frames by number, hooks, and what is measured of them. */
import type { WallPlan } from '../../core/hanging/wall-plan';
import type { Box, Point } from '../../core/geometry/box';
import type { Block } from '../paper/flow';
import { placeOnWhite, spotsIn } from '../paper/label';
import { PENS } from '../paper/pens';
import { boxRound, Room } from '../paper/room';
import { atScale, boxAtScale, scaleFor, type At } from '../paper/scale';
import type { Surface } from '../paper/surface';
import { lyingDimension } from '../paper/dimension';
import type { WallDrawing } from './wall-shown';
import { drawHeights, HEIGHTS_ROOM } from './wall-heights';
import { acrossRoom, drawAcross } from './wall-across';

/** Beside an unknown edge of the wall, and above the frames under an unknown ceiling, mm of the wall. */
const AIR = 250;
/** Above the wall, right of it, and under the measures across for the scale, mm. */
const ABOVE = 4;
const BESIDE = 4;
const BELOW = 13;

/** In the middle of a width, to the largest scale at which the wall is no higher than `most`, mm. */
export function wallBlock(drawing: WallDrawing, width: number, most: number): Block {
  const shown = shownOf(drawing.wall);
  const size = { width: shown.right - shown.left, height: shown.top - shown.bottom };
  const scale = scaleFor(size, { width: width - HEIGHTS_ROOM - BESIDE, height: most }, drawing.unit);
  const [wide, tall] = [size.width * scale.factor, size.height * scale.factor];
  const across = acrossRoom(drawing);
  return {
    height: ABOVE + tall + across + BELOW,
    draw: (surface, { x, y }) => {
      const corner = { x: x + HEIGHTS_ROOM + (width - HEIGHTS_ROOM - BESIDE - wide) / 2, y: y - ABOVE - tall };
      const whole = atScale(scale, corner);
      const at: At = (point) => whole({ x: point.x - shown.left, y: point.y - shown.bottom });
      drawWall(surface, at, drawing, shown, across);
      const under = { x: corner.x + wide / 2, y: corner.y - across - BELOW + 2 };
      surface.text(`the wall, ${scale.words}`, under, { size: 7, align: 'centre' });
    },
  };
}

function shownOf({ around, width, height }: WallPlan): Box {
  return {
    left: width === undefined ? around.left - AIR : Math.min(0, around.left),
    right: width === undefined ? around.right + AIR : Math.max(width, around.right),
    bottom: Math.min(0, around.bottom),
    top: Math.max(around.top, height ?? around.top + AIR),
  };
}

function drawWall(surface: Surface, at: At, drawing: WallDrawing, shown: Box, across: number): void {
  const { wall } = drawing;
  surface.lines(edgesOf(wall, shown).map(([from, to]) => [at(from), at(to)] as const), PENS.strong); // prettier-ignore
  const room = new Room(boxAtScale(at, shown));
  const lying = (y: number) => [at({ x: shown.left, y }), at({ x: shown.right, y })] as const;
  for (const [y, pen] of [[wall.centre, PENS.axis], [wall.furniture, PENS.behind]] as const) {
    if (y === undefined) continue;
    surface.lines([lying(y)], pen);
    room.takeCrossable(boxRound(...lying(y), 0.3));
  } // prettier-ignore
  drawFrames(surface, at, wall, room);
  drawHeights(surface, at, drawing, shown);
  drawAcross(surface, at, drawing, shown);
  drawWhole(surface, at, drawing, shown.bottom, across);
}

/** Floor always; ceiling and edges where they are known. */
function edgesOf({ width, height }: WallPlan, shown: Box): (readonly [Point, Point])[] {
  const { left, right, top } = shown;
  const upright = (x: number): readonly [Point, Point] => [
    { x, y: 0 },
    { x, y: top },
  ];
  return [
    [{ x: left, y: 0 }, { x: right, y: 0 }],
    ...(height === undefined ? [] : [[{ x: left, y: height }, { x: right, y: height }] as const]),
    ...(width === undefined ? [] : [upright(0), upright(width)]),
  ]; // prettier-ignore
}

const HOOK = 0.8;

/** With the number that the tables have them by, clear of the lines. */
function drawFrames(surface: Surface, at: At, { frames }: WallPlan, room: Room): void {
  const boxes = frames.map(({ box }) => boxAtScale(at, box));
  surface.boxes(boxes, PENS.edge);
  const hooks = frames.flatMap((frame) => frame.hooks.map(({ seat }) => at(seat)));
  for (const { x, y } of hooks) {
    surface.lines(
      [
        [{ x: x - HOOK, y }, { x: x + HOOK, y }],
        [{ x, y: y - HOOK }, { x, y: y + HOOK }],
      ],
      PENS.cut,
    ); // prettier-ignore
    room.take(boxRound({ x, y }, { x, y }, HOOK + 0.2));
  }
  for (const box of boxes) {
    const sides = [box.left, box.right].map((x) => boxRound({ x, y: box.bottom }, { x, y: box.top }, 0.1));
    for (const side of sides) room.takeCrossable(side);
  }
  frames.forEach(({ number }, index) => {
    const box = boxes[index];
    if (!box) return;
    const words = String(number);
    const size = Math.min(11, (box.top - box.bottom) * 1.2, ((box.right - box.left) * 2) / words.length);
    const label = (points: number) => ({ lines: [{ words, size: points, weight: 'bold' as const }], turn: 0 as const });
    if (size >= 4) placeOnWhite(surface, room, [label(size), label(Math.max(4, size * 0.6))], spotsIn(box));
  });
}

/** From the edges of the wall to the frames, and how far they reach. */
function drawWhole(
  surface: Surface,
  at: At,
  { wall: { around, width }, length }: WallDrawing,
  floor: number,
  across: number,
): void {
  const y = at({ x: 0, y: floor }).y - across - 5;
  const dimension = (from: number, to: number) => {
    if (to - from > 1e-6) lyingDimension(surface, at({ x: from, y: 0 }).x, at({ x: to, y: 0 }).x, y, length(to - from));
  };
  dimension(around.left, around.right);
  if (width === undefined) return;
  dimension(0, around.left);
  dimension(around.right, width);
}
