/** Reading, layout and cut plan, by the window: the work itself, and what the garbage collector adds (targets: 100 windows in 5 ms, linear from 10 to 1,000). */
import { PerformanceObserver } from 'node:perf_hooks';
import { setTimeout } from 'node:timers/promises';
import { planCuts } from '../../src/core/cutting/plan-cuts';
import { parseJobText } from '../../src/core/job/text';
import { layOut } from '../../src/core/layout/lay-out';
import { median } from './median';

const COUNTS = [10, 100, 1000, 2000];
const ROUNDS = 12;
/** Windows worked on in one round, whatever the job's size, so that every size is measured as long. */
const WINDOWS_A_ROUND = 20_000;
/** Layout and plan of 100 windows in three layers, ms. */
const TARGET_MS = 5;
/** Work by the window at 1,000 windows beside that at 10: this and less counts as linear. */
const LINEAR = 1.5;

let collecting = 0;
const observer = new PerformanceObserver((list) => {
  for (const { duration } of list.getEntries()) collecting += duration;
});
observer.observe({ entryTypes: ['gc'] });

/** A wall of linocuts behind three layers, as the text of a job. */
function wall(count: number): string {
  const items = Array.from({ length: count }, (_, index) => String(index + 1));
  return JSON.stringify({
    format: 'matwright-job',
    version: 1,
    pictures: items.map(() => ({ size: '4 x 5 in' })),
    windows: { kind: 'grid', columns: Math.ceil(Math.sqrt(count)), gap: '2 in', items },
    mat: { layers: [{}, {}, {}] },
    borders: { rule: 'equal', all: '3 in' },
  });
}

interface Stage {
  readonly name: string;
  readonly count: number;
  readonly work: () => unknown;
  /** Microseconds a window in each round, without and with collection. */
  readonly pure: number[];
  readonly whole: number[];
}

function stagesOf(count: number): Stage[] {
  const text = wall(count);
  const opened = parseJobText(text);
  if (!opened.ok) throw new Error(`the job of the bench has errors: ${opened.problems[0]?.message}`);
  const { job } = opened.value;
  const layout = layOut(job);
  if (!layout.ok) throw new Error(`the job of the bench can't be laid out: ${layout.problems[0]?.message}`);
  const stage = (name: string, work: () => unknown): Stage => ({ name, count, work, pure: [], whole: [] });
  return [
    stage('read', () => parseJobText(text)),
    stage('layout', () => layOut(job)),
    stage('plan', () => planCuts(job, layout.value)),
  ];
}

async function runRound({ count, work, pure, whole }: Stage): Promise<void> {
  // The collector's times are told some turns of the loop later.
  await setTimeout(5);
  collecting = 0;
  const start = performance.now();
  for (let done = 0; done < WINDOWS_A_ROUND; done += count) work();
  const taken = performance.now() - start;
  await setTimeout(5);
  whole.push((taken / WINDOWS_A_ROUND) * 1000);
  pure.push(((taken - collecting) / WINDOWS_A_ROUND) * 1000);
}

/** What one call takes, ms: half of them take less. Before the heap is full of the others' jobs. */
function oneJob(count: number): number {
  const opened = parseJobText(wall(count));
  if (!opened.ok) throw new Error(`the job of the bench has errors: ${opened.problems[0]?.message}`);
  const { job } = opened.value;
  const times = Array.from({ length: 400 }, () => {
    const start = performance.now();
    const layout = layOut(job);
    if (layout.ok) planCuts(job, layout.value);
    return performance.now() - start;
  });
  // The first calls also compile the code.
  return median(times.slice(100));
}

const ms = oneJob(100);
console.log(
  `layout and plan of 100 windows: ${ms.toFixed(2)} ms, ${(ms / TARGET_MS).toFixed(2)} times the target of ${TARGET_MS} ms\n`,
);

const stages = COUNTS.flatMap(stagesOf);
for (let warm = 0; warm < 2; warm += 1) for (const stage of stages) await runRound(stage);
for (const { pure, whole } of stages) whole.length = pure.length = 0;
// Turn and turn about, so that a busy moment of the machine falls on all.
for (let round = 0; round < ROUNDS; round += 1) for (const stage of stages) await runRound(stage);

interface Taken {
  /** µs a window. */
  readonly work: number;
  readonly whole: number;
}

function taken(count: number, names: readonly string[]): Taken {
  const own = stages.filter((stage) => stage.count === count && names.includes(stage.name));
  const sum = (of: (stage: Stage) => readonly number[]) => own.reduce((total, stage) => total + median(of(stage)), 0);
  return { work: sum(({ pure }) => pure), whole: sum(({ whole }) => whole) };
}

console.log('µs a window       windows      work   beside 10   with collection   beside 10');
for (const names of [['read'], ['layout'], ['plan'], ['layout', 'plan']]) {
  const least = taken(COUNTS[0] ?? 10, names);
  for (const count of COUNTS) {
    const { work, whole } = taken(count, names);
    const cells = [
      names.join(' + ').padEnd(15),
      String(count).padStart(9),
      work.toFixed(1).padStart(9),
      (work / least.work).toFixed(2).padStart(11),
      whole.toFixed(1).padStart(17),
      (whole / least.whole).toFixed(2).padStart(11),
    ];
    console.log(cells.join(' '));
  }
}

const asked = ['layout', 'plan'];
const [small, large] = [taken(10, asked), taken(1000, asked)];
const [work, whole] = [large.work / small.work, large.whole / small.whole];
const verdict = (ratio: number) => `${ratio.toFixed(2)} (${ratio <= LINEAR ? 'linear' : `more than ${LINEAR}`})`;
console.log(`1,000 windows beside 10, by the window: the work ${verdict(work)}, with collection ${verdict(whole)}`);
observer.disconnect();
