/** What falls out of the windows of a mat, as stock for smaller pieces of the same board. */
import { heightOf, shift, widthOf } from '../geometry/box';
import type { Layout } from '../layout/layout';
import type { Stock } from './ask';
import type { WindowInPiece } from './piece-source';

/**
 * A drop is of full thickness as far as its smaller face reaches; the run of the bevel beyond it has to be cut off. Only
 * rectangles give a rectangle.
 *
 * @param layer 1 is the top layer.
 * @param piece of the mat, into the wanted pieces.
 */
export function falloutsOf(layout: Layout, layer: number, piece: number, from: string): Stock[] {
  const run = layout.layers[layer - 1]?.bevel.run ?? 0;
  return layout.windows.flatMap((window): Stock[] => {
    const opening = window.layers[layer - 1]?.opening;
    if (window.shape !== 'rectangle' || !opening) return [];
    const size = { width: widthOf(opening), height: heightOf(opening) };
    const id = `window ${window.name} of ${from}`;
    return [{ id, kind: 'fallout', ...size, cost: 0, count: 1, window: { piece, name: window.name, run } }];
  });
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
