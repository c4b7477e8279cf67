/** Plans the cuts of a layout; the one place where front view is mirrored into back view. */
import {
  boxAt,
  eachSide,
  insets,
  mirrorBox,
  SIDES,
  type Box,
  type PerSide,
  type Point,
  type Side,
} from '../geometry/box';
import type { Job } from '../job/job';
import type { Layout, LayoutLayer, LayerOpening } from '../layout/layout';
import { assert } from '../problem';
import { orderCuts, ORDER_RULE } from './order-cuts';
import type { Cut, CutLine, CutPlan, LayerPlan, View, WindowPlan } from './plan';

/** Every cut of every layer, in both views. A layout has no errors, so this always succeeds. */
export function planCuts(job: Job, layout: Layout): CutPlan {
  return {
    blank: layout.frame.blank,
    waste: job.cutting.waste,
    orderRule: ORDER_RULE,
    layers: layout.layers.map((layer, index) => planLayer(job, layout, layer, index)),
  };
}

function planLayer(job: Job, layout: Layout, layer: LayoutLayer, index: number): LayerPlan {
  const { blank } = layout.frame;
  const board = boxAt({ x: 0, y: 0 }, blank);
  const windows = layout.windows.map((window, place): WindowPlan => {
    const cutAs = window.layers[index];
    assert(cutAs, 'every window goes through every layer');
    const { name, title } = window;
    const borders = insets(board, cutAs.opening);
    return { name, title, index: place, ...cutAs, borders, cuts: planWindow(job, board, layer, cutAs, name) };
  });
  const order = { front: orderCuts(windows, 'front'), back: orderCuts(windows, 'back') };
  const { number, colour, thickness, bevel } = layer;
  return { number, board: layer.board, colour, thickness, blank, bevel, windows, order };
}

/** The four cuts of one opening, left, top, right, bottom as seen from the front. */
function planWindow(job: Job, board: Box, layer: LayoutLayer, opening: LayerOpening, window: string): Cut[] {
  const front = cutLines(job, board, layer, opening.face, 'front');
  const back = cutLines(job, board, layer, mirrorBox(opening.back, board.right), 'back');
  return SIDES.map((side) => ({ name: `${window} ${side}`, side, front: front[side], back: back[mirrorSide(side)] }));
}

/** Seen from the back, left and right change places. */
export function mirrorSide(side: Side): Side {
  return side === 'left' ? 'right' : side === 'right' ? 'left' : side;
}

/** The lines of the four cuts in one view, by their sides in that view. */
function cutLines(job: Job, board: Box, layer: LayoutLayer, box: Box, view: View): PerSide<CutLine> {
  const { waste } = job.cutting;
  const slopesTo = slopeOf(layer, view);
  // Where the far edge of the cut lies outside the line, the blade must run on by the bevel run for the corners to meet there.
  const overcut = job.cutting.overcut ?? (slopesTo === 'border' ? layer.bevel.run : 0);
  const border = waste === 'right' ? 'left' : 'right';
  const bevelSide = slopesTo === 'none' ? 'none' : slopesTo === 'border' ? border : waste;
  const settings = insets(board, box);
  const corners = cornersOf(box);
  return eachSide((side) => {
    const [start, end] = travel(corners, side, waste);
    const [bladeStart, bladeEnd] = overcut === 0 ? [start, end] : runPast(start, end, overcut);
    return { side, start, end, bladeStart, bladeEnd, overcut, bevelSide, slopesTo, guideSetting: settings[side] };
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

/** Towards the border when the edge on the far side of the board is the wider one. */
function slopeOf({ bevel }: LayoutLayer, view: View): CutLine['slopesTo'] {
  if (bevel.run === 0) return 'none';
  return (view === 'back') === (bevel.direction === 'standard') ? 'border' : 'window';
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
