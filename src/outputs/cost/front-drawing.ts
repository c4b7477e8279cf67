/** Framed mats to scale as they are seen from the front, in rows, each with its number where they are several. */
import type { Box, Size } from '../../core/geometry/box';
import { boxAt } from '../../core/geometry/box';
import { cubicsOf, type Cubic } from '../../core/geometry/cubics';
import type { Layout, LayerOpening } from '../../core/layout/layout';
import type { FrameMoulding } from '../../core/pieces/moulding';
import type { Showing } from '../../core/units';
import type { Block } from '../paper/flow';
import { PENS } from '../paper/pens';
import { atScale, boxAtScale, scalesFor, type At, type Scale } from '../paper/scale';
import type { Surface } from '../paper/surface';
import { lotsOf } from './costs-on-paper';

export interface Seen {
  readonly layout: Layout;
  readonly moulding: FrameMoulding;
}

/** Between drawings, and over each row, mm. */
const AIR = 4;
/** Of the number under a drawing, and of the words on the scale, mm. */
const CAPTION = 5;
const WORDS = 5;
const WOOD = '#d8d0c4';
/** Closer to the curve than a small drawing can show, mm of the mat. */
const FINE = 0.05;

/** Scales at which each of them goes into a room, from the largest: all have one, so that they can be held beside one another. */
export function frontScales(fronts: readonly Seen[], room: Size, showing: Showing): readonly [Scale, ...Scale[]] {
  return scalesFor(largestOf(fronts), { ...room, height: room.height - AIR - CAPTION - WORDS }, showing.unit);
}

/** @param first number of the first; undefined: it is the only one. @param width of the rows, mm. */
export function frontsBlock(fronts: readonly Seen[], first: number | undefined, width: number, scale: Scale): Block {
  const rows = rowsOf(fronts, width, scale);
  const caption = first === undefined ? 0 : CAPTION;
  const heights = rows.map((row) => AIR + largestOf(row).height * scale.factor + caption);
  return {
    height: heights.reduce((sum, height) => sum + height, WORDS),
    withNext: true,
    draw: (surface, { x, y }) => {
      let number = first ?? 0;
      let top = y;
      rows.forEach((row, index) => {
        top -= heights[index] ?? 0;
        let left = x;
        for (const front of row) {
          // Standing side by side on one line.
          drawFront(surface, front, atScale(scale, { x: left, y: top + caption }));
          if (first !== undefined) surface.text(String(number), { x: left, y: top + caption - 3.5 }, { size: 8, weight: 'bold' }); // prettier-ignore
          number += 1;
          left += front.moulding.outside.width * scale.factor + AIR;
        }
      });
      surface.text(`from the front, ${scale.words}`, { x, y: top - 3 }, { size: 7 });
    },
  };
}

/** In as few rows as there can be, each about as full as the others. */
function rowsOf(fronts: readonly Seen[], width: number, scale: Scale): readonly (readonly Seen[])[] {
  for (let count = 1; count < fronts.length; count += 1) {
    const rows = lotsOf(fronts, Math.ceil(fronts.length / count));
    if (rows.every((row) => widthOf(row, scale) <= width + 1e-6)) return rows;
  }
  return fronts.map((front) => [front]);
}

function widthOf(row: readonly Seen[], { factor }: Scale): number {
  return row.reduce((sum, { moulding }) => sum + moulding.outside.width * factor + AIR, -AIR);
}

function largestOf(fronts: readonly Seen[]): Size {
  const outsides = fronts.map(({ moulding }) => moulding.outside);
  return {
    width: Math.max(...outsides.map(({ width }) => width)),
    height: Math.max(...outsides.map(({ height }) => height)),
  };
}

/** @param at of the frame's outside, from its lower left corner. */
function drawFront(surface: Surface, { layout, moulding }: Seen, at: At): void {
  const { outside, section } = moulding;
  const { blank, rabbet } = layout.frame;
  const whole = boxAt({ x: 0, y: 0 }, outside);
  const sight = inset(whole, section.width);
  const boxed = (box: Box) => boxAtScale(at, box);
  surface.fill(boxed(whole), WOOD);
  surface.fill(boxed(sight), 'white');
  surface.boxes([boxed(whole), boxed(sight)], PENS.edge);
  // The blank lies in the middle of the rabbet.
  const wood = section.width - section.lip;
  const shift = { x: wood + (rabbet.width - blank.width) / 2, y: wood + (rabbet.height - blank.height) / 2 };
  const onBlank: At = ({ x, y }) => at({ x: x + shift.x, y: y + shift.y });
  const openings = layout.windows.flatMap(({ layers }) => layers);
  const straight = layout.layers.length === 0 ? layout.windows.map(({ window }) => window) : openings.flatMap(boxesOf);
  surface.boxes(
    straight.map((box) => boxAtScale(onBlank, box)),
    PENS.mark,
  );
  surface.curves(openings.flatMap((opening) => curvesOf(opening, onBlank)), PENS.mark, boxed(sight)); // prettier-ignore
}

function inset({ left, bottom, right, top }: Box, by: number): Box {
  return { left: left + by, bottom: bottom + by, right: right - by, top: top - by };
}

function boxesOf({ opening, outlines }: LayerOpening): Box[] {
  return outlines ? [] : [opening];
}

function curvesOf({ outlines }: LayerOpening, at: At): Cubic[] {
  return (outlines?.opening ?? []).flatMap((edge) =>
    cubicsOf(edge, FINE).map(([from, one, two, to]): Cubic => [at(from), at(one), at(two), at(to)]),
  );
}
