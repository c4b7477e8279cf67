/** Sizes that ready-made frames are sold in: frame size (the blank), upright, with the names they go by. */
import type { Size } from '../geometry/box';
import { isoSize } from './iso-216';

export interface ReadyMadeSize extends Size {
  readonly name: string;
}

// Common practice, no source: sizes found on shop shelves, in inches.
const INCHES = [
  [4, 6], [5, 7], [8, 10], [9, 12], [10, 12], [11, 14], [12, 12], [12, 16], [14, 18], [16, 20], [18, 24],
  [20, 20], [20, 24], [22, 28], [24, 30], [24, 36], [30, 40],
] as const; // prettier-ignore

// Common practice, no source (from memory): sizes found on shop shelves, in centimetres.
const CENTIMETRES = [
  [10, 15], [13, 18], [18, 24], [20, 30], [24, 30], [30, 30], [30, 40], [40, 50], [50, 50], [50, 60], [50, 70], [60, 80], [70, 100],
] as const; // prettier-ignore

const ISO = ['A5', 'A4', 'A3', 'A2', 'A1', 'A0', 'B2', 'B1'] as const;

/** Every size, inches first, then centimetres, then ISO 216. */
export const READY_MADE_SIZES: readonly ReadyMadeSize[] = [
  ...INCHES.map(([w, h]) => ({ name: `${w}x${h} in`, width: (w * 254) / 10, height: (h * 254) / 10 })),
  ...CENTIMETRES.map(([w, h]) => ({ name: `${w}x${h} cm`, width: w * 10, height: h * 10 })),
  ...ISO.flatMap((name) => {
    const size = isoSize(name);
    return size ? [{ name, ...size }] : [];
  }),
];

/** Finds a size by name, whichever way round its sides are said; `in` may be left out. `turned` when said lying. */
export function findReadyMade(name: string): { size: ReadyMadeSize; turned: boolean } | undefined {
  const wanted = plain(name);
  for (const size of READY_MADE_SIZES) {
    if (wanted === plain(size.name)) return { size, turned: false };
    if (wanted === plain(otherWayRound(size.name))) return { size, turned: true };
  }
  return undefined;
}

/** Name of the ready-made size a blank has, lying or upright; undefined for a custom one. */
export function nameOfSize(blank: Size): string | undefined {
  const same = (a: number, b: number) => Math.abs(a - b) < 1e-6;
  for (const { name, width, height } of READY_MADE_SIZES) {
    if (same(blank.width, width) && same(blank.height, height)) return name;
    if (same(blank.width, height) && same(blank.height, width)) return otherWayRound(name);
  }
  return undefined;
}

function plain(name: string): string {
  return name
    .toLowerCase()
    .replace(/×/g, 'x')
    .replace(/\s+/g, '')
    .replace(/(?:inches|inch|in|")$/, '');
}

function otherWayRound(name: string): string {
  return name.replace(/^(\d+)x(\d+)/, '$2x$1');
}
