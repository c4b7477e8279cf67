/** Numbers and lengths as SVG attributes write them. */

const NUMBER = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`;
const LENGTH = new RegExp(`^(${NUMBER})([a-z%]*)$`, 'i');
const LIST = new RegExp(String.raw`^\s*(?:${NUMBER}(?:\s*,\s*|\s+|(?=[-+.])))*(?:${NUMBER})?\s*$`);
const EACH = new RegExp(NUMBER, 'g');

/** CSS Values and Units 3, 5.2: absolute lengths in px, of which an inch has 96. */
const PX: Readonly<Record<string, number>> = {
  '': 1,
  px: 1,
  in: 96,
  cm: 96 / 2.54,
  mm: 96 / 25.4,
  q: 96 / 101.6,
  pt: 4 / 3,
  pc: 16,
};

export const MM_PER_PX = 25.4 / 96;

/** A length in px; a part of `whole` where it is written in percent. Undefined of what is none, or depends on type or screen. */
export function readPx(text: string, whole?: number): number | undefined {
  const [, number, unit = ''] = LENGTH.exec(text.trim()) ?? [];
  if (number === undefined) return undefined;
  const scale = unit === '%' ? whole && whole / 100 : PX[unit.toLowerCase()];
  const value = scale === undefined ? NaN : Number(number) * scale;
  return Number.isFinite(value) ? value : undefined;
}

/** Numbers parted by spaces or commas; undefined where there is anything else. */
export function readNumbers(text: string): number[] | undefined {
  if (!LIST.test(text)) return undefined;
  const numbers = (text.match(EACH) ?? []).map(Number);
  return numbers.every(Number.isFinite) ? numbers : undefined;
}
