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
  /** A plan fitted into its view is at least so large, if it then has to be scrolled; pixels a millimetre. */
  readonly least: number;
}

/** Pixels a millimetre; smaller than this nothing could be told apart. */
export const SMALLEST = 0.12;
export const LARGEST = 6;

/** The largest scale at which all is seen at once, within limits. */
export function fitSheets(boards: readonly (readonly Size[])[], view: Size, around: Around): number {
  let [low, high] = [around.least, LARGEST];
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

/** Of all boards: sheets in lines as they have room, and boards beside one another where they do. */
function heightAt(boards: readonly (readonly Size[])[], width: number, scale: number, around: Around): number {
  const { heading, caption, gap, narrowest } = around;
  const blocks = boards.map((sheets) => {
    const sizes = sheets.map((sheet) => ({
      width: Math.max(narrowest, sheet.width * scale),
      height: caption + sheet.height * scale,
    }));
    const all = flow(sizes, width, gap);
    return { width: all.width, height: heading + all.height };
  });
  return flow(blocks, width, gap).height;
}

/** How much room boxes take in lines that break at a width. */
function flow(boxes: readonly Size[], most: number, gap: number): Size {
  let [line, tallest, width, height] = [0, 0, 0, 0];
  for (const box of boxes) {
    if (line > 0 && line + gap + box.width > most) {
      height += tallest + gap;
      [line, tallest] = [0, 0];
    }
    line += (line > 0 ? gap : 0) + box.width;
    width = Math.max(width, line);
    tallest = Math.max(tallest, box.height);
  }
  return { width, height: height + tallest };
}
