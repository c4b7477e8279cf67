/** The numbers of steps on the cuts that they make: in a white circle on the line, clear of words and of other cuts. */
import { boxAt, type Box, type Point } from '../../core/geometry/box';
import type { CutStep } from '../../core/sheets/plan';
import { capHeight } from '../paper/label';
import { PENS } from '../paper/pens';
import type { Room } from '../paper/room';
import type { Surface } from '../paper/surface';
import { SMALLEST, type TextStyle } from '../paper/type';

export interface NumberedLine extends Pick<CutStep, 'kind' | 'stage'> {
  /** Of its step, from 1. */
  readonly number: number;
  readonly from: Point;
  readonly to: Point;
}

const STYLE = { weight: 'bold', align: 'centre' } as const;
/** Type, points: smaller where there is no room for the larger. */
const SIZES = [7, SMALLEST];
/** Round the number within its circle, mm. */
const AIR = 0.35;
/** Parts of a line where its number may lie, best first. */
export const PLACES = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.12, 0.88, 0.06, 0.94, 0, 1];

/** The circles of a sheet, that are drawn in two rounds: one for each step before there are words, the others after. Each takes its place in the room that it is given. */
export class CutNumbers {
  /** Steps of which a cut has its number. */
  readonly told = new Set<number>();
  readonly #left: Set<NumberedLine>;

  constructor(
    private readonly surface: Surface,
    private readonly lines: readonly NumberedLine[],
  ) {
    this.#left = new Set(lines);
  }

  /**
   * @param room where circles may lie, clear of all that is taken there.
   * @returns the boxes taken. Short cuts come first, since they have the least choice.
   */
  first(room: Room): Box[] {
    const byLength = this.lines.toSorted((a, b) => lengthOf(a) - lengthOf(b));
    return byLength.flatMap((line) => (this.told.has(line.number) ? [] : (this.#place(line, room) ?? [])));
  }

  /** Those that had no room come before the repeated ones. */
  others(room: Room): void {
    this.first(room);
    for (const line of this.#left) {
      // Trimming goes all round: once is enough.
      if (line.kind === 'cut' || !this.told.has(line.number)) this.#place(line, room);
    }
  }

  #place(line: NumberedLine, room: Room): Box | undefined {
    for (const size of SIZES) {
      const style = { ...STYLE, size };
      const radius = radiusOf(this.surface, line.number, style);
      const round = placesOn(line, this.lines, radius).map((centre) => ({ centre, box: boxRoundOf(centre, radius) }));
      const found = room.takeFirst(round);
      if (!found) continue;
      drawNumber(this.surface, line.number, found.centre, radius, style);
      this.told.add(line.number);
      this.#left.delete(line);
      return found.box;
    }
    return undefined;
  }
}

function lengthOf({ from, to }: NumberedLine): number {
  return Math.hypot(to.x - from.x, to.y - from.y);
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

function radiusOf(surface: Surface, number: number, style: TextStyle): number {
  return Math.hypot(surface.width(String(number), style) / 2, capHeight(style.size) / 2) + AIR;
}

function boxRoundOf({ x, y }: Point, radius: number): Box {
  return boxAt({ x: x - radius, y: y - radius }, { width: 2 * radius, height: 2 * radius });
}

function drawNumber(surface: Surface, number: number, centre: Point, radius: number, style: TextStyle): void {
  const corners = Array.from({ length: 24 }, (_, index) => (index * Math.PI) / 12);
  surface.fillArea(corners.map((angle) => ({ x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) })), 'white'); // prettier-ignore
  surface.circle(centre, radius, PENS.mark);
  surface.text(String(number), { x: centre.x, y: centre.y - capHeight(style.size) / 2 }, style);
}
