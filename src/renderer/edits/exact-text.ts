/** A length as text that reads back as that very length: a plain fraction or decimal where there is one. */
import { decimalText, showLength, type Unit } from '../../core/units';

const SAME = 1e-7;

export function exactText(mm: number, jobUnit: Unit): string {
  const shown = showLength(mm, { unit: jobUnit, inchStep: 64, metricStep: 0.1 });
  if (Math.abs(shown.value - mm) < SAME) return shown.text.replace('−', '-');
  return decimalText(mm, jobUnit, jobUnit === 'in' ? 8 : 6).replace(/\.?0+$/, '');
}
