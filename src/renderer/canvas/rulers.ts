/** Rulers: where their marks stand on the screen, and which of them carry a number. */
import { MM_PER_INCH, type Unit } from '../../core/units';
import type { Viewport } from './viewport';

export interface Mark {
  /** Pixels from the start of the ruler. */
  readonly at: number;
  /** 0 for the numbered marks, then 1, 2, ... for shorter ones. */
  readonly rank: number;
  /** Only on numbered marks. */
  readonly text?: string;
}

const CLOSEST_NUMBERS = 52;
const CLOSEST_MARKS = 5;
const SCALES: Readonly<
  Record<Unit, { readonly mm: number; readonly numbered: readonly number[]; readonly parts: readonly number[] }>
> = {
  in: { mm: MM_PER_INCH, numbered: [0.25, 0.5, 1, 2, 4, 6, 12, 24, 48, 96], parts: [2, 4, 8, 16] },
  mm: { mm: 1, numbered: [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000], parts: [2, 5, 10] },
  cm: { mm: 10, numbered: [0.1, 0.5, 1, 2, 5, 10, 20, 50, 100, 200], parts: [2, 5, 10] },
};

/** Marks of a ruler of so many pixels, for the across axis from the left or the up axis from the lower edge; larger text needs more room. */
export function rulerMarks(
  viewport: Viewport,
  axis: 'across' | 'up',
  length: number,
  unit: Unit,
  textScale = 1,
): Mark[] {
  const scale = SCALES[unit];
  const pixels = scale.mm * viewport.scale;
  const step =
    scale.numbered.find((each) => each * pixels >= CLOSEST_NUMBERS * textScale) ?? scale.numbered.at(-1) ?? 1;
  const fits = scale.parts.filter((part) => (step * pixels) / part >= CLOSEST_MARKS);
  const parts = fits.at(-1) ?? 1;
  const valueAt = (pixel: number) => (axis === 'across' ? pixel - viewport.x : viewport.y - pixel) / pixels;
  const [low, high] = [valueAt(0), valueAt(length)].toSorted((a, b) => a - b) as [number, number];
  const first = Math.ceil((low / step) * parts);
  const last = Math.floor((high / step) * parts);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => {
    const place = first + index;
    const value = (place / parts) * step;
    const at = axis === 'across' ? viewport.x + value * pixels : viewport.y - value * pixels;
    if (place % parts === 0) return { at, rank: 0, text: text(value) };
    return { at, rank: 1 + fits.findIndex((part) => place % (parts / part) === 0) };
  });
}

function text(value: number): string {
  return String(Math.round(value * 100) / 100).replace('-', '−');
}
