/** The small drawing on a cut card: edges by name, windows by letter, every cut with its number and its direction. */
import type { CardCut, CutCard } from '../../core/cutting/cut-card';
import { cubicsOf, type Cubic } from '../../core/geometry/cubics';
import { directionOn, distance, line, pointOn, type Edge } from '../../core/geometry/edge';
import type { Box, Point } from '../../core/geometry/box';
import { placeLabel, smaller, type Label } from '../paper/label';
import { PENS } from '../paper/pens';
import { boxRound, Room } from '../paper/room';
import type { Surface } from '../paper/surface';
import { drawMat } from '../template/mat-drawing';
import type { ViewLayer } from '../template/view-geometry';

/** Room round the drawing for the names of the edges. */
export const NAMES = 4.5;
/** Room below them for a note. */
const NOTE = 2;
const NAME_ROOM = 2;
const FINE = 0.05;
/** Shorter cuts on paper have no arrow, mm. */
const ROOM_FOR_ARROW = 9;

/** @param waste the side of the travel that the waste of windows lies on. */
export function drawCard(
  surface: Surface,
  room: Box,
  layer: ViewLayer,
  { runs, byMarks }: CutCard,
  waste: 'right' | 'left',
): void {
  const { blank, windows, plan } = layer;
  const inner = {
    left: room.left + NAMES,
    right: room.right - NAMES,
    bottom: room.bottom + NAMES + NOTE,
    top: room.top - NAMES,
  };
  const at = drawMat(surface, inner, {
    blank,
    openings: windows,
    names: windows.map(({ name }) => name),
    faint: true,
  });
  const low = at({ x: 0, y: 0 });
  const high = at({ x: blank.width, y: blank.height });
  const sheet = { left: low.x, bottom: low.y, right: high.x, top: high.y };
  if (plan.trim > 0) drawTrimmed(surface, at, layer);
  nameEdges(surface, sheet);
  const taken = new Room(sheet);
  const cuts = [...runs.flatMap((run): readonly CardCut[] => run.cuts), ...byMarks];
  for (const { opening } of windows) takeName(taken, at, opening);
  for (const edge of cuts.flatMap(edgesOf)) drawEdge(surface, at, edge, sheet, taken);
  const left = cuts.filter((cut) => !drawNumber(surface, at, edgesOf(cut), String(cut.number), taken, waste));
  if (left.length > 0) drawNote(surface, { ...room, bottom: sheet.bottom }, left.length, cuts.length);
}

/** Below the drawn board, where some numbers found no room in it. */
function drawNote(surface: Surface, { left, right, bottom }: Box, count: number, of: number): void {
  const words = `${count} of ${of} numbers have no room here; the full-scale template has them`;
  const style = { size: 6.5, align: 'centre' } as const;
  surface.text(surface.fit(words, right - left, style), { x: (left + right) / 2, y: bottom - 6.2 }, style);
}

function edgesOf({ line: cut }: CardCut): readonly Edge[] {
  return cut.curve ?? [line(cut.start, cut.end)];
}

/** Where the window's letter stands, in its middle. */
function takeName(taken: Room, at: (point: Point) => Point, opening: Box): void {
  const middle = at({ x: (opening.left + opening.right) / 2, y: (opening.bottom + opening.top) / 2 });
  taken.take(boxRound(middle, middle, NAME_ROOM));
}

/** The board itself, smaller than the one whose edges lie at the guide. */
function drawTrimmed(surface: Surface, at: (point: Point) => Point, { plan, blank }: ViewLayer): void {
  const low = at({ x: plan.trim, y: plan.trim });
  const high = at({ x: blank.width - plan.trim, y: blank.height - plan.trim });
  surface.boxes([{ left: low.x, bottom: low.y, right: high.x, top: high.y }], PENS.join);
}

function nameEdges(surface: Surface, sheet: Box): void {
  const style = { size: 7.5, weight: 'bold', align: 'centre' } as const;
  const middle = { x: (sheet.left + sheet.right) / 2, y: (sheet.bottom + sheet.top) / 2 };
  surface.text('TOP edge', { x: middle.x, y: sheet.top + 1.2 }, style);
  surface.text('BOTTOM edge', { x: middle.x, y: sheet.bottom - 3.2 }, style);
  surface.text('LEFT edge', { x: sheet.left - 1.2, y: middle.y }, { ...style, turn: 90 });
  surface.text('RIGHT edge', { x: sheet.right + 3.2, y: middle.y }, { ...style, turn: 90 });
}

function drawEdge(surface: Surface, at: (point: Point) => Point, edge: Edge, sheet: Box, taken: Room): void {
  const cubics = edge.kind === 'line' ? [] : cubicsOf(edge, FINE);
  surface.curves(
    cubics.map(([from, one, two, to]): Cubic => [at(from), at(one), at(two), at(to)]),
    PENS.cut,
    sheet,
  );
  if (edge.kind === 'line') surface.line(at(edge.from), at(edge.to), PENS.cut);
  const pieces = edge.kind === 'line' ? 1 : 12;
  for (let piece = 0; piece < pieces; piece += 1) {
    taken.take(boxRound(at(pointOn(edge, piece / pieces)), at(pointOn(edge, (piece + 1) / pieces)), 0.3));
  }
}

/** Beside the cut on the side of the border, with an arrow where it runs; says whether the drawing had room for it. */
function drawNumber(
  surface: Surface,
  at: (point: Point) => Point,
  cut: readonly Edge[],
  number: string,
  taken: Room,
  waste: 'right' | 'left',
): boolean {
  const places = [0.5, 0.35, 0.65, 0.2, 0.8].map((part) => placeOn(cut, part));
  const [quarter, arrow] = [placeOn(cut, 0.25), placeOn(cut, 0.62)];
  if (distance(at(quarter.point), at(arrow.point)) > ROOM_FOR_ARROW * 0.37) {
    drawArrow(surface, at(arrow.point), arrow.along);
  }
  const side = waste === 'right' ? 1 : -1;
  const label: Label = { turn: 0, lines: [{ words: number, size: 9, weight: 'bold' }] };
  const sizes = [1, 0.75, 0.6, 0.5].map((factor) => smaller(label, factor));
  const found = placeLabel(surface, taken, sizes, (size) =>
    [1, -1].flatMap((way) =>
      places.map(({ point, along }) => {
        const out = { x: -along.y * side * way, y: along.x * side * way };
        const away = (Math.abs(out.x) * size.width + Math.abs(out.y) * size.height) / 2 + 0.5;
        const on = at(point);
        return { x: on.x + out.x * away, y: on.y + out.y * away };
      }),
    ),
  );
  return found !== undefined;
}

/** A place a part of the way along a cut of several pieces, each counted alike. */
function placeOn(cut: readonly Edge[], part: number): { point: Point; along: Point } {
  const whole = Math.min(cut.length - 1, Math.floor(part * cut.length));
  const edge = cut[whole];
  if (!edge) return { point: { x: 0, y: 0 }, along: { x: 1, y: 0 } };
  const rest = part * cut.length - whole;
  return { point: pointOn(edge, rest), along: directionOn(edge, rest) };
}

const ARROW = 1.5;

function drawArrow(surface: Surface, tip: Point, along: Point): void {
  const barb = (side: 1 | -1): Point => ({
    x: tip.x - ARROW * along.x - side * ARROW * 0.4 * along.y,
    y: tip.y - ARROW * along.y + side * ARROW * 0.4 * along.x,
  });
  surface.lines(
    [
      [barb(1), tip],
      [barb(-1), tip],
    ],
    PENS.edge,
  );
}
