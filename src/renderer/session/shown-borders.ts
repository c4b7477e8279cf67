/** The four borders so shown that, with what lies between them, they add up to the whole. */
import type { PerSide, Size } from '../../core/geometry/box';
import { showTogether, type Shown, type Showing } from '../../core/units';

export function shownBorders(borders: PerSide, whole: Size, showing: Showing): PerSide<Shown> {
  const [left, , right] = showTogether(
    [borders.left, whole.width - borders.left - borders.right, borders.right],
    whole.width,
    showing,
  );
  const [top, , bottom] = showTogether(
    [borders.top, whole.height - borders.top - borders.bottom, borders.bottom],
    whole.height,
    showing,
  );
  return { left, right, top, bottom } as PerSide<Shown>;
}
