/** Border strips: the part of a blank between its edge and a cut that faces it. */
import { SIDES, type Box, type Side } from '../../core/geometry/box';
import { boundsOf, extremesOf } from '../../core/geometry/outline';
import { shared, type ViewLayer, type ViewWindow } from './view-geometry';

export interface BorderStrip {
  readonly side: Side;
  readonly window: ViewWindow;
  readonly strip: Box;
  /** Where along the side the cut reaches the strip: a shape may do so in one point. */
  readonly touch: Span;
}

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** The strips of every cut with no other window between it and the blank's edge. */
export function borderStrips(layer: ViewLayer): readonly BorderStrip[] {
  return layer.windows.flatMap((window) =>
    SIDES.flatMap((side) => {
      const strip = stripOf(layer, side, window.cut);
      const faces = layer.windows.every((other) => other === window || !shared(other.cut, strip));
      return faces ? [{ side, window, strip, touch: touchOf(window, side) }] : [];
    }),
  );
}

function stripOf(layer: ViewLayer, side: Side, cut: Box): Box {
  if (side === 'left') return { ...cut, left: 0, right: cut.left };
  if (side === 'right') return { ...cut, left: cut.right, right: layer.blank.width };
  if (side === 'bottom') return { ...cut, bottom: 0, top: cut.bottom };
  return { ...cut, bottom: cut.top, top: layer.blank.height };
}

/** What double arithmetic may add or lose, mm. */
const SLACK = 1e-6;

function touchOf({ cut, outline }: ViewWindow, side: Side): Span {
  const upright = side === 'left' || side === 'right';
  if (!outline) return upright ? { from: cut.bottom, to: cut.top } : { from: cut.left, to: cut.right };
  const furthest = boundsOf(outline)[side];
  const reached = extremesOf(outline).filter(({ x, y }) => Math.abs((upright ? x : y) - furthest) < SLACK);
  const along = reached.map(({ x, y }) => (upright ? y : x));
  return { from: Math.min(...along), to: Math.max(...along) };
}
