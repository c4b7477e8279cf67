/**
 * A show of 500 pictures of all thicknesses and 40 frame sizes of all depths, one size to six, beside trying every choice on a small show; and trying a
 * picture in a frame beside laying it out, in one run. Results have to be equal.
 */
import { layOut } from '../../src/core/layout/lay-out';
import { readJob } from '../../src/core/job/read';
import { money } from '../../src/core/money';
import type { ShelfFrame } from '../../src/core/shelf/shelf';
import { candidatesOf } from '../../src/core/show/candidates';
import { choosingFor } from '../../src/core/show/choosing-for';
import { costsOf } from '../../src/core/show/costs';
import { parsePattern, type Pattern } from '../../src/core/show/pattern';
import type { ShowPicture } from '../../src/core/show/picture';
import { planShow } from '../../src/core/show/plan-show';
import { isBetter, type Choosing, type Worth } from '../../src/core/show/search/choosing';
import { Filler } from '../../src/core/show/search/fill';
import { leastCost } from '../../src/core/show/search/least-cost';
import { Trial } from '../../src/core/show/trial';
import { tryPicture } from '../../src/core/show/try-pictures';
import { writeMat } from '../../src/core/show/written-mat';
import { median } from './median';

const PICTURES = 500;
const SIZES = 40;
const MOST = 6;
const TARGET_MS = 2000;
const ROUNDS = 5;

/** The same shows on every run and machine. */
function drawFrom(seed: number): (least: number, most: number) => number {
  let state = seed;
  return (least, most) => {
    state = (state * 1664525 + 1013904223) % 2 ** 32;
    return least + Math.floor((state / 2 ** 32) * (most - least + 1));
  };
}

interface Show {
  readonly pictures: readonly ShowPicture[];
  readonly frames: readonly ShelfFrame[];
}

function showOf(pictures: number, sizes: number, seed: number): Show {
  const draw = drawFrom(seed);
  const frame = (index: number): ShelfFrame => {
    const width = draw(180, 700);
    const height = width + draw(0, 250);
    const price = { amount: money(Math.round((width + height) * 1.5) + draw(0, 200)).div(100), per: 'each' as const };
    const name = `Frame ${index}`;
    return { kind: 'frame', name, size: { width, height }, build: 'open back', corners: 'mitred', comesWith: [], grooves: [], price, count: (index * 37) % 80, rabbetDepth: 14 + ((index * 7) % 10) }; // prettier-ignore
  };
  return {
    pictures: Array.from({ length: pictures }, (_, index) => {
      const [width, height] = [draw(80, 500), draw(80, 500)];
      return {
        line: index + 2,
        title: `Work ${index + 1}`,
        sheet: { width, height },
        thickness: 0.2 + (index % 12) / 2,
        count: 1,
      };
    }),
    frames: Array.from({ length: sizes }, (_, index) => frame(index)),
  };
}

function patternOf(range: object): Pattern {
  const text = JSON.stringify({
    format: 'matwright-job',
    version: 1,
    units: 'mm',
    mat: { layers: [{}, { reveal: '6 mm' }] },
    borders: { rule: 'bottom-amount', amount: '12 mm', range },
  });
  const parsed = parsePattern(text);
  if (!parsed.ok) throw new Error(`the pattern of the bench has errors: ${parsed.problems[0]?.message}`);
  return parsed.value;
}

function timed<T>(work: () => T): { readonly value: T; readonly wall: number; readonly busy: number } {
  const [start, before] = [performance.now(), process.cpuUsage()];
  const value = work();
  const { user, system } = process.cpuUsage(before);
  return { value, wall: performance.now() - start, busy: (user + system) / 1000 };
}

function choosingOf({ pictures, frames }: Show, pattern: Pattern): Choosing {
  const costs = costsOf(frames, pattern.job, pictures.length);
  if (!costs.ok) throw new Error('prices of the bench can be added up');
  const candidates = candidatesOf(pattern, frames, costs.value, new Set());
  const tried = pictures.map((picture) => tryPicture(pattern, picture, candidates.frames));
  return choosingFor(tried, candidates, false);
}

/** Every set of at most so many sizes. */
function bestByTrying(choosing: Choosing, most: number): { readonly best: Worth; readonly sets: number } {
  const filler = new Filler(choosing);
  let [best, sets]: [Worth, number] = [{ held: 0, cost: 0 }, 0];
  const grow = (sizes: readonly number[], from: number): void => {
    sets += 1;
    const { held, cost } = filler.fill(sizes);
    if (isBetter({ held, cost }, best)) best = { held, cost };
    if (sizes.length === most) return;
    for (let size = from; size < choosing.sizes; size += 1) grow([...sizes, size], size + 1);
  };
  grow([], 0);
  return { best, sets };
}

