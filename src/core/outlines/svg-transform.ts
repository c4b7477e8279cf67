/** The `transform` attribute of SVG (SVG 1.1, 7.6) as one affine map. */
import { compose, SAME_PLACE, type Affine } from './affine';
import { axisOf } from './elliptic-arc';
import { readNumbers } from './svg-numbers';

const ONE = /([a-zA-Z]+)\s*\(([^()]*)\)[\s,]*/y;

type Maker = (numbers: readonly number[]) => Affine | undefined;

const MAKERS: Readonly<Record<string, Maker>> = {
  matrix: (numbers) => {
    const [a, b, c, d, e, f] = numbers;
    return numbers.length === 6 ? ([a, b, c, d, e, f] as unknown as Affine) : undefined;
  },
  translate: ([x = 0, y = 0, ...rest]) => (rest.length === 0 ? [1, 0, 0, 1, x, y] : undefined),
  scale: ([x = 1, y = x, ...rest]) => (rest.length === 0 ? [x, 0, 0, y, 0, 0] : undefined),
  rotate: ([angle = 0, ...centre]) => {
    const [x = 0, y = 0] = centre;
    if (centre.length !== 0 && centre.length !== 2) return undefined;
    return compose([1, 0, 0, 1, x, y], compose(turn(angle), [1, 0, 0, 1, -x, -y]));
  },
  skewX: ([angle = 0, ...rest]) => (rest.length === 0 ? [1, 0, slope(angle), 1, 0, 0] : undefined),
  skewY: ([angle = 0, ...rest]) => (rest.length === 0 ? [1, slope(angle), 0, 1, 0, 0] : undefined),
};

function turn(degrees: number): Affine {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = axisOf(degrees) ?? [Math.cos(angle), Math.sin(angle)];
  return [cos, sin, -sin, cos, 0, 0];
}

function slope(degrees: number): number {
  return Math.tan((degrees * Math.PI) / 180);
}

/** The whole chain, the last of it first; undefined where a part is none of the six kinds or has another count of numbers. */
export function readTransform(written: string): Affine | undefined {
  const text = written.trim();
  let map: Affine = SAME_PLACE;
  let at = 0;
  while (at < text.length) {
    ONE.lastIndex = at;
    const [whole = '', name = '', list = ''] = ONE.exec(text) ?? [];
    const numbers = readNumbers(list);
    const made = Object.hasOwn(MAKERS, name) && numbers && numbers.length > 0 ? MAKERS[name]?.(numbers) : undefined;
    if (!made) return undefined;
    map = compose(map, made);
    at += whole.length;
  }
  return map.every(Number.isFinite) ? map : undefined;
}
