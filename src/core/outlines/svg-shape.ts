/** The basic shapes of SVG as path data in their own numbers (SVG 2, chapter 10). */
import type { Size } from '../geometry/box';
import { bad, good, type Result } from '../problem';
import { pixelsOf, RIGHT_LENGTH } from './css-length';
import { refusal } from './svg-refusals';
import type { SvgElement } from './svg-tree';

export const SHAPES: ReadonlySet<string> = new Set([
  'path',
  'rect',
  'circle',
  'ellipse',
  'polygon',
  'polyline',
  'line',
]);

/** Empty where SVG draws nothing, as of a circle without a radius. */
export function shapePath(element: SvgElement, whole?: Size): Result<string> {
  const { name, attributes } = element;
  if (name === 'path') return good(attributes.get('d') ?? '');
  if (name === 'polygon' || name === 'polyline') {
    const points = (attributes.get('points') ?? '').trim();
    return good(points === '' ? '' : `M${points}${name === 'polygon' ? 'Z' : ''}`);
  }
  const lengths = new Lengths(element, whole);
  const path = pathOf(name, lengths);
  return lengths.faults.length > 0 ? bad(lengths.faults) : good(path);
}

function pathOf(name: string, of: Lengths): string {
  if (name === 'rect') return rectPath(of);
  if (name === 'line') return `M${of.get('x1')} ${of.get('y1')}L${of.get('x2')} ${of.get('y2')}`;
  const across = name === 'circle' ? of.get('r') : (of.optional('rx') ?? of.get('ry'));
  const up = name === 'circle' ? across : (of.optional('ry') ?? across);
  if (!(across > 0 && up > 0)) return '';
  const [x, y] = [of.get('cx'), of.get('cy')];
  const half = `A${across} ${up} 0 0 1 `;
  return `M${x + across} ${y}${half}${x} ${y + up}${half}${x - across} ${y}${half}${x} ${y - up}${half}${x + across} ${y}Z`;
}

function rectPath(of: Lengths): string {
  const [x, y, width, height] = [of.get('x'), of.get('y'), of.get('width'), of.get('height')];
  if (!(width > 0 && height > 0)) return '';
  const [rx, ry] = [of.optional('rx'), of.optional('ry')];
  const across = Math.min(rx ?? ry ?? 0, width / 2);
  const up = Math.min(ry ?? rx ?? 0, height / 2);
  if (!(across > 0 && up > 0)) return `M${x} ${y}H${x + width}V${y + height}H${x}Z`;
  const corner = (toX: number, toY: number) => `A${across} ${up} 0 0 1 ${toX} ${toY}`;
  return [
    `M${x + across} ${y}H${x + width - across}`,
    corner(x + width, y + up),
    `V${y + height - up}`,
    corner(x + width - across, y + height),
    `H${x + across}`,
    corner(x, y + height - up),
    `V${y + up}`,
    corner(x + across, y),
    'Z',
  ].join('');
}

/** Lengths among an element's attributes, with a fault for each that can't be read. */
class Lengths {
  readonly faults: ReturnType<typeof refusal.unreadable>[] = [];

  constructor(
    private readonly element: SvgElement,
    private readonly whole: Size | undefined,
  ) {}

  /** Nothing where it is not said. */
  get(key: string): number {
    return this.read(key) ?? 0;
  }

  /** Undefined where it is not said, is `auto`, or is less than nothing, which SVG takes for not said. */
  optional(key: string): number | undefined {
    const length = this.read(key);
    return length !== undefined && length >= 0 ? length : undefined;
  }

  private read(key: string): number | undefined {
    const { attributes, name, line } = this.element;
    const written = attributes.get(key)?.trim();
    if (written === undefined || written === 'auto') return undefined;
    const pixels = pixelsOf(written, this.hundredPercent(key));
    if (pixels === undefined) this.faults.push(refusal.unreadable(`${key} of a ${name}`, written, line, RIGHT_LENGTH));
    return pixels;
  }

  /** Of the width, the height, or for a radius what lies between them (SVG 2, 8.9). */
  private hundredPercent(key: string): number | undefined {
    if (!this.whole) return undefined;
    const { width, height } = this.whole;
    if (key === 'r') return Math.hypot(width, height) / Math.SQRT2;
    return /x|width/.test(key) ? width : height;
  }
}
