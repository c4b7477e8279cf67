/** Plans the cuts of a layout; the one place where front view is mirrored into back view. */
import { insets, mirrorBox, boxAt, SIDES, type Box, type Point, type Side, type Size } from '../geometry/box';
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
  const windows = layout.windows.map((window, place): WindowPlan => {
    const cutAs = window.layers[index];
    assert(cutAs, 'every window goes through every layer');
    return {
      name: window.name,
      title: window.title,
      index: place,
      ...cutAs,
      borders: insets(boxAt({ x: 0, y: 0 }, blank), cutAs.opening),
      cuts: SIDES.map((side) => planCut(job, blank, layer, cutAs, window.name, side)),
    };
  });
  const { number, board, colour, thickness, bevel } = layer;
  return {
    number,
    board,
    colour,
    thickness,
    blank,
    bevel,
    windows,
    order: { front: orderCuts(windows, 'front'), back: orderCuts(windows, 'back') },
  };
}

function planCut(job: Job, blank: Size, layer: LayoutLayer, opening: LayerOpening, window: string, side: Side): Cut {
  const line = (view: View) => {
    const box = view === 'front' ? opening.face : mirrorBox(opening.back, blank.width);
    return cutLine(job, blank, layer, box, view, view === 'front' ? side : mirrorSide(side));
  };
  return { name: `${window} ${side}`, side, front: line('front'), back: line('back') };
}

/** Seen from the back, left and right change places. */
export function mirrorSide(side: Side): Side {
  return side === 'left' ? 'right' : side === 'right' ? 'left' : side;
}

function cutLine(job: Job, blank: Size, layer: LayoutLayer, box: Box, view: View, side: Side): CutLine {
  const { waste } = job.cutting;
  const [start, end] = travel(box, side, waste);
  const slopesTo = slopeOf(layer, view);
  // Where the far edge of the cut lies outside the line, the blade must run on by the bevel run for the corners to meet there.
  const overcut = job.cutting.overcut ?? (slopesTo === 'border' ? layer.bevel.run : 0);
  const along = { x: Math.sign(end.x - start.x) * overcut, y: Math.sign(end.y - start.y) * overcut };
  const border = waste === 'right' ? 'left' : 'right';
  return {
    side,
    start,
    end,
    bladeStart: { x: start.x - along.x, y: start.y - along.y },
    bladeEnd: { x: end.x + along.x, y: end.y + along.y },
    overcut,
    bevelSide: slopesTo === 'none' ? 'none' : slopesTo === 'border' ? border : waste,
    slopesTo,
    guideSetting: insets(boxAt({ x: 0, y: 0 }, blank), box)[side],
  };
}

/** Towards the border when the edge on the far side of the board is the wider one. */
function slopeOf({ bevel }: LayoutLayer, view: View): CutLine['slopesTo'] {
  if (bevel.run === 0) return 'none';
  return (view === 'back') === (bevel.direction === 'standard') ? 'border' : 'window';
}

/** From corner to corner, clockwise round the window with the waste on the right, else counter-clockwise. */
function travel(box: Box, side: Side, waste: 'left' | 'right'): [Point, Point] {
  const { left, bottom, right, top } = box;
  const clockwise: Record<Side, [Point, Point]> = {
    left: [
      { x: left, y: bottom },
      { x: left, y: top },
    ],
    top: [
      { x: left, y: top },
      { x: right, y: top },
    ],
    right: [
      { x: right, y: top },
      { x: right, y: bottom },
    ],
    bottom: [
      { x: right, y: bottom },
      { x: left, y: bottom },
    ],
  };
  const [start, end] = clockwise[side];
  return waste === 'right' ? [start, end] : [end, start];
}
