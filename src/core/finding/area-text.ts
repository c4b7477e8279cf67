/** Areas of board and glazing in words. */
import { MM_PER_INCH, type Unit } from '../units';

/** `616 sq in` beside inches, `0.3974 m²` beside millimetres and centimetres, which is how boards are bought. */
export function boardArea(squareMm: number, unit: Unit): string {
  return unit === 'in'
    ? `${Number((squareMm / MM_PER_INCH ** 2).toFixed(1))} sq in`
    : `${Number((squareMm / 1e6).toFixed(4))} m²`;
}
