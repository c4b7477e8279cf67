/** The numbers of steps on the cuts that they make: in a white circle on the line, clear of words and of other cuts. */
import { boxAt, type Box, type Point } from '../../core/geometry/box';
import type { CutStep } from '../../core/sheets/plan';
import { capHeight } from '../paper/label';
import { PENS } from '../paper/pens';
import type { Room } from '../paper/room';
import type { Surface } from '../paper/surface';

export interface NumberedLine extends Pick<CutStep, 'kind' | 'stage'> {
  /** Of its step, from 1. */
  readonly number: number;
  readonly from: Point;
  readonly to: Point;
}

const STYLE = { size: 6, weight: 'bold', align: 'centre' } as const;
/** Round the number within its circle, mm. */
const AIR = 0.35;
/** Parts of a line where its number may lie, best first. */
const PLACES = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.12, 0.88, 0.06, 0.94, 0, 1];

/** @returns the steps of which at least one cut has its number. */
export function numberCuts(surface: Surface, room: Room, lines: readonly NumberedLine[]): ReadonlySet<number> {
  const told = new Set<number>();
  for (const line of lines) {
    // Trimming goes all round: once is enough.
    if (line.kind !== 'cut' && told.has(line.number)) continue;
    const radius = radiusOf(surface, line.number);
    const round = placesOn(line, lines, radius).map((centre) => ({ centre, box: boxRoundOf(centre, radius) }));
    const found = room.takeFirst(round);
    if (!found) continue;
    drawNumber(surface, line.number, found.centre, radius);
    told.add(line.number);
  }
  return told;
}

/** Where other cuts meet the line comes last. */
function placesOn(line: NumberedLine, lines: readonly NumberedLine[], radius: number): Point[] {
  const { from, to } = line;
  const places = PLACES.map((part) => ({ x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) }));
  const others = lines.filter((other) => other !== line);
  const clear = places.filter((place) => !others.some((other) => distance(place, other) < radius + AIR));
  return [...clear, ...places.filter((place) => !clear.includes(place))];
}

/** From a point to an upright or lying line. */
function distance({ x, y }: Point, { from, to }: NumberedLine): number {
  const aside = Math.max(Math.min(from.x, to.x) - x, x - Math.max(from.x, to.x), 0);
  const along = Math.max(Math.min(from.y, to.y) - y, y - Math.max(from.y, to.y), 0);
  return Math.hypot(aside, along);
}

function radiusOf(surface: Surface, number: number): number {
  return Math.hypot(surface.width(String(number), STYLE) / 2, capHeight(STYLE.size) / 2) + AIR;
}

function boxRoundOf({ x, y }: Point, radius: number): Box {
  return boxAt({ x: x - radius, y: y - radius }, { width: 2 * radius, height: 2 * radius });
}

function drawNumber(surface: Surface, number: number, centre: Point, radius: number): void {
  const corners = Array.from({ length: 24 }, (_, index) => (index * Math.PI) / 12);
  surface.fillArea(corners.map((angle) => ({ x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) })), 'white'); // prettier-ignore
  surface.circle(centre, radius, PENS.mark);
  surface.text(String(number), { x: centre.x, y: centre.y - capHeight(STYLE.size) / 2 }, STYLE);
}
