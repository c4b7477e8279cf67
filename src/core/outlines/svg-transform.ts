/** The `transform` attribute of SVG as one map (SVG 2, 8.5; CSS Transforms 1, 6). */
import { UNMOVED, within, type Matrix } from './matrix';

const NUMBER = /[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?/gi;

/** The functions one after another, the last innermost; undefined of what can't be read. */
export function readTransform(written: string): Matrix | undefined {
  let whole = UNMOVED;
  let end = 0;
  for (const found of written.matchAll(/([a-zA-Z]+)\s*\(([^()]*)\)/g)) {
    const [text, name = '', inside = ''] = found;
    const matrix = functionOf(name, numbersIn(inside));
    if (!matrix || !isBetween(written.slice(end, found.index))) return undefined;
    whole = within(whole, matrix);
    end = found.index + text.length;
  }
  return isBetween(written.slice(end)) ? whole : undefined;
}

function isBetween(text: string): boolean {
  return /^[\s,]*$/.test(text);
}

function numbersIn(text: string): readonly number[] {
  const rest = text.replace(NUMBER, '');
  return isBetween(rest) ? (text.match(NUMBER) ?? []).map(Number) : [];
}

function functionOf(name: string, numbers: readonly number[]): Matrix | undefined {
  const [a = NaN, b, c, d, e, f] = numbers;
  switch (`${name} ${numbers.length}`) {
    case 'matrix 6':
      return { a, b: b ?? 0, c: c ?? 0, d: d ?? 0, e: e ?? 0, f: f ?? 0 };
    case 'translate 1':
    case 'translate 2':
      return shifted(a, b ?? 0);
    case 'scale 1':
    case 'scale 2':
      return { ...UNMOVED, a, d: b ?? a };
    case 'rotate 1':
      return turned(a);
    case 'rotate 3':
      return within(shifted(b ?? 0, c ?? 0), within(turned(a), shifted(-(b ?? 0), -(c ?? 0))));
    case 'skewX 1':
      return { ...UNMOVED, c: Math.tan(radians(a)) };
    case 'skewY 1':
      return { ...UNMOVED, b: Math.tan(radians(a)) };
    default:
      return undefined;
  }
}

export function shifted(x: number, y: number): Matrix {
  return { ...UNMOVED, e: x, f: y };
}

/** Quarters exactly, so that level ellipses stay level. */
function turned(degrees: number): Matrix {
  const quarters = degrees / 90;
  const exact = Number.isInteger(quarters) ? ((quarters % 4) + 4) % 4 : undefined;
  const cos = exact === undefined ? Math.cos(radians(degrees)) : [1, 0, -1, 0][exact]!;
  const sin = exact === undefined ? Math.sin(radians(degrees)) : [0, 1, 0, -1][exact]!;
  return { a: cos, b: sin, c: -sin, d: cos, e: 0, f: 0 };
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
