/** The shelf that a user begins with: generic sizes and fixings, without prices, to be changed into their own. */
import { isoSize } from '../frame/iso-216';
import { KG_PER_POUND } from '../mass';
import { MM_PER_INCH } from '../units';
import type { Shelf, ShelfFrame, ShelfItem } from './shelf';

// Common practice, no source: sizes that ready-made frames are sold in.
const INCHES = [[8, 10], [9, 12], [11, 14], [14, 18], [16, 20], [18, 24], [22, 28], [24, 30], [24, 36]] as const; // prettier-ignore

// Common practice, no source (from memory): sizes found on shop shelves, in centimetres.
const CENTIMETRES = [[13, 18], [18, 24], [20, 30], [24, 30], [30, 40], [40, 50], [50, 60], [50, 70], [60, 80], [70, 100]] as const; // prettier-ignore

const ISO = ['A5', 'A4', 'A3', 'A2', 'A1'] as const;

/** Common practice, no source: offset clips are bent for canvases that stand out by these, in. */
const CLIP_STEPS = [['0', 0], ['1/8', 0.125], ['1/4', 0.25], ['3/8', 0.375], ['1/2', 0.5], ['3/4', 0.75], ['1', 1]] as const; // prettier-ignore

/** In inches: common practice, no source. In metric: ISO 216 and the usual centimetre sizes (from memory). */
export function startShelf(system: 'inch' | 'metric'): Shelf {
  const frames =
    system === 'inch'
      ? INCHES.map(([width, height]) => frame(`${width}x${height} in`, inches(width), inches(height)))
      : [
          ...CENTIMETRES.map(([width, height]) => frame(`${width}x${height} cm`, width * 10, height * 10)),
          ...ISO.flatMap((name) => {
            const size = isoSize(name);
            return size ? [frame(name, size.width, size.height)] : [];
          }),
        ];
  return [...frames, ...FIXINGS];
}

function frame(name: string, width: number, height: number): ShelfFrame {
  return {
    kind: 'frame',
    name,
    size: { width, height },
    build: 'open back',
    corners: 'mitred',
    comesWith: [],
    grooves: [],
  };
}

const FIXINGS: readonly ShelfItem[] = [
  // Common practice, no source: the load that coated wire of this gauge is sold for.
  { kind: 'wire', name: 'No. 5 coated wire', load: 25 * KG_PER_POUND },
  ...CLIP_STEPS.map(([name, step]) => ({
    kind: 'clip' as const,
    name: name === '0' ? 'Flush clip' : `${name} in offset clip`,
    step: inches(step),
  })),
];

function inches(value: number): number {
  return (value * (MM_PER_INCH * 10)) / 10;
}
