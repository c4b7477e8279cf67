/** Options that are lengths or sizes: one rule for all, since a bare number could be inches or millimetres. */
import { isoSize } from '../core/frame/iso-216';
import type { Size } from '../core/geometry/box';
import { Reader, type Limits } from '../core/job/reader';
import { bad, good, type Result } from '../core/problem';
import { readLength, unitWord, type Unit } from '../core/units';

/**
 * mm; undefined where none is written. Only 0 needs no unit.
 *
 * @param name of the option, with its dashes.
 */
export function lengthOption(name: string, written: string | undefined, limits: Limits): Result<number | undefined> {
  if (written === undefined) return good(undefined);
  const reading = readLength(written, 'in');
  if (reading.ok && reading.bare && reading.mm !== 0) return withoutUnit(name, limits.name, written);
  const reader = readerIn(reading.ok ? reading.unit : 'in');
  const mm = reader.length(written, name, { ...limits, isFixed: true }, NaN);
  return reader.problems.length > 0 ? bad(reader.problems) : good(mm);
}

/** Width x height, mm, with the unit once or twice, or by a name such as A4. */
export function sizeOption(name: string, written: string | undefined, what: string): Result<Size | undefined> {
  if (written === undefined) return good(undefined);
  const reader = readerIn('in');
  const size = reader.size(written, name, what);
  if (reader.problems.length > 0) return bad(reader.problems);
  const [sheet = ''] = written.trim().split(/\s/);
  const saysUnit = isoSize(sheet) !== undefined || written.split(/[x×*]|\s+by\s+/i).some((side) => unitWord(side));
  return saysUnit ? good(size) : withoutUnit(name, `Size of ${what}`, written);
}

function readerIn(unit: Unit): Reader {
  return new Reader(unit, { in: 16, mm: 0.5 });
}

function withoutUnit(name: string, what: string, written: string): Result<never> {
  const text = written.trim().slice(0, 40);
  const remedy = `write "${text} in" or "${text} mm"`;
  const message = `${what}: ${text} does not say its unit; ${remedy}.`;
  return bad([{ code: 'length-unreadable', severity: 'error', at: name, message, value: text, remedy }]);
}
