/** Lengths as SVG writes them, in user units: CSS pixels, 96 to the inch (CSS Values and Units 3, 5.2; SVG 2, 8.8). */

export const PIXELS_PER_INCH = 96;

const PIXELS: Readonly<Record<string, number>> = {
  '': 1,
  px: 1,
  in: PIXELS_PER_INCH,
  cm: PIXELS_PER_INCH / 2.54,
  mm: PIXELS_PER_INCH / 25.4,
  q: PIXELS_PER_INCH / 101.6,
  // Six picas to the inch, of twelve points each.
  pt: PIXELS_PER_INCH / 6 / 12,
  pc: PIXELS_PER_INCH / 6,
};

/** What lengths must be, for those who are told so. */
export const RIGHT_LENGTH = 'a number, alone or with in, mm, cm, Q, pt, pc, px or %';

/** @param whole what 100 % is, where that is known. Undefined of what is no length, or depends on a font or a screen. */
export function pixelsOf(written: string, whole?: number): number | undefined {
  const [, number, unit = ''] = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*([a-z]*|%)\s*$/i.exec(written) ?? [];
  if (number === undefined) return undefined;
  const factor = unit === '%' ? (whole === undefined ? undefined : whole / 100) : PIXELS[unit.toLowerCase()];
  return factor === undefined ? undefined : Number(number) * factor;
}
