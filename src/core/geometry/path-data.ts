/** Outlines as SVG path data: lines and arcs as such, parallel curves of ellipses as cubics. */
import type { Point } from './box';
import { cubicsOf } from './cubics';
import type { Edge } from './edge';

/** Where a point lies on the picture: moved, mirrored, scaled alike both ways, turned by quarters. */
export type Place = (point: Point) => Point;

/** The commands that follow edges from where the first begins; `closed` for a whole outline. Numbers to `digits` decimals. */
export function pathData(edges: readonly Edge[], place: Place, { digits = 4, closed = true } = {}): string {
  const [first] = edges;
  if (!first) return '';
  const write = pointWriter(place, digits);
  const parts = edges.map((edge) => command(edge, place, write, digits));
  return `M${write(first.from)}${parts.join('')}${closed ? 'Z' : ''}`;
}

function pointWriter(place: Place, digits: number): (point: Point) => string {
  return (point) => {
    const { x, y } = place(point);
    return `${rounded(x, digits)} ${rounded(y, digits)}`;
  };
}

function command(edge: Edge, place: Place, write: (point: Point) => string, digits: number): string {
  if (edge.kind === 'line') return `L${write(edge.to)}`;
  if (edge.kind === 'oval' && edge.away !== 0) {
    return cubicsOf(edge)
      .map(([, one, two, to]) => `C${write(one)} ${write(two)} ${write(to)}`)
      .join('');
  }
  const { scale, mirrors } = lieOf(place);
  const radii = edge.kind === 'arc' ? { x: edge.radius, y: edge.radius } : edge.radii;
  const [across, up] = turnsAxes(place) ? [radii.y, radii.x] : [radii.x, radii.y];
  const large = Math.abs(edge.sweep) > Math.PI ? 1 : 0;
  // Flag 1 is the way of growing angle, which with y down is clockwise to the eye.
  const flag = edge.sweep > 0 === !mirrors ? 1 : 0;
  return `A${rounded(across * scale, digits)} ${rounded(up * scale, digits)} 0 ${large} ${flag} ${write(edge.to)}`;
}

function lieOf(place: Place): { scale: number; mirrors: boolean } {
  const [origin, x, y] = [place({ x: 0, y: 0 }), place({ x: 1, y: 0 }), place({ x: 0, y: 1 })];
  const [a, b] = [
    { x: x.x - origin.x, y: x.y - origin.y },
    { x: y.x - origin.x, y: y.y - origin.y },
  ];
  return { scale: Math.hypot(a.x, a.y), mirrors: a.x * b.y - a.y * b.x < 0 };
}

function turnsAxes(place: Place): boolean {
  const [origin, x] = [place({ x: 0, y: 0 }), place({ x: 1, y: 0 })];
  return Math.abs(x.x - origin.x) < Math.abs(x.y - origin.y);
}

function rounded(value: number, digits: number): number {
  const factor = 10 ** digits;
  return Math.round(value * factor) / factor + 0;
}
