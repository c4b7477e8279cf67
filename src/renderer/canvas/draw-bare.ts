/** Draws what there is of a picture in its frame without a mat: the gap round it, and the back of both. */
import { grow, heightOf, SIDES, widthOf, type Box } from '../../core/geometry/box';
import type { PictureKind } from '../../core/job/job';
import type { Layout } from '../../core/layout/layout';
import { lightColour } from './colour';
import { mitredSide, ringOf, type Shape } from './drawing';
import { frameBoxes } from './frame-boxes';
import { MOULDING_LIGHT, shadowOutside } from './light';

const WOOD = '#cdb48c';
const BAR = '#e0c79c';
const RAW_CANVAS = '#ece5d4';
const BACKS: Partial<Record<PictureKind, string>> = { 'painting on panel': '#b99f76' };
const BOARD = '#d9d2c2';
const DARK = '#2c261f';
/** What is drawn of bars and ledge is a sketch and no measure, mm. */
const BAR_WIDTH = 40;
const LEDGE = 12;

/** Under the picture: what is seen through the frame beside it, and the shadow that it throws there. */
export function drawGap(layout: Layout): Shape[] {
  const sheet = layout.windows[0]?.picture?.sheet;
  const { colour, isFloat, hidden } = layout.frame;
  if (layout.layers.length > 0 || !sheet) return [];
  const fill = isFloat ? lightColour(colour, -0.62) : DARK;
  return [
    { kind: 'area', key: 'gap', rings: [ringOf(frameBoxes(layout).sight)], fill },
    ...(isFloat ? shadowOutside('picture', sheet, -hidden * 0.8, 0.5) : []),
  ];
}

/** Seen from behind, in front-view coordinates; the stage mirrors them. */
export function drawBareBack(layout: Layout, kind: PictureKind): Shape[] {
  const { rabbet, outside } = frameBoxes(layout);
  const sheet = layout.windows[0]?.picture?.sheet ?? rabbet;
  // A float frame closes the gap from behind with the ledge that the picture is fixed to.
  const open = layout.frame.isFloat ? grow(sheet, -Math.min(LEDGE, narrowSide(sheet) / 8)) : rabbet;
  return [
    ...shadowOutside('bench', outside, 5, 0.26),
    { kind: 'area', key: 'rabbet', rings: [ringOf(rabbet)], fill: DARK },
    ...pictureBack(sheet, kind),
    ...sides('frame back', outside, open, WOOD),
  ];
}

function pictureBack(sheet: Box, kind: PictureKind): Shape[] {
  const fill = kind === 'painting on canvas' ? RAW_CANVAS : (BACKS[kind] ?? BOARD);
  const back: Shape = { kind: 'area', key: 'back of the picture', rings: [ringOf(sheet)], fill };
  if (kind !== 'painting on canvas') return [back];
  const inner = grow(sheet, -Math.min(BAR_WIDTH, narrowSide(sheet) / 5));
  return [back, ...sides('stretcher', sheet, inner, BAR)];
}

/** Four mitred sides, a little apart in light so that their joints are seen. */
function sides(key: string, outer: Box, inner: Box, colour: string): Shape[] {
  return SIDES.map((side) => ({
    kind: 'area',
    key: `${key} ${side}`,
    rings: [mitredSide(outer, inner, side)],
    fill: lightColour(colour, MOULDING_LIGHT[side] * 0.6),
  }));
}

function narrowSide(box: Box): number {
  return Math.min(widthOf(box), heightOf(box));
}
