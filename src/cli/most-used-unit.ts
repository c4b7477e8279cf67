/** The unit that the lengths of a table are told in, where none is asked for. */
import type { Unit } from '../core/units';

export const UNITS = ['in', 'mm', 'cm'] as const satisfies readonly Unit[];

/** Of those that a file names behind its numbers or in its headings, the one it names most. */
export function mostUsedUnit(text: string): Unit {
  const count = (unit: Unit) => text.match(new RegExp(String.raw`(?:\d\s*|\(\s*)${unit}\b`, 'gi'))?.length ?? 0;
  return UNITS.reduce((most, unit) => (count(unit) > count(most) ? unit : most));
}
