/** A picture and the window over it, as boxes from the lower left corner of the sheet. */
import { grow, heightOf, quarterTurnedBox, widthOf, type Box, type PerSide, type Size } from '../geometry/box';
import type { Picture, QuarterTurn } from '../job/job';

export interface PictureBoxes {
  readonly window: Box;
  readonly sheet: Box;
  readonly image: Box;
}

/** Sheet and image of a picture, the sheet's lower left corner at the origin. */
function boxesOf(picture: Picture): { sheet: Box; image: Box; covered: Box } {
  const sheet = { left: 0, bottom: 0, right: picture.sheet.width, top: picture.sheet.height };
  const image = {
    left: picture.margins.left,
    bottom: picture.margins.bottom,
    right: picture.margins.left + picture.image.width,
    top: picture.margins.bottom + picture.image.height,
  };
  return { sheet, image, covered: picture.overlapFrom === 'image' ? image : sheet };
}

/** The window that leaves the picture's overlap. */
export function overlappedWindow(picture: Picture): PictureBoxes {
  const boxes = boxesOf(picture);
  return { ...boxes, window: grow(boxes.covered, negative(picture.overlap)) };
}

/** A window of a given size over the middle of the picture. */
export function centredWindow(picture: Picture, size: Size): PictureBoxes {
  const boxes = boxesOf(picture);
  const across = (widthOf(boxes.covered) - size.width) / 2;
  const up = (heightOf(boxes.covered) - size.height) / 2;
  return { ...boxes, window: grow(boxes.covered, { left: -across, right: -across, top: -up, bottom: -up }) };
}

/** The same with the sheet turned, its lower left corner again at the origin. */
export function turnedBoxes(boxes: PictureBoxes, turned: QuarterTurn): PictureBoxes {
  let made = boxes;
  for (let turn = 0; turn < turned; turn += 90) {
    const { window, sheet, image } = made;
    const over = (box: Box) => quarterTurnedBox(box, sheet.top);
    made = { window: over(window), sheet: over(sheet), image: over(image) };
  }
  return made;
}

function negative(sides: PerSide): PerSide {
  return { left: -sides.left, top: -sides.top, right: -sides.right, bottom: -sides.bottom };
}
