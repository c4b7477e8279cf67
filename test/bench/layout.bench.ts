/** Reading, layout and cut plan apart, each by the window: the work itself, and what the garbage collector adds. */
import { PerformanceObserver } from 'node:perf_hooks';
import { setTimeout } from 'node:timers/promises';
import { planCuts } from '../../src/core/cutting/plan-cuts';
import { parseJobText } from '../../src/core/job/text';
import { layOut } from '../../src/core/layout/lay-out';

const COUNTS = [10, 100, 1000, 2000];
const ROUNDS = 12;
/** Windows worked on in one round, whatever the job's size, so that every size is measured as long. */
const WINDOWS_A_ROUND = 20_000;
/** Work by the window at 1,000 windows beside that at 100: this and less counts as linear. */
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

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}

const stages = COUNTS.flatMap(stagesOf);
for (let warm = 0; warm < 2; warm += 1) for (const stage of stages) await runRound(stage);
for (const { pure, whole } of stages) whole.length = pure.length = 0;
// Turn and turn about, so that a busy moment of the machine falls on all.
for (let round = 0; round < ROUNDS; round += 1) for (const stage of stages) await runRound(stage);

console.log('µs a window    windows      work   beside 100   with collection   beside 100');
for (const name of ['read', 'layout', 'plan']) {
  const own = stages.filter((stage) => stage.name === name);
  const hundred = own.find(({ count }) => count === 100)!;
  for (const { count, pure, whole } of own) {
    const [work, all] = [median(pure), median(whole)];
    const cells = [
      name.padEnd(12),
      String(count).padStart(9),
      work.toFixed(1).padStart(9),
      (work / median(hundred.pure)).toFixed(2).padStart(12),
      all.toFixed(1).padStart(17),
      (all / median(hundred.whole)).toFixed(2).padStart(12),
    ];
    console.log(cells.join(' '));
  }
  const thousand = own.find(({ count }) => count === 1000)!;
  const ratio = median(thousand.pure) / median(hundred.pure);
  console.log(`  ${name}: ${ratio <= LINEAR ? 'linear' : 'NOT linear'} from 100 to 1,000 windows (at most ${LINEAR})`);
}
observer.disconnect();
