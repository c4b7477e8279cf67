/** What the reference of the job file says of hanging, held against the program: arrangements, sums, the example. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pullOfEach } from '../../../src/core/hanging/statics/two-wires';
import type { WrittenJob } from '../../../src/core/job/written';
import { codesIn, jsonIn, tablesIn } from '../../helpers/markdown';
import type { Contents } from '../open';
import { hung, problemsOf } from './hung';

const reference = readFileSync('resources/README.md', 'utf8');
const job: Contents = {
  pictures: [{ size: '8 x 10 in' }],
  frame: { size: '11 x 14 in' },
  hanging: { weight: '3 lb' },
};
const arrangements = tablesIn(reference).find(({ heads }) => heads[0] === 'wall')!.rows;

describe('the table of arrangements', () => {
  const rows = arrangements.map(([code, told]) => [codesIn(code!)[0]!, told!] as const);

  it.each(rows)('%s', (code, told) => {
    const contents = { ...job, wall: JSON.parse(code) as NonNullable<Contents['wall']> };
    expect(problemsOf(contents)).toEqual([]);
    const { wall } = hung(contents);
    const inches = (mm: number) => Number((mm / 25.4).toFixed(6));
    const facts: Readonly<Record<string, () => boolean>> = {
      'three 12 in wide': () => told.includes(`= ${inches(wall.before)} in at each end; ${wall.most} fit at most`),
      'their tops': () => wall.frames.every(({ box }) => told.includes(`= ${inches(box.top)} in above the floor`)),
      'two and two': () => told.includes(`= ${inches(wall.around.top - wall.around.bottom)} in high`),
      'middles at': () => told === `middles at ${wall.frames.map(({ height }) => inches(height)).join(', ').replace(/, (\S+)$/, ' and $1')} in`,
      'each where': () => inches(wall.frames[1]!.near) === 12 && inches(wall.frames[1]!.height) === 60,
    }; // prettier-ignore
    const fact = Object.entries(facts).find(([begins]) => told.startsWith(begins));
    expect(fact?.[1]()).toBe(true);
  });

  it('has every arrangement of several frames', () => {
    const kinds = rows.map(([code]) => (JSON.parse(code) as { arrangement: string }).arrangement);
    expect(new Set(kinds)).toEqual(new Set(['row', 'grid', 'stairs', 'group']));
  });
});

it('the sums of the wire and of the seat are those of the program', () => {
  const told = reference.replace(/\s+/g, ' ');
  const factor = (degrees: number) => pullOfEach((degrees * Math.PI) / 180).toFixed(2);
  expect(told).toContain(`${factor(30)} at 30 degrees, ${factor(15)} at 15, ${factor(5)} at 5.`);
  const seat = hung({ ...job, wall: { frames: [{ size: '16 x 20 in', drop: '2 in' }] } }).wall.frames[0]!.hooks[0]!
    .seat;
  expect(told).toContain(`57 + 20 / 2 − 2 = ${(seat.y / 25.4).toFixed(0)} in`);
});

it('the example hangs, with nothing to say against it', () => {
  const example = (jsonIn(reference) as WrittenJob[]).find(({ wall }) => wall !== undefined)!;
  const { format: _format, version: _version, ...contents } = example;
  expect(problemsOf(contents)).toEqual([]);
  expect(hung(contents).wall.frames).toHaveLength(3);
});
