/** Lengths in messages about limits: never rounded past what they say, and never showing what missed a limit as the limit. */
import { decimalText, MM_PER_INCH, showLength, type Showing, type Shown } from './units';

/** What lies no further than this from a mark of a rule is on it, mm. */
const ON_MARK = 1e-6;
/** Decimals that tell any length apart that a job can tell apart. */
const MOST_DIGITS = 9;

const ONE = { in: MM_PER_INCH, cm: 10, mm: 1 } as const;
const DIGITS = { in: 3, cm: 3, mm: 2 } as const;

/** A limit, such that whoever keeps to what is told keeps to the limit: decimals of a least one go up, of a greatest one down. */
export function limitText(mm: number, bound: 'least' | 'most', showing: Showing): string {
  const exact = onMark(mm, showing);
  if (exact) return exact.withUnit;
  const { unit } = showing;
  const grain = 10 ** DIGITS[unit];
  const steps = (mm / ONE[unit]) * grain;
  const within = bound === 'least' ? Math.ceil(steps - ON_MARK) : Math.floor(steps + ON_MARK);
  return signed(within / grain, unit);
}

/**
 * A greatest length that is fixed, not worked out, as someone would say it in the unit asked: 200 mm are 7 3/4 in. Never
 * more than the limit, so that whoever keeps to what is told keeps to it.
 */
export function fixedLimitText(mm: number, showing: Showing): string {
  if (showing.unit !== 'in' || onMark(mm, showing)) return limitText(mm, 'most', showing);
  const inches = mm / MM_PER_INCH;
  const [, grain] = INCH_GRAINS.find(([from]) => inches >= from) ?? [0, 64];
  const within = Math.floor(inches * grain) / grain;
  return within > 0 ? limitText(within * MM_PER_INCH, 'most', showing) : limitText(mm, 'most', showing);
}

/** From so many inches on, parts of an inch that a round length is told in. */
const INCH_GRAINS = [[10, 1], [1, 4], [0, 16]] as const; // prettier-ignore

/** A limit and what missed it, each as finely as it takes to see that it did. */
export interface Missed {
  readonly value: string;
  readonly limit: string;
}

export function missedLimit(mm: number, limit: number, bound: 'least' | 'most', showing: Showing): Missed {
  const told = limitText(limit, bound, showing);
  const exact = onMark(mm, showing);
  if (exact) return { value: exact.withUnit, limit: told };
  const { unit } = showing;
  for (let digits: number = DIGITS[unit]; ; digits += 1) {
    const rounded = Number(decimalText(mm, unit, digits));
    const value = signed(rounded, unit);
    const isBeside = Math.sign(rounded * ONE[unit] - limit) === Math.sign(mm - limit) && value !== told;
    if (digits >= MOST_DIGITS || isBeside) return { value, limit: told };
  }
}

/** The length as a mark of a rule says it exactly, to the step or finer; undefined between marks. */
function onMark(mm: number, showing: Showing): Shown | undefined {
  return [showing, { ...showing, inchStep: 64, metricStep: 0.1 } as const]
    .map((one) => showLength(mm, one))
    .find(({ value }) => Math.abs(value - mm) < ON_MARK);
}

function signed(value: number, unit: Showing['unit']): string {
  return `${String(value).replace('-', '−')} ${unit}`;
}
