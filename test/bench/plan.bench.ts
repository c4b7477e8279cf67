/** Layout and cut plan, from the opened job: 100 windows in three layers (target: under 5 ms), and how time grows from 10 to 1,000. */
import { Bench } from 'tinybench';
import { planCuts } from '../../src/core/cutting/plan-cuts';
import type { Job } from '../../src/core/job/job';
import { parseJobText } from '../../src/core/job/text';
import { layOut } from '../../src/core/layout/lay-out';

const TARGET_MS = 5;
const counts = [10, 30, 100, 300, 1000];

/** A wall of linocuts, as many to a row as there are rows, behind three layers. */
function open(count: number): Job {
  const opened = parseJobText(
    JSON.stringify({
      format: 'matwright-job',
      version: 1,
      title: 'Linocuts',
      pictures: Array.from({ length: count }, () => ({ size: '4 x 5 in' })),
      windows: {
        kind: 'grid',
        columns: Math.ceil(Math.sqrt(count)),
        gap: '2 in',
        items: Array.from({ length: count }, (_, index) => String(index + 1)),
      },
      mat: { layers: [{}, {}, {}] },
      borders: { rule: 'equal', all: '3 in' },
    }),
  );
  if (!opened.ok) throw new Error(`the job of the bench has errors: ${opened.problems[0]?.message}`);
  return opened.value.job;
}

function plan(job: Job): number {
  const layout = layOut(job);
  if (!layout.ok) throw new Error(`the job of the bench can't be laid out: ${layout.problems[0]?.message}`);
  return planCuts(job, layout.value).layers.length;
}

const bench = new Bench({ time: 500, warmupTime: 200, throws: true });
for (const count of counts) {
  const job = open(count);
  bench.add(String(count), () => void plan(job));
}
await bench.run();

const medians = bench.tasks.map(({ name, result }) => {
  if (result.state !== 'completed') throw new Error(`${name} windows: ${result.state}`);
  return { windows: Number(name), ms: result.latency.p50 };
});
const smallest = medians[0]!;
for (const { windows, ms } of medians) {
  const grown = ms / smallest.ms / (windows / smallest.windows);
  console.log(
    `${String(windows).padStart(5)} windows ${ms.toFixed(3).padStart(9)} ms  ${((ms / windows) * 1000).toFixed(1).padStart(6)} µs a window  ${grown.toFixed(2)} times the growth of the windows`,
  );
}
const hundred = medians.find(({ windows }) => windows === 100)!;
console.log(`100 windows: ${(hundred.ms / TARGET_MS).toFixed(2)} times the target of ${TARGET_MS} ms`);
