/** Lengths in whole millionths of a millimetre, so that what fills a sheet exactly is known to. */

/** Units to a millimetre: every 1/64 in is a whole number of them. */
export const GRID = 1e6;

export function toGrid(mm: number): number {
  return Math.round(mm * GRID);
}

export function toMm(units: number): number {
  return units / GRID;
}
