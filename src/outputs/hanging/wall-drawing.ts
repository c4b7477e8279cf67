/** The wall to scale: floor, ceiling and edges as far as they are known, frames by number, hooks, the centre line. */
import type { Box, Point } from '../../core/geometry/box';
import type { WallPlan } from '../../core/hanging/wall-plan';
import { PENS } from '../paper/pens';
import type { Surface } from '../paper/surface';
import { lyingDimension, standingDimension } from './dimension';
import { boxAtScale, scaleInto, type Scaled } from './scale';

/** Beside an unknown edge of the wall, and above the frames under an unknown ceiling, mm of the wall. */
const AIR = 250;
const BESIDE = { left: 14, right: 4, bottom: 9, top: 3 };

export function drawWall(surface: Surface, room: Box, wall: WallPlan, length: (mm: number) => string): void {
  const { around } = wall;
  const shown: Box = {
    left: wall.width === undefined ? around.left - AIR : Math.min(0, around.left),
    right: wall.width === undefined ? around.right + AIR : Math.max(wall.width, around.right),
    bottom: Math.min(0, around.bottom),
    top: Math.max(around.top, wall.height ?? around.top + AIR),
  };
  const inner = {
    left: room.left + BESIDE.left,
    right: room.right - BESIDE.right,
    bottom: room.bottom + BESIDE.bottom,
    top: room.top - BESIDE.top,
  };
  const whole = scaleInto(inner, { width: shown.right - shown.left, height: shown.top - shown.bottom });
  const at = ({ x, y }: Point) => whole.at({ x: x - shown.left, y: y - shown.bottom });
  const scaled: Scaled = { ...whole, at };
  surface.lines(edgesOf(wall, shown).map(([from, to]) => [at(from), at(to)] as const), PENS.strong); // prettier-ignore
  surface.line(at({ x: shown.left, y: wall.centre }), at({ x: shown.right, y: wall.centre }), PENS.axis);
  if (wall.furniture !== undefined) {
    surface.line(at({ x: shown.left, y: wall.furniture }), at({ x: shown.right, y: wall.furniture }), PENS.behind);
  }
  drawFrames(surface, scaled, wall);
  drawDimensions(surface, scaled, wall, shown, length);
  surface.text(
    `the wall, 1 : ${whole.ratio}`,
    { x: (room.left + room.right) / 2, y: room.bottom },
    { size: 7, align: 'centre' },
  );
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

function drawFrames(surface: Surface, scaled: Scaled, { frames }: WallPlan): void {
  surface.boxes(
    frames.map(({ box }) => boxAtScale(scaled, box)),
    PENS.edge,
  );
  for (const { box, number, hooks } of frames) {
    const { left, right, bottom, top } = boxAtScale(scaled, box);
    const size = Math.min(11, (top - bottom) * 1.2, ((right - left) * 2) / String(number).length);
    const middle = { x: (left + right) / 2, y: (bottom + top) / 2 - size * 0.125 };
    if (size >= 4) surface.text(String(number), middle, { size, weight: 'bold', align: 'centre' });
    const cross = hooks.flatMap(({ seat }) => {
      const { x, y } = scaled.at(seat);
      return [
        [{ x: x - 0.8, y }, { x: x + 0.8, y }],
        [{ x, y: y - 0.8 }, { x, y: y + 0.8 }],
      ] as const; // prettier-ignore
    });
    surface.lines(cross, PENS.cut);
  }
}

/** Height of the centre line and of the first seat; from the edges of the wall to the frames, and how far they reach. */
function drawDimensions(
  surface: Surface,
  { at }: Scaled,
  { centre, frames, around, width }: WallPlan,
  shown: Box,
  length: (mm: number) => string,
): void {
  const [x, floor] = [at({ x: shown.left, y: 0 }).x, at({ x: 0, y: 0 }).y];
  standingDimension(surface, x - 9, floor, at({ x: 0, y: centre }).y, length(centre));
  const seat = frames[0]?.hooks[0]?.seat.y;
  if (seat !== undefined) standingDimension(surface, x - 4, floor, at({ x: 0, y: seat }).y, length(seat));
  const below = at({ x: 0, y: shown.bottom }).y - 5;
  const across = (from: number, to: number) => {
    if (to - from > 1e-6)
      lyingDimension(surface, at({ x: from, y: 0 }).x, at({ x: to, y: 0 }).x, below, length(to - from));
  };
  across(around.left, around.right);
  if (width === undefined) return;
  across(0, around.left);
  across(around.right, width);
}
