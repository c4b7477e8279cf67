/** Changing a job's own unit: every length written without a unit gets the old one beside it, so that none changes. */
import type { WrittenJob } from '../../core/job/written';
import { readLength, type Unit } from '../../core/units';

const LENGTH_KEYS = new Set([
  'left', 'top', 'right', 'bottom', 'width', 'height', 'size', 'image', 'thickness', 'overlap', 'reveal', 'gap', 'columnGap', 'rowGap',
  'allowance', 'lip', 'mouldingWidth', 'rabbetDepth', 'all', 'sides', 'amount', 'step', 'overcut',
  'radius', 'rise', 'cut', 'on', 'behindTrim', 'reach', 'scaleOffset', 'distance',
  'hooksApart', 'hangerDown', 'hangerIn', 'wireBelowTop', 'knots', 'seat', 'standOff', 'outOfLevel', 'bumpers', 'centre', 'offset', 'run',
  'furniture', 'drop', 'depth', 'edge', 'thinnest', 'thickest', 'mouldingDepth', 'grooves', 'insideDepth', 'setBack', 'room', 'screw', 'least', 'greatest',
]); // prettier-ignore

export function changeUnits(written: WrittenJob, units: Unit): WrittenJob {
  const old = written.units ?? 'in';
  if (old === units) return written;
  return { ...(withUnits(written, undefined, old) as WrittenJob), units };
}

/** A part of a job as it can stand elsewhere: every length says its unit. */
export function sayUnits<T>(part: T, units: Unit): T {
  return withUnits(part, undefined, units) as T;
}

function withUnits(value: unknown, key: string | undefined, unit: Unit): unknown {
  if (Array.isArray(value)) return value.map((item) => withUnits(item, key, unit));
  if (value !== null && typeof value === 'object') {
    // A polygon's sides are counted.
    const isCounted = (name: string) => name === 'sides' && 'kind' in value;
    return Object.fromEntries(
      Object.entries(value).map(([name, item]) => [name, isCounted(name) ? item : withUnits(item, name, unit)]),
    );
  }
  if (key === undefined || !LENGTH_KEYS.has(key) || (typeof value !== 'string' && typeof value !== 'number'))
    return value;
  return isBare(String(value)) ? `${value} ${unit}` : value;
}

/** A length, a size or an overlap that names no unit. */
function isBare(text: string): boolean {
  const sides = text.replace(/^\s*(covers|shows)\s+/i, '').split(/\s*[x×*]\s*/i);
  return (
    sides.length <= 2 && sides.map((side) => readLength(side, 'mm')).every((reading) => reading.ok && reading.bare)
  );
}
