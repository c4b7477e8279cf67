/** Putting a piece on a sheet by hand: where edges pull it, and why it can't lie somewhere. */
import { heightOf, widthOf, type Box, type Point, type Size } from '../geometry/box';
import { lengthText, sizeText, type Showing } from '../units';
import type { SheetsAsk, Stock } from './ask';

/** Of lengths that were read in another unit, mm. */
const LAST_BITS = 1e-6;

/** What may be cut of a sheet: all of it but the margin that is trimmed off, mm. */
export function usablePart({ kind, width, height }: Stock, { trim }: Pick<SheetsAsk, 'trim'>): Box {
  const off = kind === 'sheet' ? trim : 0;
  return { left: off, bottom: off, right: width - off, top: height - off };
}

export interface Pulls {
  readonly sheet: Box;
  /** What else lies there. */
  readonly others: readonly Box[];
  /** Left between two pieces, mm. */
  readonly kerf: number;
  /** How near an edge pulls, mm. */
  readonly reach: number;
  /** What is on no edge comes to a multiple of it from the sheet's corner, mm. */
  readonly step: number;
}

/** Where a piece comes to lie that is let go at a point: its lower left corner on the sheet, mm. */
export function pulledTo(size: Size, corner: Point, pulls: Pulls): Point {
  const { sheet, others, kerf } = pulls;
  return {
    x: pulled(corner.x, size.width, [sheet.left, sheet.right], others.map(({ left, right }) => [left, right]), pulls), // prettier-ignore
    y: pulled(corner.y, size.height, [sheet.bottom, sheet.top], others.map(({ bottom, top }) => [bottom, top]), pulls), // prettier-ignore
  };

  function pulled(
    at: number,
    length: number,
    [start, end]: readonly [number, number],
    spans: readonly (readonly [number, number])[],
    { reach, step }: Pulls,
  ): number {
    const edges = [start, end - length, ...spans.flatMap(([low, high]) => [low, high - length, high + kerf, low - kerf - length])]; // prettier-ignore
    const nearest = edges.reduce((a, b) => (Math.abs(b - at) < Math.abs(a - at) ? b : a));
    const wanted = Math.abs(nearest - at) <= reach ? nearest : start + Math.round((at - start) / step) * step;
    // Over the edge by less than the reach is a slip of the hand.
    if (wanted < start && start - wanted <= reach) return start;
    return wanted > end - length && wanted - (end - length) <= reach ? end - length : wanted;
  }
}

/** Why a piece can't be pinned there, in words; undefined where it can. @param pins what is pinned on that sheet already. */
export function whyNotThere(
  piece: { readonly name: string; readonly box: Box },
  sheet: Box,
  pins: readonly { readonly name: string; readonly box: Box }[],
  kerf: number,
  showing: Showing,
): string | undefined {
  const { name, box } = piece;
  const size = { width: widthOf(box), height: heightOf(box) };
  if (size.width > widthOf(sheet) + LAST_BITS || size.height > heightOf(sheet) + LAST_BITS)
    return `${name} is ${sizeText(size, showing)} as it lies, more than the ${sizeText({ width: widthOf(sheet), height: heightOf(sheet) }, showing)} that can be cut of this sheet.`;
  const beyond = Math.max(sheet.left - box.left, box.right - sheet.right, sheet.bottom - box.bottom, box.top - sheet.top); // prettier-ignore
  if (beyond > LAST_BITS)
    return `${name} would reach ${lengthText(beyond, showing)} beyond what can be cut of this sheet. Move it in by as much.`;
  const under = pins.find((pin) => overlap(grown(pin.box, kerf), box));
  if (under) return `${name} would lie over ${under.name}, which is pinned there${kerf > 0 ? ', or nearer than the saw needs' : ''}. Put it beside that, or unpin that first.`; // prettier-ignore
  return undefined;
}

function grown({ left, bottom, right, top }: Box, by: number): Box {
  return { left: left - by, bottom: bottom - by, right: right + by, top: top + by };
}

function overlap(one: Box, other: Box): boolean {
  return (
    one.left < other.right - LAST_BITS &&
    other.left < one.right - LAST_BITS &&
    one.bottom < other.top - LAST_BITS &&
    other.bottom < one.top - LAST_BITS
  );
}

