/** A small plotter for HP-GL/2: obeys `IN SP PU PD AA` in whole units of 1/40 mm, and refuses all else. */
import type { Point } from '../../../src/core/geometry/box';
import type { Piece, ReadStroke } from './pieces';

export interface ReadPlot {
  readonly strokes: readonly ReadStroke[];
  /** The number of the tool that makes each stroke. */
  readonly tools: readonly number[];
  readonly end: Point;
}

export function readHpgl(text: string): ReadPlot {
  if (!/^[\x20-\x7e\n]*$/.test(text)) throw new Error('not ASCII');
  const words = text.replace(/\s/g, '').replace(/;$/, '').split(';');
  const strokes: Piece[][] = [];
  let at: Point = { x: NaN, y: NaN };
  let down = false;
  let tool = NaN;
  const tools: number[] = [];
  for (const word of words) {
    const [name, given] = [word.slice(0, 2), word.slice(2)];
    if (given !== '' && !given.split(',').every((number) => /^-?\d+(\.\d+)?$/.test(number))) {
      throw new Error(`not numbers: ${word}`);
    }
    const numbers = given === '' ? [] : given.split(',').map(Number);
    const point = (): Point => {
      if (!numbers.slice(0, 2).every(Number.isInteger)) throw new Error(`not whole units: ${word}`);
      return { x: (numbers[0] ?? NaN) / 40, y: (numbers[1] ?? NaN) / 40 };
    };
    if (name === 'IN') at = { x: 0, y: 0 };
    else if (name === 'SP') {
      if (down) throw new Error('a change of tool in the board');
      tool = Number(given);
    } else if (name === 'PU' || name === 'PD') {
      if (name === 'PD' && !down) {
        strokes.push([]);
        tools.push(tool);
      }
      down = name === 'PD';
      if (numbers.length === 0) continue;
      const to = point();
      if (down && (to.x !== at.x || to.y !== at.y)) strokes.at(-1)?.push({ from: at, to });
      at = to;
    } else if (name === 'AA' && down) {
      const [centre, sweep] = [point(), ((numbers[2] ?? NaN) * Math.PI) / 180];
      const chord = numbers[3] ?? NaN;
      if (!(chord >= 0.5 && chord <= 180)) throw new Error(`a chord angle of ${chord}`);
      const [x, y] = [at.x - centre.x, at.y - centre.y];
      const to = {
        x: centre.x + x * Math.cos(sweep) - y * Math.sin(sweep),
        y: centre.y + x * Math.sin(sweep) + y * Math.cos(sweep),
      };
      strokes.at(-1)?.push({ from: at, to, bend: { centre, sweep } });
      at = to;
    } else throw new Error(`unknown: ${word}`);
  }
  if (down) throw new Error('the tool stays down');
  return { strokes, tools, end: at };
}
