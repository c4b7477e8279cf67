/** Whether a window's outline keeps its proportions while its size is typed, and the size it is written in. */
import type { Size } from '../../core/geometry/box';
import type { WrittenSize, WrittenWindow } from '../../core/job/written';
import { echoSize, sizeText } from '../fields/written-size';
import type { Session } from '../session/session.svelte';
import { isInProportion, proportionsOf } from './outline-window';

/** Undefined where none is written, or what is can't be read. */
export function sizeNow(written: WrittenSize | undefined, { units, showing }: Session): Size | undefined {
  if (written === undefined) return undefined;
  const echo = echoSize(sizeText(written, units, showing), showing, 'size');
  return echo.ok ? echo.size : undefined;
}

/** The proportions a typed side takes the other one along in; undefined where sizes are typed freely. */
export function keptProportions(
  session: Session,
  at: string,
  window: Pick<WrittenWindow, 'shape' | 'turned'>,
  size: Size | undefined,
): Size | undefined {
  const natural = proportionsOf(window);
  return natural && size && session.stretched !== at && isInProportion(size, natural) ? natural : undefined;
}
