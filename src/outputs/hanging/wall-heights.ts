/** Heights beside the wall: of hooks by the numbers of their frames, of the middle line, of furniture and ceiling. */
import type { Box } from '../../core/geometry/box';
import type { WallPlan } from '../../core/hanging/wall-plan';
import { listed } from '../../core/hanging/words/wall-words';
import { PENS } from '../paper/pens';
import type { At } from '../paper/scale';
import { spread } from '../paper/spread';
import type { Surface } from '../paper/surface';
import { fractions } from '../paper/type';
import type { WallDrawing } from './wall-shown';

/** Left of the wall, mm. */
export const HEIGHTS_ROOM = 50;
const APART = 3.1;
const STROKE = 1.2;
const STYLE = { size: 7, align: 'right' } as const;

interface Height {
  readonly y: number;
  readonly words: string;
}

/** One scale from the floor up, with a stroke and words at each height. */
export function drawHeights(surface: Surface, at: At, { wall, length }: WallDrawing, shown: Box): void {
  const { x, y: floor } = at({ x: shown.left, y: 0 });
  const scale = x - 3;
  const [told, places] = placed(heightsOf(wall, length), at, [floor, at({ x: 0, y: shown.top }).y + APART]);
  const top = at({ x: 0, y: Math.max(...told.map(({ y }) => y)) }).y;
  surface.line({ x: scale, y: floor }, { x: scale, y: top }, PENS.hair);
  for (const { y } of [{ y: 0 }, ...told]) {
    const level = at({ x: 0, y }).y;
    surface.line({ x: scale - STROKE, y: level }, { x: scale + STROKE, y: level }, PENS.hair);
  }
  told.forEach(({ y, words }, index) => {
    const level = at({ x: 0, y }).y;
    const beside = places[index] ?? level;
    surface.line({ x: scale - STROKE, y: level }, { x: scale - 4, y: beside }, PENS.hair);
    surface.text(fractions(words), { x: scale - 4.6, y: beside - 0.9 }, STYLE);
  });
}

/** From the floor up; where there are too many to be read, the lowest and the highest. */
function placed(heights: readonly Height[], at: At, ends: readonly [number, number]) {
  const levels = (some: readonly Height[]) => some.map(({ y }) => at({ x: 0, y }).y);
  const places = spread(levels(heights), APART, ends);
  if (places) return [heights, places] as const;
  const few = [heights[0], heights.at(-1)].filter((height) => height !== undefined);
  return [few, levels(few)] as const;
}

function heightsOf(wall: WallPlan, length: WallDrawing['length']): readonly Height[] {
  const { centre, furniture, height } = wall;
  const named = (y: number | undefined, name: string): Height[] =>
    y === undefined ? [] : [{ y, words: `${name}: ${length(y)}` }];
  const all = [
    ...seatHeights(wall, length),
    ...named(centre, 'middle line'),
    ...named(furniture, 'furniture'),
    ...named(height, 'ceiling'),
  ];
  return all.toSorted((a, b) => a.y - b.y);
}

function seatHeights({ kind, frames }: WallPlan, length: WallDrawing['length']): Height[] {
  const groups = new Map<string, { readonly y: number; readonly numbers: number[] }>();
  for (const { number, hooks } of frames) {
    const y = hooks[0]?.seat.y;
    if (y === undefined) continue;
    const there = groups.get(y.toFixed(3));
    if (there) there.numbers.push(number);
    else groups.set(y.toFixed(3), { y, numbers: [number] });
  }
  const what = kind === 'cleat' ? 'rail' : 'hook seats';
  return [...groups.values()].map(({ y, numbers }) => ({
    y,
    words: `${frames.length === 1 ? what : `${what} ${listed(numbers)}`}: ${length(y)}`,
  }));
}
