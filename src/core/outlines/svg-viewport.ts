/** How large the drawing of an SVG file is: its width and height, its `viewBox`, and how that lies in them (SVG 2, 8.2 to 8.6). */
import type { Size } from '../geometry/box';
import { bad, good, type Result } from '../problem';
import { pixelsOf, PIXELS_PER_INCH, RIGHT_LENGTH } from './css-length';
import { within, type Matrix } from './matrix';
import { refusal } from './svg-refusals';
import { styleOf } from './svg-style';
import { shifted } from './svg-transform';
import type { SvgElement } from './svg-tree';

export interface Viewport {
  /** From the drawing's own numbers to mm, y down. */
  readonly toMillimetres: Matrix;
  /** What percentages are of, in the drawing's own numbers; undefined where nothing says it. */
  readonly whole?: Size;
}

const MILLIMETRES = 25.4 / PIXELS_PER_INCH;

export function viewportOf(root: SvgElement): Result<Viewport> {
  const { attributes, line } = root;
  const sides = (['width', 'height'] as const).map((side) => {
    const written = styleOf(root, side);
    // A share of a page that nobody knows is as good as nothing said.
    if (written === undefined || /^\s*auto\s*$|%\s*$/.test(written)) return { pixels: undefined };
    const pixels = pixelsOf(written);
    return pixels !== undefined && pixels > 0
      ? { pixels }
      : { fault: refusal.unreadable(`${side} of the drawing`, written, line, `more than nothing: ${RIGHT_LENGTH}`) };
  });
  const faults = sides.flatMap(({ fault }) => fault ?? []);
  if (faults.length > 0) return bad(faults);
  const [width, height] = sides.map(({ pixels }) => pixels);
  const scale = { a: MILLIMETRES, b: 0, c: 0, d: MILLIMETRES, e: 0, f: 0 };
  const written = attributes.get('viewBox');
  if (written === undefined) {
    const whole = width !== undefined && height !== undefined ? { whole: { width, height } } : {};
    return good({ toMillimetres: scale, ...whole });
  }
  const box = readViewBox(written);
  if (!box)
    return bad([
      refusal.unreadable('viewBox', written, line, 'four numbers, of which width and height are more than nothing'),
    ]);
  const size = sizeIn(box, width, height);
  const lie = lieOf(box, size, attributes.get('preserveAspectRatio') ?? '');
  return good({ toMillimetres: within(scale, lie), whole: { width: box.width, height: box.height } });
}

interface ViewBox extends Size {
  readonly x: number;
  readonly y: number;
}

function readViewBox(written: string): ViewBox | undefined {
  const [x, y, width, height, ...more] = written
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  if (x === undefined || y === undefined || width === undefined || height === undefined) return undefined;
  const isRight = more.length === 0 && [x, y, width, height].every(Number.isFinite) && width > 0 && height > 0;
  return isRight ? { x, y, width, height } : undefined;
}

/** A side that is not said follows from the other one and the box's proportions; with neither, a unit is a pixel. */
function sizeIn(box: ViewBox, width: number | undefined, height: number | undefined): Size {
  if (width === undefined && height === undefined) return box;
  return {
    width: width ?? ((height ?? 0) * box.width) / box.height,
    height: height ?? ((width ?? 0) * box.height) / box.width,
  };
}

/** `preserveAspectRatio` (SVG 2, 8.6); what can't be read is as if it were not said, which is `xMidYMid meet`. */
function lieOf(box: ViewBox, size: Size, written: string): Matrix {
  const [across, up] = [size.width / box.width, size.height / box.height];
  if (/^\s*none\b/.test(written)) return placed(box, across, up, 0, 0);
  const [, x = 'Mid', y = 'Mid', way] = /^\s*x(Min|Mid|Max)Y(Min|Mid|Max)(?:\s+(meet|slice))?\s*$/.exec(written) ?? [];
  const scale = way === 'slice' ? Math.max(across, up) : Math.min(across, up);
  const spare = (side: number, of: number, align: string) => (side - of * scale) * (SHARES[align] ?? 0);
  return placed(box, scale, scale, spare(size.width, box.width, x), spare(size.height, box.height, y));
}

const SHARES: Readonly<Record<string, number>> = { Min: 0, Mid: 0.5, Max: 1 };

function placed({ x, y }: ViewBox, across: number, up: number, left: number, top: number): Matrix {
  return within({ ...shifted(left, top), a: across, d: up }, shifted(-x, -y));
}
