/** What falls out of the windows of a mat, as stock for smaller pieces of the same board. */
import { around, heightOf, shift, widthOf } from '../geometry/box';
import { largestRectangleIn } from '../geometry/inscribed';
import type { Layout, LayerOpening } from '../layout/layout';
import { stepLength, type Showing } from '../units';
import type { FalloutWindow, Stock } from './ask';
import type { WindowInPiece } from './piece-source';

/**
 * A fallout is of full thickness as far as its smaller face reaches. Of a rectangle the run of the bevel beyond it has to be
 * cut off; of another shape the largest rectangle in that face counts.
 *
 * @param which `layer` 1 is the top layer, `piece` the place of the mat among the wanted pieces, and `from` its name.
 */
export function falloutsOf(
  layout: Layout,
  {
    layer,
    piece,
    from,
    showing,
  }: { readonly layer: number; readonly piece: number; readonly from: string; readonly showing: Showing },
): Stock[] {
  const run = layout.layers[layer - 1]?.bevel.run ?? 0;
  return layout.windows.flatMap(({ name, layers }): Stock[] => {
    const opening = layers[layer - 1];
    const part = opening && partOf(opening, run, stepLength(showing));
    if (!part) return [];
    const { width, height, ...how } = part;
    const id = `window ${name} of ${from}`;
    return [{ id, kind: 'fallout', width, height, cost: 0, count: 1, window: { piece, name, ...how } }];
  });
}

type Part = Pick<Stock, 'width' | 'height'> & Pick<FalloutWindow, 'run' | 'within'>;

function partOf({ opening, face, back, outlines }: LayerOpening, run: number, step: number): Part | undefined {
  if (!outlines) return { width: widthOf(opening), height: heightOf(opening), run };
  const inside = largestRectangleIn(outlines.opening);
  const whole = around([face, back]);
  if (!inside || !whole) return undefined;
  // In whole steps of the rule that it is marked by, so that what is told is what is cut.
  const up = (mm: number) => Math.ceil(mm / step) * step;
  const down = (mm: number) => Math.floor(mm / step) * step;
  const [left, bottom] = [up(inside.left - whole.left), up(inside.bottom - whole.bottom)];
  const [width, height] = [down(inside.right - whole.left) - left, down(inside.top - whole.bottom) - bottom];
  return width > 0 && height > 0 ? { width, height, run: 0, within: { x: left, y: bottom } } : undefined;
}

/** Windows as they are cut into a mat of this layer; a mat that is cut behind another is smaller all round. */
export function windowsIn(layout: Layout, layer: number, cut: { readonly width: number }): WindowInPiece[] {
  const trim = (layout.frame.blank.width - cut.width) / 2;
  return layout.windows.flatMap(({ name, title, shape, layers }): WindowInPiece[] => {
    const opening = layers[layer - 1]?.opening;
    if (!opening) return [];
    return [{ name, title, box: shift(opening, { x: -trim, y: -trim }), isRectangle: shape === 'rectangle' }];
  });
}
