/** Changes to a list of grooves and ruled lines. */
import { defaultLength } from '../../core/job/defaults';
import { exactText } from '../../core/job/exact-text';
import type { WrittenLine } from '../../core/job/written-lines';
import { MM_PER_INCH, readLength, type Unit } from '../../core/units';

/** The list with one more, clear of the others: outside the outermost. */
export function addLine(lines: readonly WrittenLine[], kind: WrittenLine['kind'], units: Unit): WrittenLine[] {
  if (lines.length === 0) return [{ kind }];
  const apart = units === 'in' ? MM_PER_INCH / 4 : 6;
  const furthest = Math.max(...lines.map((line) => distanceOf(line, units)));
  return [...lines, { kind, distance: exactText(furthest + apart, units) }];
}

/** A length that can't be read counts as the usual one. */
function distanceOf({ distance }: WrittenLine, units: Unit): number {
  const reading = distance === undefined ? undefined : readLength(distance, units);
  return reading?.ok ? reading.mm : defaultLength('lineDistance', units);
}

/** The same place, made the other way; measures that mean something else there are left out. */
export function asKind({ distance }: WrittenLine, kind: WrittenLine['kind']): WrittenLine {
  return { kind, ...(distance === undefined ? {} : { distance }) };
}
