/** Draws a laid-out job as it hangs: wall shadow, pictures, the layers with their bevels, and the frame. */
import { grow, SIDES, type Box } from '../../core/geometry/box';
import type { Job } from '../../core/job/job';
import type { Layout, LayoutLayer, PlacedWindow } from '../../core/layout/layout';
import { lightColour } from './colour';
import { mitredSide, overlapOf, ringOf, type Shape } from './drawing';
import { MOULDING_LIGHT, shadowInside, shadowOutside, SLOPE_LIGHT } from './light';

const BACKING = '#e7e2d6';
const SHEET = '#fbf9f3';
const CARD = '#d9d4c8';

/** Loaded images by picture index. */
export type PictureImages = ReadonlyMap<number, HTMLImageElement>;

export function drawFront(job: Job, layout: Layout, images: PictureImages): Shape[] {
  const blank = blankOf(layout);
  return [
    ...shadowOutside('wall', frameBoxes(layout).outside, 9, 0.34),
    { kind: 'area', key: 'backing', rings: [ringOf(blank)], fill: BACKING },
    ...layout.windows.flatMap((window) => drawPicture(job, window, images)),
    ...layout.layers.toReversed().flatMap((layer) => drawLayer(layout, layer)),
    ...drawFrame(layout),
  ];
}

/** The blank, with its lower left corner at the origin. */
export function blankOf(layout: Layout): Box {
  const { width, height } = layout.frame.blank;
  return { left: 0, bottom: 0, right: width, top: height };
}

/** The rectangles of the frame round the blank: rabbet, sight edge and outside. */
export function frameBoxes(layout: Layout): { rabbet: Box; sight: Box; outside: Box } {
  const { allowance, lip, mouldingWidth } = layout.frame;
  const rabbet = grow(blankOf(layout), allowance / 2);
  const sight = grow(rabbet, -lip);
  return { rabbet, sight, outside: grow(sight, mouldingWidth) };
}

function drawPicture(job: Job, placed: PlacedWindow, images: PictureImages): Shape[] {
  if (placed.picture === undefined) return [];
  const { sheet, image, index } = placed.picture;
  const file = images.get(index);
  const seenSheet = overlapOf(sheet, placed.windowAtFace);
  const seenImage = overlapOf(image, placed.windowAtFace);
  const tone = lightColour(CARD, ((index * 37) % 5) * 0.06);
  return [
    ...(seenSheet
      ? [{ kind: 'area', key: `sheet ${placed.name}`, rings: [ringOf(seenSheet)], fill: SHEET } as const]
      : []),
    ...(seenImage && !file
      ? [{ kind: 'area', key: `card ${placed.name}`, rings: [ringOf(seenImage)], fill: tone } as const]
      : []),
    ...(seenImage && file
      ? [{ kind: 'image', key: `image ${placed.name}`, box: image, clip: seenImage, image: file } as const]
      : []),
  ];
}

function drawLayer(layout: Layout, layer: LayoutLayer): Shape[] {
  const index = layer.number - 1;
  const cuts = layout.windows.map((window) => window.layers[index]).filter((cut) => cut !== undefined);
  const key = `layer ${layer.number}`;
  const board: Shape = {
    kind: 'area',
    key,
    rings: [ringOf(blankOf(layout)), ...cuts.map((cut) => ringOf(cut.face))],
    fill: layer.colour,
  };
  const shadow = shadowInside(
    `${key} shadow`,
    cuts.map((cut) => cut.opening),
    layer.thickness * 1.5,
    0.3,
  );
  if (layer.bevel.direction === 'reverse') return [...shadow, board];
  const slopes = SIDES.map((side): Shape => ({
    kind: 'area',
    key: `${key} bevel ${side}`,
    rings: cuts.map((cut) => mitredSide(cut.face, cut.back, side)),
    fill: lightColour(layer.core, SLOPE_LIGHT[side]),
  }));
  return [...shadow, board, ...slopes];
}

/** The moulding: a flat with a raised edge towards the picture, mitred at the corners. */
function drawFrame(layout: Layout): Shape[] {
  const { sight, outside } = frameBoxes(layout);
  const { colour, mouldingWidth } = layout.frame;
  const edge = grow(sight, Math.min(mouldingWidth * 0.2, 6));
  const bands = [
    { name: 'flat', outer: outside, inner: edge, strength: 0.55 },
    { name: 'edge', outer: edge, inner: sight, strength: -1 },
  ];
  const faces = bands.flatMap((band) =>
    SIDES.map((side): Shape => ({
      kind: 'area',
      key: `frame ${band.name} ${side}`,
      rings: [mitredSide(band.outer, band.inner, side)],
      fill: lightColour(colour, MOULDING_LIGHT[side] * band.strength),
    })),
  );
  return [...shadowInside('frame shadow', [sight], Math.max(4, mouldingWidth * 0.3), 0.36), ...faces];
}
