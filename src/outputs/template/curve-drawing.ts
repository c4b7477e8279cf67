/** What a template needs beside straight lines: curves, ticks along them, and the centres and axes they are drawn from. */
import { boundsOf } from '../../core/geometry/outline';
import { cubicsOf, type Cubic } from '../../core/geometry/cubics';
import { directionOn, lengthOfEdge, pointOn, type Edge } from '../../core/geometry/edge';
import type { Box, Point } from '../../core/geometry/box';
import type { Unit } from '../../core/units';
import { MM_PER_INCH } from '../../core/units';
import { PENS, type Pen } from '../paper/pens';
import { boxRound, type Room } from '../paper/room';
import type { Surface } from '../paper/surface';
import { boxOnPage, onPage, type Part } from './part';
import { figuresOf } from './figures';
import { clipLine, contains, shared, type ViewWindow } from './view-geometry';

/** Strokes curved edges as far as the page shows them, and takes their room where one is given. */
export function drawCurves(
  surface: Surface,
  part: Part,
  room: Room | undefined,
  edges: readonly Edge[],
  pen: Pen,
): void {
  const cubics = edges
    .flatMap((edge) => cubicsOf(edge))
    .filter((cubic) => meets(hullOf(cubic), part.drawn))
    .map((cubic): Cubic => [
      onPage(part, cubic[0]),
      onPage(part, cubic[1]),
      onPage(part, cubic[2]),
      onPage(part, cubic[3]),
    ]);
  surface.curves(cubics, pen, boxOnPage(part, part.drawn));
  if (!room) return;
  for (const edge of edges) {
    for (const [from, to] of chordsAlong(edge)) {
      const seen = clipLine(from, to, part.drawn);
      if (seen) room.take(boxRound(onPage(part, seen[0]), onPage(part, seen[1]), 0.7));
    }
  }
}

/** Short chords that follow an edge closely enough to keep labels off it. */
export function chordsAlong(edge: Edge): (readonly [Point, Point])[] {
  const count = Math.max(1, Math.ceil(lengthOfEdge(edge) / 4));
  return Array.from({ length: count }, (_, index) => [
    pointOn(edge, index / count),
    pointOn(edge, (index + 1) / count),
  ]);
}

/** Bézier curves lie within the hull of their points. */
function hullOf(cubic: Cubic): Box {
  const [xs, ys] = [cubic.map(({ x }) => x), cubic.map(({ y }) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

function meets(a: Box, b: Box): boolean {
  return a.left <= b.right && a.right >= b.left && a.bottom <= b.top && a.top >= b.bottom;
}

/** From tick to tick, mm, and every how manieth is a long one: half inches and inches, centimetres and five of them. */
function spacing(unit: Unit): { step: number; long: number } {
  return unit === 'in' ? { step: MM_PER_INCH / 2, long: 2 } : { step: 10, long: 5 };
}

const TICK = 1.8;
const LONG_TICK = 3.2;

/** Ticks square to a curve on its waste's side, at equal lengths from its start. */
export function drawTicks(
  surface: Surface,
  part: Part,
  curve: readonly Edge[],
  waste: 'left' | 'right',
  unit: Unit,
): void {
  const { step, long } = spacing(unit);
  const ticks = alongCurve(curve, step).flatMap(({ at, way }, index): (readonly [Point, Point])[] => {
    const length = index % long === 0 ? LONG_TICK : TICK;
    const side = waste === 'left' ? 1 : -1;
    const to = { x: at.x - way.y * side * length, y: at.y + way.x * side * length };
    return contains(part.drawn, at) && contains(part.drawn, to) ? [[onPage(part, at), onPage(part, to)]] : [];
  });
  surface.lines(ticks, PENS.mark);
}

/** Points and directions at equal lengths along edges, from their start. */
function alongCurve(edges: readonly Edge[], step: number): { at: Point; way: Point }[] {
  const found: { at: Point; way: Point }[] = [];
  let before = 0;
  for (const edge of edges) {
    const length = lengthOfEdge(edge);
    for (let next = found.length * step; next < before + length - 1e-9; next = found.length * step) {
      const along = partAt(edge, next - before, length);
      found.push({ at: pointOn(edge, along), way: directionOn(edge, along) });
    }
    before += length;
  }
  return found;
}

/** The part of an edge that has a length; ovals by halving, since their parameter does not run evenly. */
function partAt(edge: Edge, length: number, whole: number): number {
  if (edge.kind !== 'oval') return length / whole;
  let [low, high] = [0, 1];
  for (let turn = 0; turn < 30; turn += 1) {
    const middle = (low + high) / 2;
    if (lengthOfEdge({ ...edge, sweep: edge.sweep * middle }) < length) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const CROSS = 2;

/** Crosses at the centres of arcs, and the two axes of an oval with a stroke across each of their ends. */
export function drawFigures(surface: Surface, part: Part, room: Room, window: ViewWindow): void {
  for (const { centre, radii, kind } of figuresOf(window)) {
    const box = {
      left: centre.x - radii.x,
      right: centre.x + radii.x,
      bottom: centre.y - radii.y,
      top: centre.y + radii.y,
    };
    if (kind === 'oval') drawAxes(surface, part, room, centre, box);
    if (!contains(part.drawn, centre)) continue;
    const at = onPage(part, centre);
    surface.lines(crossAt(at), PENS.mark);
    room.take(boxRound(at, at, CROSS + 0.4));
  }
}

function crossAt({ x, y }: Point): (readonly [Point, Point])[] {
  return [
    [
      { x: x - CROSS, y },
      { x: x + CROSS, y },
    ],
    [
      { x, y: y - CROSS },
      { x, y: y + CROSS },
    ],
  ];
}

function drawAxes(surface: Surface, part: Part, room: Room, centre: Point, box: Box): void {
  const axes = [
    [
      { x: box.left, y: centre.y },
      { x: box.right, y: centre.y },
    ],
    [
      { x: centre.x, y: box.bottom },
      { x: centre.x, y: box.top },
    ],
  ] as const;
  const seen = axes.flatMap(([from, to]) => {
    const clipped = clipLine(from, to, part.drawn);
    return clipped ? [[onPage(part, clipped[0]), onPage(part, clipped[1])] as const] : [];
  });
  surface.lines(seen, PENS.axis);
  for (const [from, to] of seen) room.take(boxRound(from, to, 0.4));
}

/** True where a page's part has some of a cut in it. */
export function cutMeets(curve: readonly Edge[], part: Box): boolean {
  return (
    shared(boundsOf(curve), part) !== undefined && curve.flatMap(chordsAlong).some(([a, b]) => clipLine(a, b, part))
  );
}
