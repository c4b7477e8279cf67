/** Guide settings as they are shown: with the window and the setting across from it they add up to the blank. */
import type { PerSide, Side } from '../geometry/box';
import { showTogether, type Shown, type Showing } from '../units';
import type { View, WindowPlan } from './plan';

/**
 * The setting of each of a window's four cuts in a view, by the side in front view. Left and top are rounded, right and
 * bottom take what remains, so that a window cut by the shown settings has the shown size.
 */
export function shownGuides(window: WindowPlan, view: View, blank: PerBlank, showing: Showing): PerSide<Shown> {
  const setting = (side: Side) => window.cuts.find((cut) => cut.side === side)?.[view].guideSetting ?? NaN;
  const [left, right] = apart(setting('left'), setting('right'), blank.width, showing);
  const [top, bottom] = apart(setting('top'), setting('bottom'), blank.height, showing);
  return { left, top, right, bottom };
}

interface PerBlank {
  readonly width: number;
  readonly height: number;
}

function apart(start: number, end: number, whole: number, showing: Showing): [Shown, Shown] {
  const [first, , last] = showTogether([start, whole - start - end, end], whole, showing);
  return [first as Shown, last as Shown];
}
