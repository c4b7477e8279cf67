/** Masses: kilograms inside, read and shown in pounds and ounces or in kilograms and grams. */
import type { Unit } from './units';

/** Exact since 1 July 1959: NIST Handbook 44, Appendix C (from memory). */
export const KG_PER_POUND = 0.45359237;
/** Standard gravity, m/s²: 3rd CGPM, 1901 (from memory). */
export const GRAVITY = 9.80665;

const KG: Readonly<Record<string, number>> = {
  kg: 1,
  g: 0.001,
  lb: KG_PER_POUND,
  lbs: KG_PER_POUND,
  oz: KG_PER_POUND / 16,
};

/** Nothing that hangs on a wall is heavier, kg. */
export const HEAVIEST = 10_000;

export type MassReading = { readonly ok: true; readonly kg: number } | { readonly ok: false; readonly message: string };

const ONE = /^(\d+(?:[.,]\d+)?|[.,]\d+)\s*(kg|g|lbs?|oz)\.?$/i;
const POUNDS_AND_OUNCES = /^(\d+)\s*lbs?\.?\s+(\d+(?:[.,]\d+)?)\s*oz\.?$/i;
const EXAMPLES = 'write it with its unit, like 2.5 kg, 350 g, 8.4 lb or 3 lb 6 oz';

/** Reads a mass with its unit, to kg; refuses one without (pounds and kilograms are too far apart to guess) and `1,000`. */
export function readMass(written: string): MassReading {
  const text = written.trim().replace(/\s+/g, ' ');
  const both = POUNDS_AND_OUNCES.exec(text);
  if (both) return within(number(both[1]) * KG_PER_POUND + (number(both[2]) * KG_PER_POUND) / 16);
  const one = ONE.exec(text);
  if (!one) return refuse(`“${text.slice(0, 40)}” is not a weight; ${EXAMPLES}`);
  if (/^\d+,\d{3}$/.test(one[1] ?? '')) {
    return refuse(`“${text.slice(0, 40)}” could mean a thousand or a fraction; write 1000 or 1.000`);
  }
  return within(number(one[1]) * (KG[(one[2] ?? '').toLowerCase()] ?? NaN));
}

/** As people say it: pounds where lengths are in inches, else kilograms, or grams below one. */
export function massText(kg: number, unit: Unit): string {
  if (unit === 'in') {
    const pounds = kg / KG_PER_POUND;
    return pounds < 1 ? `${decimal(pounds * 16, 1)} oz` : `${decimal(pounds, pounds < 100 ? 1 : 0)} lb`;
  }
  return kg < 1 ? `${Math.round(kg * 1000)} g` : `${decimal(kg, kg < 100 ? 2 : 0)} kg`;
}

function decimal(value: number, digits: number): string {
  return value.toFixed(digits);
}

function number(text: string | undefined): number {
  return Number((text ?? '').replace(',', '.'));
}

function within(kg: number): MassReading {
  return kg <= HEAVIEST ? { ok: true, kg } : refuse(`this is heavier than anything that hangs on a wall; ${EXAMPLES}`);
}

function refuse(message: string): MassReading {
  return { ok: false, message };
}
