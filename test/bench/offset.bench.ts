/** Parallel curves of 60 mixed shapes, beside clipper2 on the same outlines flattened to 0.005 mm, in the same run. */
import { EndType, inflatePathsD, JoinType, type PathD } from 'clipper2-ts';
import { parallelTo } from '../../src/core/geometry/offset';
import { flatten, type Outline } from '../../src/core/geometry/outline';
import { outlineOf, polygonHeight, type Shape } from '../../src/core/geometry/shapes';
import { median } from './median';

const COUNT = 60;
const ROUNDS = 30;
const WARM_UP = 5;
/** How far chords may be from the curves clipper2 is given, mm. */
const FLATNESS = 0.005;
/** Reveals of 1/8, 1/4 and 1/2 in, and a bevel inward, mm. */
const DISTANCES = [3.175, 6.35, 12.7, -1.5];

const KINDS: readonly Shape[] = [
  { kind: 'rectangle' },
  { kind: 'oval' },
  { kind: 'rounded', radius: 12 },
  { kind: 'scooped', radius: 30 },
  { kind: 'cut-corners', cut: 18 },
  { kind: 'stepped', step: 9, count: 2 },
  { kind: 'arch', rise: 35 },
  { kind: 'pointed', rise: 110 },
  { kind: 'polygon', sides: 8 },
];

const outlines = Array.from({ length: COUNT }, (_, index): Outline => {
  const shape = KINDS[index % KINDS.length] ?? { kind: 'rectangle' };
  const width = 110 + 5 * (index % 13);
  const height = shape.kind === 'polygon' ? polygonHeight(width, shape.sides) : 140 + 7 * (index % 11);
  return outlineOf(shape, { width, height });
});
const flattened = outlines.map((outline): PathD => flatten(outline, FLATNESS));

function theirs(path: PathD, away: number): unknown {
  return inflatePathsD([path], away, JoinType.Miter, EndType.Polygon, 8, 4);
}

interface Way {
  readonly name: string;
  readonly work: (away: number) => void;
  /** Microseconds a curve, of each round. */
  readonly taken: number[];
}

const ways: readonly Way[] = [
  { name: 'parallelTo', work: (away) => outlines.forEach((outline) => parallelTo(outline, away)), taken: [] },
  { name: 'clipper2', work: (away) => flattened.forEach((path) => theirs(path, away)), taken: [] },
  {
    name: 'flatten + clipper2',
    work: (away) => outlines.forEach((outline) => theirs(flatten(outline, FLATNESS), away)),
    taken: [],
  },
];

function runRound({ work, taken }: Way): void {
  const start = performance.now();
  for (const away of DISTANCES) work(away);
  taken.push(((performance.now() - start) * 1000) / (COUNT * DISTANCES.length));
}

for (let warm = 0; warm < WARM_UP; warm += 1) for (const way of ways) runRound(way);
for (const { taken } of ways) taken.length = 0;
// Turn and turn about, so that a busy moment of the machine falls on all.
for (let round = 0; round < ROUNDS; round += 1) for (const way of ways) runRound(way);

const own = median(ways[0]?.taken ?? []);
console.log(`${COUNT} shapes, ${DISTANCES.length} distances      µs a curve   beside parallelTo`);
for (const { name, taken } of ways)
  console.log(
    `${name.padEnd(28)} ${median(taken).toFixed(1).padStart(10)} ${(median(taken) / own).toFixed(2).padStart(19)}`,
  );