const SHOWS = [
  { name: 'borders from 40 mm', range: { least: '40 mm' }, counted: false },
  { name: '40 to 150 mm', range: { least: '40 mm', greatest: '150 mm' }, counted: false },
  { name: '40 to 110 mm', range: { least: '40 mm', greatest: '110 mm' }, counted: false },
  { name: '40 to 150 mm, counted', range: { least: '40 mm', greatest: '150 mm' }, counted: true },
];

console.log(
  `${PICTURES} pictures, ${SIZES} sizes      whole plan ms   processor ms   of the target of ${TARGET_MS} ms   held, fewest sizes`,
);
for (const { name, range, counted } of SHOWS) {
  const { pictures, frames } = showOf(PICTURES, SIZES, 7);
  const pattern = patternOf(range);
  const runs = Array.from({ length: ROUNDS }, () =>
    timed(() => planShow(pictures, pattern, frames, { onShelfOnly: counted })),
  );
  const [first] = runs;
  if (!first?.value.ok) throw new Error('the show of the bench can be planned');
  const { tradeOff, fewest } = first.value.value;
  if (tradeOff.length !== MOST || !tradeOff.every(({ proven }) => proven)) process.exitCode = 1;
  const wall = median(runs.map((run) => run.wall));
  const busy = median(runs.map((run) => run.busy));
  const held = `${tradeOff.map((row) => row.held).join(' ')}; ${fewest.sizes}`;
  console.log(
    `${name.padEnd(28)} ${wall.toFixed(0).padStart(13)} ${busy.toFixed(0).padStart(14)} ${(wall / TARGET_MS).toFixed(2).padStart(29)}   ${held}`,
  );
}

console.log(`\nsmall shows: search beside trying every choice`);
for (const [pictures, sizes] of [
  [30, 10],
  [60, 14],
  [120, 18],
] as const) {
  const choosing = choosingOf(showOf(pictures, sizes, 11), patternOf({ least: '40 mm', greatest: '150 mm' }));
  const searched = timed(() => leastCost(choosing, MOST));
  const tried = timed(() => bestByTrying(choosing, MOST));
  const { held, cost } = searched.value;
  const equal = held === tried.value.best.held && cost === tried.value.best.cost;
  if (!equal) process.exitCode = 1;
  console.log(
    `${`${pictures} pictures, ${sizes} sizes`.padEnd(28)} search ${searched.wall.toFixed(1)} ms, ${tried.value.sets} choices ${tried.wall.toFixed(1)} ms: ${(tried.wall / searched.wall).toFixed(1)} times; results ${equal ? 'equal' : 'DIFFER'}`,
  );
}

const { pictures, frames } = showOf(40, SIZES, 3);
const pattern = patternOf({ least: '40 mm' });
const jobs = pictures.flatMap((picture) => {
  const read = readJob(writeMat(pattern, picture, { blank: { width: 1000, height: 1000 } }));
  return read.ok ? [read.value.job] : [];
});
const blanks = frames.flatMap(({ size: { width, height } }) => [
  { width, height },
  { width: height, height: width },
]);
const inRange = (borders: Readonly<Record<string, number>>) =>
  Object.values(borders).every((border) => border >= 40 - 1e-6);
const solved = timed(() => {
  let count = 0;
  for (const job of jobs) {
    const trial = new Trial(job);
    for (const blank of blanks) if (trial.suits({ ...job.frame, blank })) count += 1;
  }
  return count;
});
const laid = timed(() => {
  let count = 0;
  for (const job of jobs) {
    for (const blank of blanks) {
      const layout = layOut({ ...job, frame: { ...job.frame, blank } });
      if (layout.ok && inRange({ ...layout.value.borders.cut })) count += 1;
    }
  }
  return count;
});
const same = solved.value === laid.value;
if (!same) process.exitCode = 1;
console.log(
  `\n${jobs.length * blanks.length} pictures in frames: tried ${solved.wall.toFixed(0)} ms, laid out ${laid.wall.toFixed(0)} ms: ${(laid.wall / solved.wall).toFixed(1)} times; ${solved.value} suit, results ${same ? 'equal' : 'DIFFER'}`,
);
