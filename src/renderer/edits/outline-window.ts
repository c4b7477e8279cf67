/** A window with an outline of one's own: its proportions, the size proposed for it, and typing one side of it. */
import type { Size } from '../../core/geometry/box';
import { placeText } from '../../core/job/exact-text';
import type { WrittenWindow } from '../../core/job/written';
import { readOutlinePath } from '../../core/outlines/path-outline';
import { sizeLike } from '../../core/outlines/proportions';
import { readLength, type Showing, type Unit } from '../../core/units';
import { echoSize } from '../fields/written-size';

type Shaped = Pick<WrittenWindow, 'shape' | 'turned'>;

/** Width and height as it hangs, in numbers of its own; undefined of any other shape, and of a path that is no outline. */
export function proportionsOf({ shape, turned }: Shaped): Size | undefined {
  if (typeof shape !== 'object' || shape.kind !== 'outline') return undefined;
  const read = readOutlinePath(shape.path);
  return read.ok ? hung(read.natural, turned ?? 0) : undefined;
}

export function hung({ width, height }: Size, turned: number): Size {
  return turned % 180 === 0 ? { width, height } : { width: height, height: width };
}

/** Sizes written to the last figure that places are told in are off by less, mm. */
const WRITTEN = 0.02;

export function isInProportion(size: Size, natural: Size): boolean {
  const { width, height } = sizeLike(natural, { width: size.width });
  return Math.abs(height - size.height) < WRITTEN || Math.abs((size.height * width) / height - size.width) < WRITTEN;
}

/** The largest size in proportion that a size holds. */
export function fittedIn(size: Size, natural: Size): Size {
  const high = sizeLike(natural, { width: size.width });
  return high.height <= size.height ? high : sizeLike(natural, { height: size.height });
}

/** Bare, in the unit that is named. */
export function plainSizeText({ width, height }: Size, unit: Unit): string {
  return `${placeText(width, unit)} x ${placeText(height, unit)}`;
}

/**
 * What a typed size means where proportions are kept: of one length alone it is the width; where one side differs from what
 * stood before, the other follows it. Both sides typed anew are meant as they are.
 */
export function meantSize(typed: string, before: string, natural: Size, showing: Showing): string {
  const single = readLength(typed, showing.unit);
  if (single.ok && single.mm > 0) return plainSizeText(sizeLike(natural, { width: single.mm }), showing.unit);
  const [now, then] = [echoSize(typed, showing, 'size'), echoSize(before, showing, 'size')];
  if (!now.ok || !then.ok) return typed;
  const [isWider, isHigher] = [now.size.width !== then.size.width, now.size.height !== then.size.height];
  if (isWider === isHigher) return typed;
  const { width, height } = now.size;
  return plainSizeText(sizeLike(natural, isWider ? { width } : { height }), showing.unit);
}
