/** Numbers and lengths as SVG attributes write them. */

const NUMBER = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`;
const LENGTH = new RegExp(`^(${NUMBER})([a-z%]*)$`, 'i');
const NEXT = new RegExp(String.raw`(?:\s*,)?\s*(${NUMBER})`, 'y');

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
  const list = text.trim();
  const numbers: number[] = [];
  for (let at = 0; at < list.length; at = NEXT.lastIndex) {
    NEXT.lastIndex = at;
    const number = list.startsWith(',') ? NaN : Number(NEXT.exec(list)?.[1] ?? NaN);
    if (!Number.isFinite(number)) return undefined;
    numbers.push(number);
  }
  return numbers;
}
