/** Draws a laid-out job as it hangs: wall shadow, pictures, the layers with their bevels, and the frame. */
import { grow, SIDES, type Box } from '../../core/geometry/box';
import type { Layout, LayerOpening, LayoutLayer } from '../../core/layout/layout';
import { lightColour } from './colour';
import { mitredPair, mitredSide, overlapOf, ringOf, type Ring, type Shape } from './drawing';
import { drawGap } from './draw-bare';
import { frontLines } from './face-lines';
import { blankOf, frameBoxes } from './frame-boxes';
import { curvedSlopes, edgeRing } from './shape-rings';
import { type Detail, MOULDING_LIGHT, shadowInside, shadowOutside, SLOPE_LIGHT } from './light';

const BACKING = '#e7e2d6';
const SHEET = '#fbf9f3';
const CARD = '#d9d4c8';
/** Neighbouring cards differ a little. */
const TONES = [0, 0.12, 0.24, 0.06].map((light) => lightColour(CARD, light));

/** Loaded images by picture index. */
export type PictureImages = ReadonlyMap<number, HTMLImageElement>;

export function drawFront(layout: Layout, images: PictureImages, detail: Detail): Shape[] {
  return [
    ...shadowOutside('wall', frameBoxes(layout).outside, 9, 0.34),
    { kind: 'area', key: 'backing', rings: bareWindows(layout), fill: BACKING },
    ...drawGap(layout),
    ...drawPictures(layout, images),
    ...layout.layers.toReversed().flatMap((layer) => drawLayer(layout, layer, detail)),
    ...frontLines(layout),
    ...drawFrame(layout),
  ];
}

/** Windows through which the mount board is seen: without a picture, or with one that does not fill them. */
function bareWindows(layout: Layout): Ring[] {
  const bare = layout.windows.filter(({ picture, windowAtFace }) => !picture || !covers(picture.sheet, windowAtFace));
  return bare.map((window) => ringOf(window.windowAtFace));
}

/** Sheets in one shape and cards in one for each tone, so that many windows cost little more than one; files each in its own. */
function drawPictures(layout: Layout, images: PictureImages): Shape[] {
  const sheets: Ring[] = [];
  const cards: Ring[][] = TONES.map(() => []);
  const files: Shape[] = [];
  for (const { name, picture, windowAtFace } of layout.windows) {
    if (picture === undefined) continue;
    const file = images.get(picture.index);
    const sheet = overlapOf(picture.sheet, windowAtFace);
    const image = overlapOf(picture.image, windowAtFace);
    if (sheet && !(image && covers(image, sheet))) sheets.push(ringOf(sheet));
    if (image && file)
      files.push({
        kind: 'image',
        key: `image ${name}`,
        box: picture.image,
        turned: picture.turned ?? 0,
        clip: image,
        image: file,
      });
    else if (image) cards[picture.index % TONES.length]?.push(ringOf(image));
  }
  return [
    { kind: 'area', key: 'sheets', rings: sheets, fill: SHEET },
    ...cards.map((rings, tone): Shape => ({ kind: 'area', key: `cards ${tone}`, rings, fill: TONES[tone] ?? CARD })),
    ...files,
  ];
}

function covers(upper: Box, lower: Box): boolean {
  return (
    upper.left <= lower.left && upper.right >= lower.right && upper.bottom <= lower.bottom && upper.top >= lower.top
  );
}

/** Of the top board all is drawn, of those below it only what can be seen through the one above. */
function boardRings(layout: Layout, index: number): Ring[] {
  if (index === 0) return [ringOf(blankOf(layout))];
  return layout.windows.flatMap((window) => {
    const above = window.layers[index - 1];
    return above ? [edgeRing(above, 'face')] : [];
  });
}

function drawLayer(layout: Layout, layer: LayoutLayer, detail: Detail): Shape[] {
  const index = layer.number - 1;
  const cuts = layout.windows.map((window) => window.layers[index]).filter((cut) => cut !== undefined);
  const key = `layer ${layer.number}`;
  const board: Shape = {
    kind: 'area',
    key,
    rings: [...boardRings(layout, index), ...cuts.map((cut) => edgeRing(cut, 'face'))],
    fill: layer.colour,
  };
  const shadow = shadowInside(
    `${key} shadow`,
    cuts.map((cut) => (cut.outlines ? edgeRing(cut, 'opening') : cut.opening)),
    layer.thickness * 1.5,
    0.3,
    detail.shadows,
  );
  if (layer.bevel.direction === 'reverse') return [...shadow, board];
  const curved = cuts.flatMap(({ outlines }) => outlines ?? []);
  const straight = curved.length === 0 ? cuts : cuts.filter(({ outlines }) => !outlines);
  return [
    ...shadow,
    board,
    ...drawSlopes(key, layer.core, straight, detail),
    ...curvedSlopes(`${key} curved bevel`, layer.core, curved, SLOPE_LIGHT),
  ];
}

function drawSlopes(key: string, core: string, cuts: readonly LayerOpening[], detail: Detail): Shape[] {
  const slope = (name: string, light: number, ring: (cut: LayerOpening) => Ring): Shape => ({
    kind: 'area',
    key: `${key} bevel ${name}`,
    rings: cuts.map(ring),
    fill: lightColour(core, light),
  });
  if (detail.fourSlopes) {
    return SIDES.map((side) => slope(side, SLOPE_LIGHT[side], (cut) => mitredSide(cut.face, cut.back, side)));
  }
  return [
    slope('in shade', SLOPE_LIGHT.left, (cut) => mitredPair(cut.face, cut.back, 'left and top')),
    slope('in light', SLOPE_LIGHT.right, (cut) => mitredPair(cut.face, cut.back, 'right and bottom')),
  ];
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
  return [...shadowInside('frame shadow', [sight], Math.max(4, mouldingWidth * 0.3), 0.36, 5), ...faces];
}
