/** At which scale sheets have room side by side in a view, boards below one another. */
import type { Size } from '../../core/geometry/box';

/** Pixels. */
export interface Around {
  /** Over each board. */
  readonly heading: number;
  /** Over each sheet. */
  readonly caption: number;
  readonly gap: number;
  /** A sheet's caption needs as much. */
  readonly narrowest: number;
}

/** Pixels a millimetre; smaller than this nothing could be told apart. */
export const SMALLEST = 0.12;
export const LARGEST = 6;
/** A plan fitted into its view is at least so large, if it then has to be scrolled. */
const LEAST_FITTED = 0.16;

/** The largest scale at which all is seen at once, within limits. */
export function fitSheets(boards: readonly (readonly Size[])[], view: Size, around: Around): number {
  let [low, high] = [LEAST_FITTED, LARGEST];
  if (heightAt(boards, view.width, low, around) > view.height) return widthFit(boards, view.width, low);
  for (let round = 0; round < 24; round += 1) {
    const middle = (low + high) / 2;
    const widest = Math.max(0, ...boards.flat().map(({ width }) => width * middle));
    if (widest <= view.width && heightAt(boards, view.width, middle, around) <= view.height) low = middle;
    else high = middle;
  }
  return low;
}

/** Where it has to be scrolled anyway, sheets are as large as lets one be seen whole. */
function widthFit(boards: readonly (readonly Size[])[], width: number, least: number): number {
  const widest = Math.max(1, ...boards.flat().map((size) => size.width));
  return Math.max(SMALLEST, Math.min(least, width / widest));
}

/** Of all boards, with sheets in lines as they have room. */
function heightAt(boards: readonly (readonly Size[])[], width: number, scale: number, around: Around): number {
  const { heading, caption, gap, narrowest } = around;
  return boards.reduce((sum, sheets) => {
    let [line, height] = [0, 0];
    let all = heading;
    for (const sheet of sheets) {
      const wide = Math.max(narrowest, sheet.width * scale);
      if (line > 0 && line + gap + wide > width) {
        all += height + gap;
        [line, height] = [0, 0];
      }
      line += (line > 0 ? gap : 0) + wide;
      height = Math.max(height, caption + sheet.height * scale);
    }
    return sum + all + height + gap;
  }, 0);
}
