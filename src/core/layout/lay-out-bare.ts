/** Lays out a job without a mat: one picture in its frame as it is, covered by the lip alone or, in a float frame, by nothing. */
import { nameOfSize } from '../frame/ready-made';
import { boxAt, eachSide, grow, heightOf, insets, shift, sizeOf, widthOf, type Box, type Size } from '../geometry/box';
import type { Job } from '../job/job';
import { bad } from '../problem';
import { barePicture, type BarePicture } from './bare-picture';
import { bareDerivations } from './derive-bare';
import { frameSizes } from './frame-sizes';
import { laid, type Laid } from './laid';
import type { FrameSizes, PlacedLayout, PlacedPicture, PlacedWindow } from './layout';
import { bareProblems, nothingSeen } from './limits/bare';
import { overlappedWindow, turnedBoxes } from './picture-boxes';

export function layOutBare(job: Job): Laid {
  const found = barePicture(job);
  if (!found.ok) return found;
  const boxes = turnedBoxes(overlappedWindow(found.value.picture), found.value.item.turned);
  // Made to fit, the frame is as large as the picture: there are no borders.
  const blank = job.frame.blank ?? sizeOf(boxes.sheet);
  const frame = frameSizes(job, blank);
  if (!(frame.sight.width > 0 && frame.sight.height > 0)) return bad([nothingSeen(job, frame)]);
  const placed = place(frame, found.value, boxes);
  return laid(placed, bareProblems(job, placed, found.value), () => bareDerivations(job, placed));
}

function place(frame: FrameSizes, { item, index }: BarePicture, boxes: { sheet: Box; image: Box }): PlacedLayout {
  const board = boxAt({ x: 0, y: 0 }, frame.blank);
  const sheet = centredIn(board, sizeOf(boxes.sheet));
  const seen = sharedBy(centredIn(board, frame.sight), sheet);
  const image = shift(boxes.image, { x: sheet.left, y: sheet.bottom });
  const picture: PlacedPicture = {
    index,
    sheet,
    image,
    overlap: insets(image, seen),
    hold: insets(sheet, seen),
    ...(item.turned === 0 ? {} : { turned: item.turned }),
  };
  const cut = insets(board, seen);
  const borders = { cut, seen: eachSide((side) => cut[side] - frame.hidden) };
  const window: PlacedWindow = {
    name: 'A',
    title: item.title,
    at: item.at,
    use: 'picture',
    shape: 'rectangle',
    window: seen,
    windowAtFace: seen,
    picture,
    layers: [],
    lines: [],
    borders: cut,
  };
  const sizeName = nameOfSize(frame.blank);
  return {
    ...(sizeName === undefined ? {} : { sizeName }),
    frame,
    layers: [],
    windows: [window],
    content: seen,
    borders,
    topBorders: borders,
    gaps: [],
  };
}

/** With the play, or the gap, alike on both sides. */
function centredIn(box: Box, size: Size): Box {
  const across = (size.width - widthOf(box)) / 2;
  const up = (size.height - heightOf(box)) / 2;
  return grow(box, { left: across, right: across, top: up, bottom: up });
}

/** Of two boxes about one middle. */
function sharedBy(a: Box, b: Box): Box {
  return {
    left: Math.max(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.min(a.right, b.right),
    top: Math.min(a.top, b.top),
  };
}
