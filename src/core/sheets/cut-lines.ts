/** Where the cuts of a step lie on the sheet. */
import type { Box } from '../geometry/box';
import type { CutStep } from './plan';

/** What the knife or saw takes away by each cut, mm on the sheet, in order; without kerf lines that have no width. */
export function cutLines({ kind, part, way, setting, times }: CutStep, kerf: number): readonly Box[] {
  const { left, bottom, right, top } = part;
  if (kind !== 'cut') {
    return [
      { ...part, left: left + setting, right: left + setting },
      { ...part, left: right - setting, right: right - setting },
      { ...part, bottom: bottom + setting, top: bottom + setting },
      { ...part, bottom: top - setting, top: top - setting },
    ];
  }
  return Array.from({ length: times }, (_, index) => {
    const at = (way === 'upright' ? left : bottom) + setting + index * (setting + kerf);
    return way === 'upright'
      ? { ...part, left: at, right: Math.min(at + kerf, right) }
      : { ...part, bottom: at, top: Math.min(at + kerf, top) };
  });
}
