/** The drawing to cut by: the blank's edges, cut lines from corner to corner, overcuts and corner marks, on one page. */
import { bladePath } from '../../core/cutting/outline-cuts';
import type { CutLine } from '../../core/cutting/plan';
import { sweptArea, type Edge } from '../../core/geometry/edge';
import type { Point } from '../../core/geometry/box';
import type { Unit } from '../../core/units';
import { PENS, type Pen } from '../paper/pens';
import { boxRound, type Room } from '../paper/room';
import type { Surface } from '../paper/surface';
import { drawCurves, drawFigures, drawTicks } from './curve-drawing';
import { onPage, type Part } from './part';
import { clipLine, contains, cornersOf, type ViewWindow } from './view-geometry';

const CORNER_CIRCLE = 1.6;
const CORNER_CROSS = 1;

/** Draws the part and takes the room of its lines, so that no label lies on them. */
export function drawCuts(surface: Surface, part: Part, room: Room, unit: Unit): void {
  const { blank, windows } = part.layer;
  const sheet = cornersOf({ left: 0, bottom: 0, right: blank.width, top: blank.height });
  drawClipped(
    surface,
    part,
    room,
    sheet.map((from, index) => [from, sheet[(index + 1) % 4] ?? from]),
    PENS.edge,
  );
  const lines = windows.flatMap((window) => window.lines);
  drawClipped(
    surface,
    part,
    room,
    lines.flatMap((line) => (line.curve ? [] : [[line.start, line.end] as const])),
    PENS.cut,
  );
  for (const window of windows) drawWindowCurves(surface, part, room, window, unit);
  const past = lines.flatMap((line) => (line.curve ? [] : overcutsOf(line)));
  drawClipped(
    surface,
    part,
    room,
    past.filter(([from, to]) => from.x !== to.x || from.y !== to.y),
    PENS.overcut,
  );
  for (const window of windows) {
    for (const corner of cornersIn(window)) {
      if (contains(part.drawn, corner)) drawCorner(surface, onPage(part, corner), room);
    }
  }
}

function overcutsOf({ start, end, bladeStart, bladeEnd }: CutLine): (readonly [Point, Point])[] {
  return [
    [start, bladeStart],
    [end, bladeEnd],
  ];
}

/** Where one cut ends and the next begins. A curve without corners has no such place. */
function cornersIn({ lines }: ViewWindow): readonly Point[] {
  return lines.length === 1 ? [] : lines.map(({ start }) => start);
}

function drawWindowCurves(surface: Surface, part: Part, room: Room, window: ViewWindow, unit: Unit): void {
  const waste = wasteOf(window);
  for (const line of window.lines) {
    const { curve } = line;
    if (!curve) continue;
    drawCurves(surface, part, room, curve, PENS.cut);
    // A closed curve runs on along itself, where there is a line already.
    const past = window.lines.length > 1 ? bladePath(line).filter((edge) => !curve.includes(edge)) : [];
    drawCurves(surface, part, room, past, PENS.overcut);
    drawTicks(surface, part, curve, waste, unit);
  }
  drawFigures(surface, part, room, window);
}

/** The side of the travel on which the window lies, from the way its cuts go round it. */
function wasteOf({ lines }: ViewWindow): 'left' | 'right' {
  const area = lines.flatMap(edgesOf).reduce((sum, edge) => sum + sweptArea(edge), 0);
  return area > 0 ? 'left' : 'right';
}

function edgesOf({ start, end, curve }: CutLine): readonly Edge[] {
  return curve ?? [{ kind: 'line', from: start, to: end }];
}

function drawClipped(
  surface: Surface,
  part: Part,
  room: Room,
  lines: readonly (readonly [Point, Point])[],
  pen: Pen,
): void {
  const seen = lines.flatMap(([from, to]) => {
    const clipped = clipLine(from, to, part.drawn);
    return clipped ? [[onPage(part, clipped[0]), onPage(part, clipped[1])] as const] : [];
  });
  surface.lines(seen, pen);
  for (const [from, to] of seen) room.take(boxRound(from, to, 0.7));
}

/** A ring with a slanting cross in it, whose middle is pricked through to the board. */
function drawCorner(surface: Surface, at: Point, room: Room): void {
  surface.circle(at, CORNER_CIRCLE, PENS.mark);
  const cross = [1, -1].map(
    (slope) =>
      [
        { x: at.x - CORNER_CROSS, y: at.y - slope * CORNER_CROSS },
        { x: at.x + CORNER_CROSS, y: at.y + slope * CORNER_CROSS },
      ] as const,
  );
  surface.lines(cross, PENS.mark);
  room.take(boxRound(at, at, CORNER_CIRCLE + 0.4));
}
