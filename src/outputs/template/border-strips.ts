/** Border strips: the part of a blank between its edge and a cut that faces it. */
import { SIDES, type Box, type Side } from '../../core/geometry/box';
import { shared, type ViewLayer, type ViewWindow } from './view-geometry';

export interface BorderStrip {
  readonly side: Side;
  readonly window: ViewWindow;
  readonly strip: Box;
}

/** The strips of every cut with no other window between it and the blank's edge. */
export function borderStrips(layer: ViewLayer): readonly BorderStrip[] {
  return layer.windows.flatMap((window) =>
    SIDES.flatMap((side) => {
      const strip = stripOf(layer, side, window.cut);
      const faces = layer.windows.every((other) => other === window || !shared(other.cut, strip));
      return faces ? [{ side, window, strip }] : [];
    }),
  );
}

function stripOf(layer: ViewLayer, side: Side, cut: Box): Box {
  if (side === 'left') return { ...cut, left: 0, right: cut.left };
  if (side === 'right') return { ...cut, left: cut.right, right: layer.blank.width };
  if (side === 'bottom') return { ...cut, bottom: 0, top: cut.bottom };
  return { ...cut, bottom: cut.top, top: layer.blank.height };
}
