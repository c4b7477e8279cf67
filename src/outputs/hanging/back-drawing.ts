/** The back of the frame to scale: rings, teeth or cleat, the taut wire on its hooks, and their distances. */
import type { Point } from '../../core/geometry/box';
import { grow } from '../../core/geometry/box';
import { woodWidth } from '../../core/hanging/hanger-places';
import type { HangingPlan } from '../../core/hanging/hanging-plan';
import type { FrameSizes } from '../../core/layout/layout';
import type { UnitName } from '../../bridge';
import type { Block } from '../paper/flow';
import { PENS } from '../paper/pens';
import { atScale, boxAtScale, scaleFor, type At } from '../paper/scale';
import type { Surface } from '../paper/surface';
import { lyingDimension, standingDimension } from '../paper/dimension';

/** Room for dimensions and the scale above and below the frame, mm. */
const ABOVE = 9;
const BELOW = 16;
const BESIDE = 16;
const RING = 1.3;

export interface BackDrawing {
  readonly plan: HangingPlan;
  readonly frame: FrameSizes;
  /** Lengths in words. */
  readonly length: (mm: number) => string;
  readonly unit: UnitName;
}

/** In the middle of a width, to the largest scale at which the frame is no higher than `most`, mm. */
export function backBlock(drawing: BackDrawing, width: number, most: number): Block {
  const { outside } = drawing.plan;
  const scale = scaleFor(outside, { width: width - 2 * BESIDE, height: most }, drawing.unit);
  const tall = outside.height * scale.factor;
  return {
    height: ABOVE + tall + BELOW,
    draw: (surface, { x, y }) => {
      const left = x + (width - outside.width * scale.factor) / 2;
      drawBack(surface, atScale(scale, { x: left, y: y - ABOVE - tall }), drawing);
      const under = { x: x + width / 2, y: y - ABOVE - tall - 13 };
      surface.text(`back, ${scale.words}`, under, { size: 7, align: 'centre' });
    },
  };
}

function drawBack(surface: Surface, at: At, { plan, frame, length }: BackDrawing): void {
  const { outside, places, hanger } = plan;
  const all = { left: 0, bottom: 0, right: outside.width, top: outside.height };
  const box = boxAtScale(at, all);
  surface.boxes([box, boxAtScale(at, grow(all, -woodWidth(frame)))], PENS.edge);
  const marks = marksOf(plan);
  drawHangers(surface, at, plan, marks);
  const level = (down: number) => at({ x: 0, y: outside.height - down }).y;
  standingDimension(surface, box.left - 10, box.bottom, box.top, length(outside.height));
  lyingDimension(surface, box.left, box.right, box.bottom - 9, length(outside.width));
  standingDimension(surface, box.right + 6, level(places.drop), box.top, length(places.drop));
  if (hanger.kind === 'rings and wire') {
    // Past the words of the shorter one, which stand beside it where it is too short for them.
    const beside = Math.max(12, 9 + surface.width(length(places.drop), { size: 7 }) + 5);
    const isShort = surface.width(length(places.drop), { size: 7 }) > box.top - level(places.drop);
    standingDimension(surface, box.right + (isShort ? beside : 12), level(places.down), box.top, length(places.down));
  }
  const [left, right] = [marks.hooks[0], marks.hooks.at(-1)];
  if (left && right && left !== right) {
    lyingDimension(surface, at(left).x, at(right).x, box.top + 3, length(places.hooksApart));
  }
  if (marks.rings.length === 2) {
    const [one, other] = [marks.rings[0], marks.rings[1]].map((ring) => (ring ? at(ring).x : 0));
    lyingDimension(surface, one ?? 0, other ?? 0, box.bottom - 4, length(places.span));
  }
}

interface Marks {
  /** From the lower left corner of the frame, as its back is seen; it is the same from the front. */
  readonly rings: readonly Point[];
  readonly hooks: readonly Point[];
}

function marksOf({ outside, places, hanger }: HangingPlan): Marks {
  const middle = outside.width / 2;
  const pair = (apart: number, down: number): Point[] =>
    (apart === 0 ? [middle] : [middle - apart / 2, middle + apart / 2]).map((x) => ({ x, y: outside.height - down }));
  return {
    rings: hanger.kind === 'cleat' ? [] : pair(places.span, places.down),
    hooks: pair(places.hooksApart, places.drop),
  };
}

function drawHangers(surface: Surface, at: At, { hanger, outside, places }: HangingPlan, marks: Marks): void {
  const [rings, hooks] = [marks.rings.map(at), marks.hooks.map(at)];
  if (hanger.kind === 'rings and wire') {
    const way = [rings[0], ...hooks, rings[1]].filter((point) => point !== undefined);
    surface.lines(
      way.slice(1).map((point, index) => [way[index] ?? point, point] as const),
      PENS.cut,
    );
  }
  if (hanger.kind === 'cleat') {
    const y = outside.height - places.drop;
    surface.line(at({ x: outside.width * 0.1, y }), at({ x: outside.width * 0.9, y }), PENS.strong);
  }
  for (const ring of rings) {
    if (hanger.kind === 'sawtooth') surface.lines(teethAt(ring), PENS.edge);
    // Drawn no larger than lies within the wood, since nothing of it may be seen from the side.
    else surface.circle(ring, Math.min(RING, 0.8 * (at({ x: places.in, y: 0 }).x - at({ x: 0, y: 0 }).x)), PENS.edge);
  }
  surface.lines(hooks.flatMap(hookAt), PENS.cut);
}

/** A hook: a short stroke up from where the wire sits. */
function hookAt({ x, y }: Point): (readonly [Point, Point])[] {
  return [
    [{ x, y: y + 2.4 }, { x, y: y - 0.3 }],
    [{ x: x - 0.9, y: y - 0.3 }, { x: x + 0.9, y: y - 0.3 }],
  ]; // prettier-ignore
}

function teethAt({ x, y }: Point): (readonly [Point, Point])[] {
  const points = Array.from({ length: 9 }, (_, index) => ({ x: x - 4 + index, y: y + (index % 2 === 0 ? 0.5 : -0.5) }));
  return points.slice(1).map((point, index) => [points[index] ?? point, point] as const);
}
