/** Written sizes in a field: one line such as `8 x 10 in` or `A4` and how it was read. */
import type { Size } from '../../core/geometry/box';
import { Reader } from '../../core/job/reader';
import type { WrittenSize } from '../../core/job/written';
import { readLength, showLength, type Showing, type Unit } from '../../core/units';
import { fieldText } from './written-length';

export type SizeEcho =
  { readonly ok: true; readonly size: Size; readonly text: string } | { readonly ok: false; readonly message: string };

const CROSS = /\s*[x×*]\s*|\s+by\s+/i;

/** The line a field shows for a written size. */
export function sizeText(written: WrittenSize | undefined, jobUnit: Unit, showing: Showing): string {
  if (written === undefined) return '';
  if (typeof written === 'object') {
    return `${fieldText(written.width, jobUnit, showing)} x ${fieldText(written.height, jobUnit, showing)}`;
  }
  return isBare(written) && showing.unit !== jobUnit ? `${written} ${jobUnit}` : written;
}

/** What to keep of a typed size. */
export function storedSize(typed: string, jobUnit: Unit, showing: Showing): string {
  const text = typed.trim();
  return isBare(text) && showing.unit !== jobUnit ? `${text} ${showing.unit}` : text;
}

/** Reads what a field says and says it back in both systems. */
export function echoSize(text: string, showing: Showing, what: string): SizeEcho {
  const reader = new Reader(showing.unit, { in: showing.inchStep, mm: showing.metricStep });
  const size = reader.size(text, 'size', what);
  const [problem] = reader.problems;
  return problem ? { ok: false, message: problem.message } : { ok: true, size, text: `= ${bothSizes(size, showing)}` };
}

/** A size in the shown unit and, after it, in the other system. */
export function bothSizes(size: Size, showing: Showing): string {
  return `${shownSize(size, showing)} · ${otherSize(size, showing)}`;
}

/** A size in the system it is not shown in. */
export function otherSize(size: Size, showing: Showing): string {
  const other: Showing =
    showing.unit === 'in' ? { ...showing, unit: 'mm', metricStep: 0.1 } : { ...showing, unit: 'in' };
  return shownSize(size, other);
}

/** `8 × 10 in`. */
export function shownSize(size: Size, showing: Showing): string {
  const [width, height] = [showLength(size.width, showing), showLength(size.height, showing)];
  return `${width.rounded || height.rounded ? '≈ ' : ''}${width.text} × ${height.withUnit}`;
}

/** A size of two numbers neither of which says its unit. */
function isBare(text: string): boolean {
  const sides = text.split(CROSS);
  return (
    sides.length === 2 && sides.map((side) => readLength(side, 'mm')).every((reading) => reading.ok && reading.bare)
  );
}
