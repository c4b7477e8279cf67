/** One window of the job as a cell of known size and shape, with what lies behind it. */
import {
  boxAt,
  grow,
  heightOf,
  mirrorBox,
  quarterTurnedBox,
  shift,
  sizeOf,
  widthOf,
  type Box,
  type Point,
  type Size,
} from '../geometry/box';
import { parallelTo } from '../geometry/offset';
import { boundsOf, shiftOutline, type Outline } from '../geometry/outline';
import type { Job, QuarterTurn, WindowItem } from '../job/job';
import { assert } from '../problem';
import type { Group, Leaf, LeafPicture, ShapeFault } from './cells';
import { joinTo } from './joined';
import { drawnIn, turnedOutline } from './leaf-shape';
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
  const { at, use, title, shape, turned } = item;
  const picture = item.picture === undefined ? undefined : job.pictures[item.picture];
  const atFace = job.measuredAt === 'face' && bottomRun(job) > 0;
  const written = item.size && (turned % 180 === 0 ? item.size : swapped(item.size));
  const run = atFace && written ? bottomRun(job) : 0;
  const from = written ? (run > 0 ? 'written at face' : 'written') : 'overlap';
  const boxes = picture && (written ? centredWindow(picture, written) : overlappedWindow(picture));
  const given = boxes ? sizeOf(boxes.window) : written;
  assert(given, 'a window without a picture has a size');
  const opening = openingOf(item, given, run);
  const leaf: Leaf = {
    kind: 'leaf',
    at,
    use,
    title,
    groups,
    from,
    shape,
    size: opening.size,
    faults: opening.faults,
    lines: item.lines,
    ...(opening.outline ? { outline: opening.outline } : {}),
    ...(item.joined.length > 0
      ? {
          main: opening.main,
          parts: opening.parts.map((box, index) => ({ title: item.joined[index]?.title ?? '', box })),
        }
      : {}),
    ...(boxes ? { picture: behind(boxes, opening.main, item.picture ?? 0) } : {}),
  };
  return turned === 0 ? leaf : turnedLeaf(leaf, turned);
}

/** An opening before it is turned, its lower left corner at the origin. */
interface Opening {
  readonly size: Size;
  /** Undefined of a plain rectangle, and where nothing is left. */
  readonly outline?: Outline;
  /** The window's own part, without what is joined to it. */
  readonly main: Box;
  readonly parts: readonly Box[];
  readonly faults: readonly ShapeFault[];
}

/** `run` is how far the opening lies inside the size that was given. */
function openingOf(item: WindowItem, given: Size, run: number): Opening {
  const { at, title, shape, joined, mirrored } = item;
  // The overlap may cover more than there is; a box drawn of that would lie the other way round.
  if (!(given.width > 0 && given.height > 0)) return { size: given, main: boxAt(ORIGIN, given), parts: [], faults: [] };
  const { outline: drawn, misfit } = drawnIn(shape, given);
  const box = boundsOf(drawn);
  const main = grow(box, -run);
  const plain = { size: sizeOf(main), main: shift(main, { x: -run, y: -run }), parts: [] };
  if (misfit) return { ...plain, faults: [{ kind: 'misfit', at, title, shape, size: given, measure: misfit }] };
  const nothing = !(main.right > main.left && main.top > main.bottom);
  if (nothing || (shape.kind === 'rectangle' && joined.length === 0)) return { ...plain, faults: [] };
  // A polygon may be smaller than its size, and what is joined to it is placed from its own edges.
  const whole =
    joined.length === 0 ? { outline: drawn, parts: [], faults: [] } : joinTo(drawn, sizeOf(box), at, joined);
  const outline = whole.outline && (run === 0 ? whole.outline : parallelTo(whole.outline, -run)?.outline);
  if (!outline) return { ...plain, ...(whole.faults.length > 0 ? {} : { size: NOTHING }), faults: whole.faults };
  const bounds = boundsOf(outline);
  const size = sizeOf(bounds);
  const corner = { x: -bounds.left, y: -bounds.bottom };
  const over = (part: Box) => (mirrored ? mirrorBox(part, size.width) : part);
  return {
    size,
    outline: turnedOutline(shiftOutline(outline, corner), size, item.turned, mirrored),
    main: over(shift(main, corner)),
    parts: whole.parts.map((part) => over(shift(grow(part, -run), corner))),
    faults: [],
  };
}

const NOTHING: Size = { width: 0, height: 0 };
const ORIGIN: Point = { x: 0, y: 0 };

/** Sheet and image as they lie behind a window in the middle of the one that was asked for. */
function behind({ window, sheet, image }: PictureBoxes, main: Box, index: number): LeafPicture {
  const corner: Point = {
    x: (main.left + main.right - widthOf(window)) / 2 - window.left,
    y: (main.bottom + main.top - heightOf(window)) / 2 - window.bottom,
  };
  return { index, sheet: shift(sheet, corner), image: shift(image, corner) };
}

/** Size, parts and picture turned; the outline is turned already. */
function turnedLeaf(leaf: Leaf, turned: QuarterTurn): Leaf {
  let { size, picture, main, parts } = leaf;
  for (let turn = 0; turn < turned; turn += 90) {
    const { height } = size;
    const over = (box: Box) => quarterTurnedBox(box, height);
    if (picture) picture = { ...picture, sheet: over(picture.sheet), image: over(picture.image) };
    main = main && over(main);
    parts = parts?.map((part) => ({ ...part, box: over(part.box) }));
    size = swapped(size);
  }
  return {
    ...leaf,
    size,
    ...(main ? { main } : {}),
    ...(parts ? { parts } : {}),
    ...(picture ? { picture: { ...picture, turned } } : {}),
  };
}

function swapped({ width, height }: Size): Size {
  return { width: height, height: width };
}
