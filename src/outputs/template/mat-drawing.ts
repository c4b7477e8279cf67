/** The small drawing of the mat that says which piece, which side and which way up. */
import { heightOf, widthOf, type Box, type Point, type Size } from '../../core/geometry/box';
import { cubicsOf, type Cubic } from '../../core/geometry/cubics';
import type { Outline } from '../../core/geometry/outline';
import { PENS } from '../paper/pens';
import type { Surface } from '../paper/surface';
import type { ViewWindow } from './view-geometry';

export interface MatDrawing {
  readonly blank: Size;
  readonly openings: readonly Pick<ViewWindow, 'opening' | 'outline'>[];
  readonly names?: readonly string[];
  /** Part of the blank to be set off, such as the tile of this page. */
  readonly marked?: Box;
  /** Lines across the blank where pages join. */
  readonly columns?: readonly number[];
  readonly rows?: readonly number[];
  /** Grooves and ruled lines. */
  readonly lines?: readonly Outline[];
  /** Windows in grey, so that numbers over them stand out. */
  readonly faint?: boolean;
}

/** Closer to the curve than a small drawing can show, mm of the blank. */
const FINE = 0.05;

/** Draws the mat as large as it fits, in the middle of the room; returns how blank coordinates lie on the page. */
export function drawMat(surface: Surface, room: Box, drawing: MatDrawing): (point: Point) => Point {
  const { blank } = drawing;
  const scale = Math.min(widthOf(room) / blank.width, heightOf(room) / blank.height);
  const left = (room.left + room.right - blank.width * scale) / 2;
  const bottom = (room.bottom + room.top - blank.height * scale) / 2;
  const at = (point: Point): Point => ({ x: left + point.x * scale, y: bottom + point.y * scale });
  const boxAtScale = (box: Box): Box => {
    const low = at({ x: box.left, y: box.bottom });
    const high = at({ x: box.right, y: box.top });
    return { left: low.x, bottom: low.y, right: high.x, top: high.y };
  };
  const sheet = { left: 0, bottom: 0, right: blank.width, top: blank.height };
  if (drawing.marked) surface.fill(boxAtScale(drawing.marked), '#cccccc');
  surface.boxes([boxAtScale(sheet)], PENS.edge);
  const pen = drawing.faint ? PENS.faint : PENS.mark;
  surface.boxes(
    drawing.openings.flatMap((window) => (window.outline ? [] : [boxAtScale(window.opening)])),
    pen,
  );
  const curved = (outline: Outline) =>
    outline
      .flatMap((edge) => cubicsOf(edge, FINE))
      .map(([from, one, two, to]): Cubic => [at(from), at(one), at(two), at(to)]);
  surface.curves(
    drawing.openings.flatMap(({ outline }) => (outline ? curved(outline) : [])),
    pen,
    boxAtScale(sheet),
  );
  surface.curves((drawing.lines ?? []).flatMap(curved), PENS.hair, boxAtScale(sheet));
  const joins = [
    ...(drawing.columns ?? []).slice(1, -1).map((x) => [at({ x, y: 0 }), at({ x, y: blank.height })] as const),
    ...(drawing.rows ?? []).slice(1, -1).map((y) => [at({ x: 0, y }), at({ x: blank.width, y })] as const),
  ];
  surface.lines(joins, PENS.hair);
  for (const [index, name] of (drawing.names ?? []).entries()) {
    const opening = drawing.openings[index];
    if (opening) drawName(surface, name, boxAtScale(opening.opening));
  }
  return at;
}

/** Names a window in its middle, as large as it allows, unless it is too small to be read. */
function drawName(surface: Surface, name: string, box: Box): void {
  const size = Math.min(11, heightOf(box) * 1.6, (widthOf(box) * 2) / name.length);
  if (size < 3) return;
  const middle = { x: (box.left + box.right) / 2, y: (box.bottom + box.top) / 2 - size * 0.125 };
  surface.text(name, middle, { size, weight: 'bold', align: 'centre' });
}
