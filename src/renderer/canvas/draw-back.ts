/** Draws one layer as it lies face down on the bench: its back, with the openings one cuts from there. */
import { SIDES } from '../../core/geometry/box';
import type { Layout } from '../../core/layout/layout';
import { lightColour } from './colour';
import { mitredSide, ringOf, type Shape } from './drawing';
import { backLines } from './face-lines';
import { blankOf } from './frame-boxes';
import { shadowOutside } from './light';
import { curvedSlopes, edgeRing } from './shape-rings';

const BOARD_BACK = '#f3efe4';
const BENCH = '#b9b2a4';
const LIGHT = { left: -0.16, top: -0.16, right: 0.3, bottom: 0.3 };

export function drawBack(layout: Layout, layerNumber: number): Shape[] {
  const layer = layout.layers[layerNumber - 1];
  if (layer === undefined) return [];
  const cuts = layout.windows.map((window) => window.layers[layerNumber - 1]).filter((cut) => cut !== undefined);
  const reverse = layer.bevel.direction === 'reverse';
  const curved = cuts.flatMap(({ outlines }) => outlines ?? []);
  const slopes = [
    ...SIDES.map((side): Shape => ({
      kind: 'area',
      key: `back bevel ${side}`,
      rings: cuts.filter(({ outlines }) => !outlines).map((cut) => mitredSide(cut.back, cut.face, side)),
      fill: lightColour(layer.core, LIGHT[side]),
    })),
    ...curvedSlopes('back curved bevel', layer.core, curved, LIGHT, 'back'),
  ];
  return [
    ...shadowOutside('bench', blankOf(layout), 5, 0.26),
    { kind: 'area', key: 'bench openings', rings: cuts.map((cut) => edgeRing(cut, 'back')), fill: BENCH },
    {
      kind: 'area',
      key: 'back of the board',
      rings: [ringOf(blankOf(layout)), ...cuts.map((cut) => edgeRing(cut, 'back'))],
      fill: BOARD_BACK,
    },
    ...(layerNumber === 1 ? backLines(layout) : []),
    ...(reverse ? slopes : []),
  ];
}
