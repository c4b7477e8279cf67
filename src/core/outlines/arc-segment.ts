/** The elliptical arc of path data, said by its ends, as one said by its middle (SVG 2, appendix B.2). */
import type { Point } from '../geometry/box';
import type { Segment } from './segment';

export interface WrittenArc {
  readonly from: Point;
  readonly to: Point;
  readonly radii: Point;
  readonly turnDegrees: number;
  readonly large: boolean;
  readonly growing: boolean;
}

/** An arc with radii so many times its chord stands off from it by a hundred-millionth: a line. */
const STRAIGHT = 1e7;

/** A line where a radius is nothing; with radii too small for their ends made just large enough (B.2.5). */
export function arcSegment({ from, to, radii, turnDegrees, large, growing }: WrittenArc): Segment {
  let [across, up] = [Math.abs(radii.x), Math.abs(radii.y)];
  const isFlat = !large && Math.min(across, up) > STRAIGHT * Math.hypot(to.x - from.x, to.y - from.y);
  if (across === 0 || up === 0 || isFlat) return { kind: 'line', from, to };
  const turn = (turnDegrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const half = { x: (from.x - to.x) / 2, y: (from.y - to.y) / 2 };
  // As seen from the ellipse's own axes.
  const own = { x: cos * half.x + sin * half.y, y: -sin * half.x + cos * half.y };
  const need = Math.hypot(own.x / across, own.y / up);
  if (need > 1) [across, up] = [across * need, up * need];
  const [u, v] = [own.x / across, own.y / up];
  const square = u * u + v * v;
  const off = (large === growing ? -1 : 1) * Math.sqrt(Math.max(0, 1 / square - 1));
  const [p, q] = [off * v, -off * u];
  const start = Math.atan2(v - q, u - p);
  const end = Math.atan2(-v - q, -u - p);
  const whole = 2 * Math.PI;
  const raw = end - start;
  const sweep = growing ? (raw < 0 ? raw + whole : raw) : raw > 0 ? raw - whole : raw;
  return {
    kind: 'ellipse',
    from,
    to,
    centre: {
      x: cos * p * across - sin * q * up + (from.x + to.x) / 2,
      y: sin * p * across + cos * q * up + (from.y + to.y) / 2,
    },
    one: { x: cos * across, y: sin * across },
    other: { x: -sin * up, y: cos * up },
    start,
    sweep,
  };
}
