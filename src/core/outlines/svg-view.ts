/** How an `svg` element's own units lie in those round it: width, height, viewBox and preserveAspectRatio (SVG 1.1, chapter 7). */
import type { Point, Size } from '../geometry/box';
import type { Affine } from './affine';
import { readNumbers, readPx } from './svg-numbers';

export interface View {
  /** From the element's units to those round it. */
  readonly map: Affine;
  /** What percentages within are parts of; undefined where nothing says. */
  readonly viewport: Size | undefined;
  /** The place it takes, in the units round it; undefined where nothing says. */
  readonly frame: { readonly corner: Point; readonly size: Size } | undefined;
}

type Attributes = (name: string) => string | undefined;

/** `outer` is the viewport round a nested element; the outermost one has none, and lies at the origin. */
export function readView(
  attribute: Attributes,
  outer: Size | undefined,
  isOutermost: boolean,
): View | { fault: string } {
  const box = readBox(attribute('viewBox'));
  if (box === 'fault') return { fault: 'viewBox' };
  const across = readSide(attribute('width'), outer?.width);
  const down = readSide(attribute('height'), outer?.height);
  if (across === 'fault') return { fault: 'width' };
  if (down === 'fault') return { fault: 'height' };
  const corner = { x: 0, y: 0 };
  if (!isOutermost) {
    const [x, y] = [readPx(attribute('x') ?? '0', outer?.width), readPx(attribute('y') ?? '0', outer?.height)];
    if (x === undefined || y === undefined) return { fault: x === undefined ? 'x' : 'y' };
    Object.assign(corner, { x, y });
  }
  const size = sizeBy(across, down, isOutermost ? undefined : outer, box);
  const frame = size && { corner, size };
  if (!box) return { map: [1, 0, 0, 1, corner.x, corner.y], viewport: size, frame };
  const map = size && fit(box, corner, size, attribute('preserveAspectRatio') ?? 'xMidYMid meet');
  return map
    ? { map, viewport: { width: box.width, height: box.height }, frame }
    : { fault: size ? 'preserveAspectRatio' : 'width' };
}

interface ViewBox extends Size {
  readonly x: number;
  readonly y: number;
}

function readBox(text: string | undefined): ViewBox | undefined | 'fault' {
  if (text === undefined) return undefined;
  const [x, y, width, height, ...rest] = readNumbers(text) ?? [];
  if (x === undefined || y === undefined || width === undefined || height === undefined) return 'fault';
  return rest.length === 0 && width > 0 && height > 0 ? { x, y, width, height } : 'fault';
}

/** Undefined where it is left out, or takes all there is of what nobody knows. */
function readSide(text: string | undefined, outer: number | undefined): number | undefined | 'fault' {
  const plain = (text ?? 'auto').trim();
  if (plain === 'auto' || (plain === '100%' && outer === undefined)) return undefined;
  const side = readPx(plain, outer);
  return side !== undefined && side > 0 ? side : 'fault';
}

/** A side left out: all of the viewport round it; outermost in proportion to the viewBox, of which a unit is a px. */
function sizeBy(
  width: number | undefined,
  height: number | undefined,
  outer: Size | undefined,
  box: Size | undefined,
): Size | undefined {
  const all = outer ?? (box && inProportion(width, height, box));
  const size = { width: width ?? all?.width, height: height ?? all?.height };
  return size.width !== undefined && size.height !== undefined ? { width: size.width, height: size.height } : undefined;
}

function inProportion(width: number | undefined, height: number | undefined, box: Size): Size {
  const scale = width !== undefined ? width / box.width : height !== undefined ? height / box.height : 1;
  return { width: scale * box.width, height: scale * box.height };
}

const RATIO = /^(?:defer\s+)?(?:(none)|x(Min|Mid|Max)Y(Min|Mid|Max))(?:\s+(meet|slice))?$/;
const PARTS: Readonly<Record<string, number>> = { Min: 0, Mid: 0.5, Max: 1 };

function fit(box: ViewBox, corner: Point, { width, height }: Size, ratio: string): Affine | undefined {
  const [whole, none, x = 'Mid', y = 'Mid', way] = RATIO.exec(ratio.trim()) ?? [];
  if (whole === undefined) return undefined;
  const [across, down] = [width / box.width, height / box.height];
  const even = way === 'slice' ? Math.max(across, down) : Math.min(across, down);
  const [a, d] = none ? [across, down] : [even, even];
  const left = corner.x + (PARTS[x] ?? 0) * (width - a * box.width);
  const top = corner.y + (PARTS[y] ?? 0) * (height - d * box.height);
  return [a, 0, 0, d, left - a * box.x, top - d * box.y];
}
