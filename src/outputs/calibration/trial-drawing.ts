/** The drawings of the calibration sheet: the scrap with its four cuts, and a corner that runs over or stops short. */
import { heightOf, widthOf, type Box, type Point, type Side } from '../../core/geometry/box';
import { PENS } from '../paper/pens';
import type { Surface } from '../paper/surface';

const WORDS = { size: 8, align: 'centre' } as const;
const PAST = 2.5;

/** As it lies on the bench, seen from the side that faces the cutter. */
export function drawTrialSquare(surface: Surface, room: Box): void {
  const side = Math.min(widthOf(room), heightOf(room) - 5);
  const left = (room.left + room.right - side) / 2;
  const scrap = { left, right: left + side, top: room.top, bottom: room.top - side };
  const border = side / 3.2;
  const square = {
    left: scrap.left + border,
    right: scrap.right - border,
    top: scrap.top - border,
    bottom: scrap.bottom + border,
  };
  surface.boxes([scrap], PENS.edge);
  surface.lines(cutsOf(square), PENS.cut);
  const middle = { x: (scrap.left + scrap.right) / 2, y: (scrap.top + scrap.bottom) / 2 };
  drawMeasure(surface, 'left', { x: scrap.left, y: middle.y }, { x: square.left, y: middle.y });
  drawMeasure(surface, 'right', { x: square.right, y: middle.y }, { x: scrap.right, y: middle.y });
  drawMeasure(surface, 'top', { x: middle.x, y: square.top }, { x: middle.x, y: scrap.top });
  drawMeasure(surface, 'bottom', { x: middle.x, y: scrap.bottom }, { x: middle.x, y: square.bottom });
  const corners: readonly Point[] = [
    { x: square.left - 4.5, y: square.top + 3 },
    { x: square.right + 4.5, y: square.top + 3 },
    { x: square.right + 4.5, y: square.bottom - 5.5 },
    { x: square.left - 4.5, y: square.bottom - 5.5 },
  ];
  corners.forEach((at, index) => surface.text(String(index + 1), at, { ...WORDS, size: 10, weight: 'bold' }));
  surface.text('borders, seen from the side that faced the cutter', { x: middle.x, y: room.bottom }, WORDS);
}

/** Each cut runs a little past both of its corners. */
function cutsOf({ left, right, top, bottom }: Box): (readonly [Point, Point])[] {
  return [
    [{ x: left, y: bottom - PAST }, { x: left, y: top + PAST }],
    [{ x: left - PAST, y: top }, { x: right + PAST, y: top }],
    [{ x: right, y: top + PAST }, { x: right, y: bottom - PAST }],
    [{ x: right + PAST, y: bottom }, { x: left - PAST, y: bottom }],
  ]; // prettier-ignore
}

function drawMeasure(surface: Surface, side: Side, from: Point, to: Point): void {
  surface.line(from, to, PENS.hair);
  const upright = from.x === to.x;
  for (const end of [from, to]) {
    const across = upright ? { x: 1.2, y: 0 } : { x: 0, y: 1.2 };
    surface.line({ x: end.x - across.x, y: end.y - across.y }, { x: end.x + across.x, y: end.y + across.y }, PENS.mark);
  }
  const at = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  if (upright) surface.text(side, { x: at.x + 1.5, y: at.y - 1 }, { size: 8 });
  else surface.text(side, { x: at.x, y: at.y + 1.2 }, WORDS);
}

/** The lower left corner of the square on its face, much larger: cuts that run over it, or stop short of it. */
export function drawCorner(surface: Surface, room: Box, over: boolean): void {
  const size = Math.min(widthOf(room), heightOf(room) - 16);
  const corner = { x: room.left + size * 0.4, y: room.top - 6 - size * 0.6 };
  const by = size * 0.22;
  const end = over ? by : -by;
  surface.line({ x: corner.x, y: corner.y + size * 0.6 }, { x: corner.x, y: corner.y - end }, PENS.cut);
  surface.line({ x: corner.x + size * 0.6, y: corner.y }, { x: corner.x - end, y: corner.y }, PENS.cut);
  if (!over) {
    surface.line(corner, { x: corner.x, y: corner.y + by }, PENS.overcut);
    surface.line(corner, { x: corner.x + by, y: corner.y }, PENS.overcut);
  }
  const below = corner.y - by - 4;
  const [low, high] = over ? [corner.x - by, corner.x] : [corner.x, corner.x + by];
  for (const x of [low, high]) surface.line({ x, y: below - 1.2 }, { x, y: below + 1.2 }, PENS.mark);
  surface.line({ x: low, y: below }, { x: high, y: below }, PENS.hair);
  const middle = (room.left + room.right) / 2;
  surface.text(
    over ? '+ runs over' : '− stops short',
    { x: middle, y: room.bottom + 4 },
    { ...WORDS, size: 9, weight: 'bold' },
  );
  surface.text('a corner, on the face', { x: middle, y: room.bottom }, WORDS);
}
