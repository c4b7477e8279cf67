/** A length as text that reads back as that very length: a plain fraction or decimal where there is one. */
import { decimalText, showLength, type Unit } from '../units';

const SAME = 1e-7;

/** A place as short as it can be read: to a tenth of a thousandth of an inch, or a thousandth of a millimetre. */
export function placeText(mm: number, jobUnit: Unit): string {
  const exact = exactText(mm, jobUnit);
  const short = decimalText(mm, jobUnit, jobUnit === 'in' ? 4 : jobUnit === 'cm' ? 4 : 3).replace(/\.?0+$/, '');
  return exact.includes('/') || exact.length <= short.length ? exact : short;
}

export function exactText(mm: number, jobUnit: Unit): string {
  const shown = showLength(mm, { unit: jobUnit, inchStep: 64, metricStep: 0.1 });
  if (Math.abs(shown.value - mm) < SAME) return shown.text.replace('−', '-');
  return decimalText(mm, jobUnit, jobUnit === 'in' ? 8 : jobUnit === 'cm' ? 7 : 6).replace(/\.?0+$/, '');
}
