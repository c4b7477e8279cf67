/** The four cuts of a rectangle. */
import { eachSide, insets, SIDES, type Box, type PerSide, type Point, type Side } from '../geometry/box';
import { assert } from '../problem';
import { guideOf, overcutAt, type Manner } from './manner';
import type { CutLine } from './plan';

/** By their sides in the view. */
export function boxCuts(box: Box, board: Box, manner: Manner): PerSide<CutLine> {
  const { waste, bevelSide, slopesTo } = manner;
  const overcut = overcutAt(Math.PI / 2, manner);
  const settings = insets(board, box);
  const corners = cornersOf(box);
  return eachSide((side) => {
    const [start, end] = travel(corners, side, waste);
    const [bladeStart, bladeEnd] = overcut === 0 ? [start, end] : runPast(start, end, overcut);
    return {
      name: side,
      side,
      start,
      end,
      bladeStart,
      bladeEnd,
      overcutStart: overcut,
      overcutEnd: overcut,
      bevelSide,
      slopesTo,
      ...guideOf(settings[side], manner),
    };
  });
}

/** Both ends moved outward along the cut. */
function runPast(start: Point, end: Point, by: number): [Point, Point] {
  const x = Math.sign(end.x - start.x) * by;
  const y = Math.sign(end.y - start.y) * by;
  return [
    { x: start.x - x, y: start.y - y },
    { x: end.x + x, y: end.y + y },
  ];
}

/** Corners of a box clockwise from the lower left, each shared by the two cuts that meet there. */
function cornersOf({ left, bottom, right, top }: Box): readonly Point[] {
  return [
    { x: left, y: bottom },
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
  ];
}

/** From corner to corner, clockwise round the window with the waste on the right, else counter-clockwise. */
function travel(corners: readonly Point[], side: Side, waste: 'left' | 'right'): [Point, Point] {
  const first = SIDES.indexOf(side);
  const start = corners[first];
  const end = corners[(first + 1) % SIDES.length];
  assert(start && end, 'every side lies between two corners');
  return waste === 'right' ? [start, end] : [end, start];
}
