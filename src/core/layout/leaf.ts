/** One window of the job as a cell of known size and shape, with what lies behind it. */
import { heightOf, quarterTurnedBox, shift, sizeOf, widthOf, type Size } from '../geometry/box';
import type { Job, QuarterTurn, WindowItem } from '../job/job';
import { assert } from '../problem';
import type { Group, Leaf, LeafPicture } from './cells';
import { shapeIn, turnedOutline } from './leaf-shape';
import { centredWindow, overlappedWindow, type PictureBoxes } from './picture-boxes';

/** How much smaller than its face edge an opening of the bottom layer is, per side. */
export function bottomRun(job: Job): number {
  const layer = job.layers.at(-1);
  assert(layer, 'a mat has at least one layer');
  return layer.bevel.direction === 'standard'
    ? layer.thickness * Math.tan((layer.bevel.angleDegrees * Math.PI) / 180)
    : 0;
}

/** `groups` are those it stands in, outermost first. */
export function leafOf(item: WindowItem, job: Job, groups: readonly Group[]): Leaf {
  const { at, use, title, shape, turned, mirrored } = item;
  const picture = item.picture === undefined ? undefined : job.pictures[item.picture];
  const atFace = job.measuredAt === 'face' && bottomRun(job) > 0;
  const written = item.size && (turned % 180 === 0 ? item.size : swapped(item.size));
  const run = atFace && written ? bottomRun(job) : 0;
  const from = written ? (run > 0 ? 'written at face' : 'written') : 'overlap';
  const boxes = picture && (written ? centredWindow(picture, written) : overlappedWindow(picture));
  const given = boxes ? sizeOf(boxes.window) : written;
  assert(given, 'a window without a picture has a size');
  const { size, outline, misfit } = shapeIn(shape, given, run);
  const upright: Leaf = {
    kind: 'leaf',
    at,
    use,
    title,
    groups,
    from,
    shape,
    size,
    ...(outline ? { outline: turnedOutline(outline, size, turned, mirrored) } : {}),
    ...(misfit ? { misfit } : {}),
    ...(boxes ? { picture: behind(boxes, size, item.picture ?? 0) } : {}),
  };
  return turned === 0 ? upright : turnedLeaf(upright, turned);
}

/** Sheet and image as they lie behind a window in the middle of the one that was asked for. */
function behind({ window, sheet, image }: PictureBoxes, size: Size, index: number): LeafPicture {
  const corner = {
    x: (size.width - widthOf(window)) / 2 - window.left,
    y: (size.height - heightOf(window)) / 2 - window.bottom,
  };
  return { index, sheet: shift(sheet, corner), image: shift(image, corner) };
}

/** Size and picture turned; the outline is turned already. */
function turnedLeaf(leaf: Leaf, turned: QuarterTurn): Leaf {
  let { size, picture } = leaf;
  for (let turn = 0; turn < turned; turn += 90) {
    const { height } = size;
    if (picture) {
      const [sheet, image] = [quarterTurnedBox(picture.sheet, height), quarterTurnedBox(picture.image, height)];
      picture = { ...picture, sheet, image };
    }
    size = swapped(size);
  }
  return { ...leaf, size, ...(picture ? { picture: { ...picture, turned } } : {}) };
}

function swapped({ width, height }: Size): Size {
  return { width: height, height: width };
}
