/** Sets of pieces to plan: framing-like ones, those of published generators, and published instances where they lie beside the project. */
import { existsSync, readFileSync } from 'node:fs';
import type { SheetsAsk } from '../../../src/core/sheets/ask';
import { MM_PER_INCH } from '../../../src/core/units';
import framing from './framing-sets.json';

/** Turned, and upright. */
export const MODES = ['R', 'O'] as const;
export type Mode = (typeof MODES)[number];
export const MODE_WORDS: Readonly<Record<Mode, string>> = { R: 'turned', O: 'upright' };

type Items = readonly (readonly number[])[];

function askOf(
  items: Items,
  stock: readonly (readonly [number, number, number])[],
  mode: Mode,
  unit: number,
  more: Partial<SheetsAsk>,
): SheetsAsk {
  return {
    pieces: items.map(([width = 0, height = 0, count = 0], index) => ({ id: `${index}`, width: width * unit, height: height * unit, count, mayTurn: mode === 'R' })), // prettier-ignore
    stock: stock.map(([width, height, cost]) => ({ id: `${width} x ${height}`, kind: 'sheet', width: width * unit, height: height * unit, cost })), // prettier-ignore
    kerf: 0,
    trim: 0,
    aim: 'sheets',
    seed: 1,
    ...more,
  };
}

export interface FramingSet {
  readonly name: string;
  readonly ask: SheetsAsk;
  /** The best that other solvers found, in cents. */
  readonly listed: number;
}

export function framingSets(): FramingSet[] {
  const stock = [[512, 640, 850], [640, 960, 1550]] as const; // prettier-ignore
  return framing.sets.flatMap(({ count, items, listed }) =>
    listed.flatMap((one) =>
      MODES.map((mode): FramingSet => {
        const unit = MM_PER_INCH / 16;
        const ask = askOf(items, stock, mode, unit, { kerf: one.kerf * unit, aim: 'cost' });
        const name = `${count} pieces, kerf ${one.kerf === 0 ? '0' : '1/8 in'}, ${MODE_WORDS[mode]}`;
        return { name, ask, listed: one[mode] };
      }),
    ),
  );
}

/** The same sets on every run and machine. */
function drawFrom(seed: number): (least: number, most: number) => number {
  let state = seed;
  return (least, most) => {
    state = (state * 1664525 + 1013904223) % 2 ** 32;
    return least + Math.floor((state / 2 ** 32) * (most - least + 1));
  };
}

/** Berkey and Wang, classes 1 to 6: sides from 1 to a most, in square sheets. */
const SQUARES = [[10, 10], [30, 10], [40, 35], [100, 35], [100, 100], [300, 100]] as const; // prettier-ignore

/**
 * Martello and Vigo, classes 7 to 10, in sheets of 100 x 100: of ten pieces seven are of one type and one of each other.
 * Type 1 is wide, 2 high, 3 large, 4 small.
 */
const MOSTLY = [7, 8, 9, 10] as const;
const TYPES = [
  [[67, 100], [1, 50]],
  [[1, 50], [67, 100]],
  [[50, 100], [50, 100]],
  [[1, 50], [1, 50]],
] as const; // prettier-ignore

/** By the published generators, with seeds of our own. */
export function generatedSets(mode: Mode): SheetsAsk[] {
  const counts = [20, 60, 100];
  const squares = SQUARES.flatMap(([side, most], index) =>
    counts.map((count) => {
      const draw = drawFrom(1987 + 10 * index + count);
      const items = Array.from({ length: count }, () => [draw(1, most), draw(1, most), 1]);
      return askOf(items, [[side, side, 1]], mode, 1, {});
    }),
  );
  const mixed = MOSTLY.flatMap((own, index) =>
    counts.map((count) => {
      const draw = drawFrom(1998 + 10 * own + count);
      const items = Array.from({ length: count }, () => {
        const tenth = draw(1, 10);
        const others = [0, 1, 2, 3].filter((type) => type !== index);
        const [wide, high] = TYPES[(tenth <= 7 ? index : (others[tenth - 8] ?? index)) as 0 | 1 | 2 | 3];
        return [draw(wide[0], wide[1]), draw(high[0], high[1]), 1];
      });
      return askOf(items, [[100, 100, 1]], mode, 1, {});
    }),
  );
  return [...squares, ...mixed];
}

interface Instance {
  readonly bin: readonly [number, number];
  readonly items: Items;
  readonly best_known_bins: Readonly<Record<string, number>>;
}

const PUBLISHED = '../shared/packing/data';

export interface PublishedSet {
  readonly ask: SheetsAsk;
  /** The fewest sheets that are known of. */
  readonly best: number;
}

/** None where they are not there. */
function instancesIn<T>(file: string): readonly T[] {
  const path = `${PUBLISHED}/${file}.json`;
  return existsSync(path) ? (JSON.parse(readFileSync(path, 'utf8')) as { readonly instances: readonly T[] }).instances : []; // prettier-ignore
}

/** 500 instances. */
export function publishedSets(mode: Mode): PublishedSet[] {
  return instancesIn<Instance>('classes-1-10').map(({ bin: [width, height], items, best_known_bins }) => ({
    ask: askOf(items, [[width, height, 1]], mode, 1, {}),
    best: best_known_bins[`2BP|${mode}|G`] ?? NaN,
  }));
}

interface SmallInstance {
  readonly name: string;
  readonly bin: readonly [number, number];
  readonly items: Items;
  readonly best_known_bins: number;
}

/**
 * Small cutting-stock instances (Hifi 1997, Cung 2000, Fayard 1998, Oliveira and Ferreira 1990, Tschoeke and Holthoefer 1995,
 * Herz), upright, with the optima of three stages of Chen and others 2016; one whose published value contradicts its bound is
 * left out.
 */
export function cuttingSets(): PublishedSet[] {
  return instancesIn<SmallInstance>('csp-small-3stage')
    .filter(({ name }) => name !== 'wang1983/W')
    .map(({ bin: [width, height], items, best_known_bins }) => ({
      ask: askOf(items, [[width, height, 1]], 'O', 1, {}),
      best: best_known_bins,
    }));
}

interface CountedInstance {
  readonly name: string;
  readonly bins: readonly { readonly w: number; readonly h: number; readonly cost: number; readonly copies: number }[];
  readonly items: Items;
}

/** Hopper and Turton 2002, M1 to M3: sheets of several sizes, so many of each, which cost their area; upright. */
export function countedSets(): readonly { readonly name: string; readonly ask: SheetsAsk }[] {
  return instancesIn<CountedInstance>('vsbp-hopper-turton').map(({ name, bins, items }) => {
    const ask = askOf(items, bins.map(({ w, h, cost }) => [w, h, cost] as const), 'O', 1, { aim: 'cost' }); // prettier-ignore
    return {
      name,
      ask: { ...ask, stock: ask.stock.map((one, index) => ({ ...one, count: bins[index]?.copies ?? 0 })) },
    };
  });
}
