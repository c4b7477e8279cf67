/** Written lengths in a field: what to show of them, what to store of what was typed, how it was read, and nudging by a step. */
import {
  decimalText,
  fineText,
  lengthText,
  readLength,
  showLength,
  stepLength,
  type Showing,
  type Unit,
} from '../../core/units';
import { capital } from '../../core/phrases';

/** How a typed length was read, or why it was not. */
export type Echo =
  { readonly ok: true; readonly mm: number; readonly text: string } | { readonly ok: false; readonly message: string };

/**
 * The text a field shows for a written length. A bare number is in the job's unit; where lengths are shown in another one
 * its unit is put beside it, so that it cannot be misread.
 */
export function fieldText(written: string | number | undefined, jobUnit: Unit, showing: Showing): string {
  if (written === undefined) return '';
  const text = String(written);
  if (showing.unit === jobUnit) return text;
  const reading = readLength(text, jobUnit);
  return reading.ok && reading.bare ? `${text} ${jobUnit}` : text;
}

/** What to keep of a typed length: just what was typed, with its unit only where a bare number would mean another one in the job. */
export function storedText(typed: string, jobUnit: Unit, showing: Showing): string {
  const text = typed.trim();
  if (showing.unit === jobUnit) return text;
  const reading = readLength(text, showing.unit);
  return reading.ok && reading.bare ? `${text} ${showing.unit}` : text;
}

/** Reads what a field says, in the unit it shows, and says it back in both systems. */
export function echoOf(text: string, showing: Showing): Echo {
  const reading = readLength(text, showing.unit);
  if (!reading.ok) return { ok: false, message: `${capital(reading.message)}: ${reading.remedy}.` };
  return { ok: true, mm: reading.mm, text: `= ${bothUnits(reading.mm, showing)}` };
}

/** A length in the shown unit and, after it, in the other system. */
export function bothUnits(mm: number, showing: Showing): string {
  return `${nearText(mm, showing)} · ${otherUnit(mm, showing)}`;
}

/** A measure that is known in millimetres, with inches in decimals beside it. */
export function bothExact(mm: number): string {
  return `${mm} mm (${Number(decimalText(mm, 'in', mm < 1 ? 5 : 3))} in)`;
}

/** A length in the system it is not shown in. */
export function otherUnit(mm: number, showing: Showing): string {
  if (showing.unit !== 'in') return nearText(mm, { ...showing, unit: 'in' });
  // Paper is told to a hundredth; a tenth would make 0.25 mm a third thicker than it is.
  if (Math.abs(mm) < 1) return `${Number(decimalText(mm, 'mm', 2))} mm`;
  return lengthText(mm, { ...showing, unit: 'mm', metricStep: 0.1 });
}

/** To the shown step; a length of a few steps, such as an overcut or the thickness of paper, to what it is. */
export function nearText(mm: number, showing: Showing): string {
  const shown = showLength(mm, showing);
  if (!shown.rounded || Math.abs(mm) > FEW_STEPS * stepLength(showing)) return lengthText(mm, showing);
  const finest = showLength(mm, { ...showing, inchStep: 64, metricStep: 0.1 });
  return finest.rounded ? fineText(mm, showing.unit).replace('-', '−') : finest.withUnit;
}

/** Of so few steps a length rounded to a step is off by much. */
const FEW_STEPS = 4;

/** The next length up (1) or down (-1) on the shown step, `times` steps away, as text to store. */
export function nudgedText(mm: number, direction: 1 | -1, times: number, jobUnit: Unit, showing: Showing): string {
  const step = stepLength(showing);
  const place = mm / step;
  const tolerance = 1e-6;
  const base = direction > 0 ? Math.floor(place + tolerance) : Math.ceil(place - tolerance);
  return lengthToStore((base + direction * times) * step, jobUnit, showing);
}

/** A length on the shown step as text to store: bare where the shown unit is the job's own. */
export function lengthToStore(mm: number, jobUnit: Unit, showing: Showing): string {
  const shown = showLength(mm, showing);
  const text = shown.text.replace('−', '-');
  return showing.unit === jobUnit ? text : `${text} ${showing.unit}`;
}
