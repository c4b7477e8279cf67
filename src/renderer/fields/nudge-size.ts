/** A size with one of its sides nudged by the shown step, as text to store. */
import type { Size } from '../../core/geometry/box';
import type { Showing, Unit } from '../../core/units';
import { lengthToStore, nudgedText } from './written-length';

export function nudgeSize(
  size: Size,
  side: 'width' | 'height',
  direction: 1 | -1,
  times: number,
  jobUnit: Unit,
  showing: Showing,
): string {
  const nudged = nudgedText(size[side], direction, times, jobUnit, showing);
  const kept = (which: 'width' | 'height') => (which === side ? nudged : lengthToStore(size[which], jobUnit, showing));
  return `${kept('width')} x ${kept('height')}`;
}
