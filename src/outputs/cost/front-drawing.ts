/** Framed mats to scale as they are seen from the front, side by side. */
import type { Box, Size } from '../../core/geometry/box';
import { boxAt } from '../../core/geometry/box';
import { cubicsOf, type Cubic } from '../../core/geometry/cubics';
import type { Layout, LayerOpening } from '../../core/layout/layout';
import type { FrameMoulding } from '../../core/pieces/moulding';
import type { Showing } from '../../core/units';
import type { Block } from '../paper/flow';
import { PENS } from '../paper/pens';
import { atScale, boxAtScale, scaleFor, type At } from '../paper/scale';
import type { Surface } from '../paper/surface';

export interface Seen {
  readonly layout: Layout;
  readonly moulding: FrameMoulding;
}

/** From the left end of the row to the first drawing, and for each of them, mm. */
export interface Places {
  readonly first: number;
  readonly each: number;
}

const AIR = 3;
const CAPTION = 6;
const WOOD = '#d8d0c4';
/** Closer to the curve than a small drawing can show, mm of the mat. */
const FINE = 0.05;

/** All at one scale, so that they can be held beside one another. @param most height of the highest, mm. */
export function frontsBlock(fronts: readonly Seen[], { first, each }: Places, most: number, showing: Showing): Block {
  const outsides = fronts.map(({ moulding }) => moulding.outside);
  const largest: Size = {
    width: Math.max(...outsides.map(({ width }) => width)),
    height: Math.max(...outsides.map(({ height }) => height)),
  };
  const scale = scaleFor(largest, { width: each - AIR, height: most }, showing.unit);
  const high = largest.height * scale.factor;
  return {
    height: high + AIR + CAPTION,
    withNext: true,
    draw: (surface, { x, y }) => {
      fronts.forEach((front, index) => {
        // Standing side by side on one line, each over the words of its column.
        const corner = { x: x + first + index * each, y: y - AIR - high };
        drawFront(surface, front, atScale(scale, corner));
      });
      const words = `from the front, ${scale.words}`;
      surface.text(words, { x: x + first, y: y - AIR - high - 4 }, { size: 7 });
    },
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
