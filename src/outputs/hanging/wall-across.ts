/** Distances under the wall: of each hook from the edge that places are counted from, by the numbers of the frames. */
import type { Box } from '../../core/geometry/box';
import type { WallPlan } from '../../core/hanging/wall-plan';
import { listed } from '../../core/hanging/words/wall-words';
import { PENS } from '../paper/pens';
import type { At } from '../paper/scale';
import { spread } from '../paper/spread';
import type { Surface } from '../paper/surface';
import { fractions } from '../paper/type';
import type { WallDrawing } from './wall-shown';

const APART = 3.1;
const STYLE = { size: 7, align: 'right', turn: 90 } as const;
/** From the floor to the words, and what a letter of them takes, mm: enough for the widest. */
const LEADER = 5;
const LETTER = 1.42;

interface Across {
  readonly x: number;
  readonly words: string;
}

/** What the words take under the floor, mm. */
export function acrossRoom({ wall, length }: WallDrawing): number {
  return LEADER + LETTER * Math.max(...acrossOf(wall, length).map(({ words }) => words.length));
}

export function drawAcross(surface: Surface, at: At, { wall, length }: WallDrawing, shown: Box): void {
  const floor = at({ x: 0, y: shown.bottom }).y;
  const [left, right] = [at({ x: shown.left, y: 0 }).x, at({ x: shown.right, y: 0 }).x];
  const hooks = acrossOf(wall, length);
  const xs = (some: readonly Across[]) => some.map(({ x }) => at({ x, y: 0 }).x);
  const all = spread(xs(hooks), APART, [left + 1, right]);
  const ends = [hooks[0], hooks.at(-1)].filter((hook) => hook !== undefined);
  const [told, places] = all ? [hooks, all] : [ends, xs(ends)];
  told.forEach(({ x, words }, index) => {
    const under = at({ x, y: 0 }).x;
    const beside = places[index] ?? under;
    surface.line({ x: under, y: floor - 0.8 }, { x: beside, y: floor - LEADER + 0.6 }, PENS.hair);
    surface.text(fractions(words), { x: beside + 0.9, y: floor - LEADER }, STYLE);
  });
  const what = wall.kind === 'cleat' ? 'fixings' : 'hooks';
  surface.text(`${what}, from the ${wall.from}`, { x: left - 3, y: floor - LEADER - 2 }, { size: 7, align: 'right' });
}

/** From left to right; hooks that hang one above the other stand together. */
function acrossOf({ frames }: WallPlan, length: WallDrawing['length']): readonly Across[] {
  const groups = new Map<string, { readonly x: number; readonly across: number; readonly numbers: number[] }>();
  for (const { number, hooks } of frames) {
    for (const { seat, across } of hooks) {
      const there = groups.get(seat.x.toFixed(3));
      if (there) there.numbers.push(number);
      else groups.set(seat.x.toFixed(3), { x: seat.x, across, numbers: [number] });
    }
  }
  return [...groups.values()]
    .toSorted((a, b) => a.x - b.x)
    .map(({ x, across, numbers }) => ({
      x,
      words: frames.length === 1 ? length(across) : `${listed(numbers)}: ${length(across)}`,
    }));
}
