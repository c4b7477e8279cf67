/** Plans the cuts of a layout; the one place where front view is mirrored into back view. */
import { boxAt, insets, mirrorBox, SIDES, type Box, type Side } from '../geometry/box';
import { mirrorOutline } from '../geometry/outline';
import type { Job } from '../job/job';
import type { Layout, LayoutLayer, LayerOpening } from '../layout/layout';
import { assert } from '../problem';
import { boxCuts } from './box-cuts';
import { overcutFor } from './cutter';
import { orderLines, planLines } from './line-cuts';
import type { Manner } from './manner';
import { FREE_RULE, orderCuts, ORDER_RULE } from './order-cuts';
import { outlineCuts } from './outline-cuts';
import type { CutLine, CutPlan, LayerPlan, View, WindowPlan } from './plan';

/** Every cut of every layer, in both views. A layout has no errors, so this always succeeds. */
export function planCuts(job: Job, layout: Layout): CutPlan {
  const { waste, cutter } = job.cutting;
  const layers = layout.layers.map((layer, index) => planLayer(job, layout, layer, index));
  const way = layers.length > 1 ? job.cutting.layers : 'apart';
  const free = layers.some(({ windows }) => windows.some(hasFreeCuts));
  return {
    blank: layout.frame.blank,
    waste,
    way,
    ...(cutter ? { cutter } : {}),
    orderRule: free ? `${ORDER_RULE} ${FREE_RULE}` : ORDER_RULE,
    layers,
  };
}

function hasFreeCuts({ outlines, cuts }: WindowPlan): boolean {
  return outlines !== undefined || [...cuts.front, ...cuts.back].some((cut) => cut.guideSetting === undefined);
}

function planLayer(job: Job, layout: Layout, layer: LayoutLayer, index: number): LayerPlan {
  const { blank } = layout.frame;
  const board = boxAt({ x: 0, y: 0 }, blank);
  const windows = layout.windows.map((window, place): WindowPlan => {
    const cutAs = window.layers[index];
    assert(cutAs, 'every window goes through every layer');
    const { name, title, shape } = window;
    const borders = insets(board, cutAs.opening);
    return { name, title, shape, index: place, ...cutAs, borders, cuts: planWindow(job, board, layer, cutAs) };
  });
  const order = { front: orderCuts(windows, 'front'), back: orderCuts(windows, 'back') };
  const { number, board: name, colour, thickness, bevel } = layer;
  const behind = job.cutting.layers === 'behind' && index > 0;
  const guideOn = behind ? { number: 1, board: layout.layers[0]?.board ?? name } : { number, board: name };
  const trim = behind ? job.cutting.behindTrim : 0;
  const overcut = overcutFor(job.cutting, thickness, bevel.run);
  const lines = index === 0 ? planLines(job, layout) : [];
  const lineOrder = orderLines(lines);
  return {
    number,
    board: name,
    colour,
    thickness,
    blank,
    bevel,
    overcut,
    guideOn,
    trim,
    windows,
    lines,
    lineOrder,
    order,
  };
}

/** The cuts of one opening in both views. */
function planWindow(
  job: Job,
  board: Box,
  layer: LayoutLayer,
  { face, back, outlines }: LayerOpening,
): WindowPlan['cuts'] {
  const [front, behind] = [mannerOf(job, layer, 'front'), mannerOf(job, layer, 'back')];
  if (outlines) {
    return {
      front: outlineCuts(outlines.face, board, front),
      back: outlineCuts(mirrorOutline(outlines.back, board.right), board, behind),
    };
  }
  const seen = boxCuts(face, board, front);
  const mirrored = boxCuts(mirrorBox(back, board.right), board, behind);
  return { front: SIDES.map((side) => seen[side]), back: SIDES.map((side) => mirrored[mirrorSide(side)]) };
}

/** Seen from the back, left and right change places. */
export function mirrorSide(side: Side): Side {
  return side === 'left' ? 'right' : side === 'right' ? 'left' : side;
}

/** What the cuts of one layer have in common in one view. */
function mannerOf(job: Job, layer: LayoutLayer, view: View): Manner {
  const { waste, cutter } = job.cutting;
  const overcut = overcutFor(job.cutting, layer.thickness, layer.bevel.run);
  const reach = cutter?.reach;
  const slopesTo = slopeOf(layer, view);
  const border = waste === 'right' ? 'left' : 'right';
  const bevelSide = slopesTo === 'none' ? 'none' : slopesTo === 'border' ? border : waste;
  return {
    waste,
    slopesTo,
    bevelSide,
    run: layer.bevel.run,
    ...(overcut.from === 'board' ? {} : { overcut: overcut.length }),
    ...(reach === undefined ? {} : { reach }),
  };
}

/** Towards the border when the edge on the far side of the board is the wider one. */
function slopeOf({ bevel }: LayoutLayer, view: View): CutLine['slopesTo'] {
  if (bevel.run === 0) return 'none';
  return (view === 'back') === (bevel.direction === 'standard') ? 'border' : 'window';
}
