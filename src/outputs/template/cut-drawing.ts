/** The drawing to cut by: the blank's edges, cut lines from corner to corner, overcuts and corner marks, on one page. */
import { shift, type Box, type Point } from '../../core/geometry/box';
import { PENS, type Pen } from '../paper/pens';
import { boxRound, type Room } from '../paper/room';
import type { Surface } from '../paper/surface';
import { clipLine, contains, cornersOf, type ViewLayer } from './view-geometry';

/** What part of a layer a page shows, and where on it. */
export interface Part {
  readonly layer: ViewLayer;
  /** The page's own part of the blank, which labels keep to. */
  readonly own: Box;
  /** What is drawn of the blank: its own part and the overlap. */
  readonly drawn: Box;
  /** From the blank's lower left corner to the page's. */
  readonly offset: Point;
}

/** A blank's point as it lies on the page. */
export function onPage(part: Part, point: Point): Point {
  return { x: point.x + part.offset.x, y: point.y + part.offset.y };
}

export function boxOnPage(part: Part, box: Box): Box {
  return shift(box, part.offset);
}

const CORNER_CIRCLE = 1.6;
const CORNER_CROSS = 1;

/** Draws the part and takes the room of its lines, so that no label lies on them. */
export function drawCuts(surface: Surface, part: Part, room: Room): void {
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
    lines.map((line) => [line.start, line.end]),
    PENS.cut,
  );
  const past = lines.flatMap(
    (line) =>
      [
        [line.start, line.bladeStart],
        [line.end, line.bladeEnd],
      ] as const,
  );
  drawClipped(
    surface,
    part,
    room,
    past.filter(([from, to]) => from.x !== to.x || from.y !== to.y),
    PENS.overcut,
  );
  for (const window of windows) {
    for (const corner of cornersOf(window.cut)) {
      if (contains(part.drawn, corner)) drawCorner(surface, onPage(part, corner), room);
    }
  }
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
