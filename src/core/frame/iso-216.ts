/** Paper sizes of ISO 216, series A and B, mm (values as listed in the standard's table of trimmed sizes). */
import type { Size } from '../geometry/box';

/** Short edge and long edge, A0 to A10. */
const A = [
  [841, 1189], [594, 841], [420, 594], [297, 420], [210, 297], [148, 210], [105, 148], [74, 105], [52, 74], [37, 52], [26, 37],
] as const; // prettier-ignore

/** Short edge and long edge, B0 to B5. */
const B = [[1000, 1414], [707, 1000], [500, 707], [353, 500], [250, 353], [176, 250]] as const; // prettier-ignore

/** The upright size of a name such as `A4` or `b2`; undefined for anything else. */
export function isoSize(name: string): Size | undefined {
  const found = /^([AB])(\d{1,2})$/i.exec(name.trim());
  const pair = (found?.[1]?.toUpperCase() === 'A' ? A : B)[Number(found?.[2])];
  return found && pair ? { width: pair[0], height: pair[1] } : undefined;
}
