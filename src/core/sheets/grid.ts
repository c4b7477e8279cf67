/** Lengths in whole parts of a millimetre, finer than a millionth, so that what fills a sheet exactly is known to. */

/** Units to a millimetre: every 1/64 in, thirds, sevenths and ninths of an inch and of a tenth of a millimetre are whole numbers of them. */
export const GRID = 63e6;

export function toGrid(mm: number): number {
  return Math.round(mm * GRID);
}

export function toMm(units: number): number {
  return units / GRID;
}
