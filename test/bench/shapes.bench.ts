/**
 * Layout, cut plan and tool paths of 60 windows of mixed shapes in three layers, beside the same 60 as plain
 * rectangles, in one run: what true curves cost.
 */
import { planCuts } from '../../src/core/cutting/plan-cuts';
import { planToolPaths } from '../../src/core/cutting/tool-paths';
import { parseJobText } from '../../src/core/job/text';
import { layOut } from '../../src/core/layout/lay-out';
import { median } from './median';

const COUNT = 60;
const COLUMNS = 10;
const ROUNDS = 40;
const WARM_UP = 10;

const SHAPES: readonly (string | object)[] = [
  'oval',
  { kind: 'rounded', radius: '12 mm' },
  { kind: 'scooped', radius: '20 mm' },
  { kind: 'cut-corners', cut: '18 mm' },
  { kind: 'stepped', step: '9 mm', count: 2 },
  { kind: 'arch', rise: '30 mm' },
  'pointed',
  { kind: 'polygon', sides: 8 },
  'rectangle',
];

/** A wall of 60 linocuts; no two neighbours of one size. */
function wall(shapeOf: (index: number) => string | object) {
  const items = Array.from({ length: COUNT }, (_, index) => ({
    kind: 'window',
    use: 'empty',
    size: `${90 + 5 * (index % 7)} x ${120 + 6 * (index % 11)} mm`,
    shape: shapeOf(index),
  }));
  const opened = parseJobText(
    JSON.stringify({
      format: 'matwright-job',
      version: 1,
      units: 'mm',
      windows: { kind: 'grid', columns: COLUMNS, gap: '50 mm', items },
      mat: { layers: [{}, {}, {}] },
      borders: { rule: 'equal', all: '80 mm' },
    }),
  );
  if (!opened.ok) throw new Error(`the job of the bench has errors: ${opened.problems[0]?.message}`);
  return opened.value.job;
}

const jobs = {
  'mixed shapes': wall((index) => SHAPES[index % SHAPES.length] ?? 'rectangle'),
  rectangles: wall(() => 'rectangle'),
};

interface Timed {
  readonly name: string;
  readonly job: keyof typeof jobs;
  readonly work: () => unknown;
  readonly taken: number[];
}

function stagesOf(name: keyof typeof jobs): Timed[] {
  const job = jobs[name];
  const layout = layOut(job);
  if (!layout.ok) throw new Error(`the job of the bench can't be laid out: ${layout.problems[0]?.message}`);
  const plan = planCuts(job, layout.value);
  const timed = (stage: string, work: () => unknown): Timed => ({ name: stage, job: name, work, taken: [] });
  return [
    timed('layout', () => layOut(job)),
    timed('plan', () => planCuts(job, layout.value)),
    timed('tool paths', () => planToolPaths(plan, { view: 'back', corner: 'lower-left' })),
  ];
}

const stages = [...stagesOf('mixed shapes'), ...stagesOf('rectangles')];
// Turn and turn about, so that a busy moment of the machine falls on all.
for (let round = 0; round < WARM_UP + ROUNDS; round += 1) {
  for (const { work, taken } of stages) {
    const start = performance.now();
    work();
    if (round >= WARM_UP) taken.push(performance.now() - start);
  }
}

console.log(`${COUNT} windows, 3 layers     mixed ms   rectangles ms   mixed beside rectangles`);
const took = (name: string, job: keyof typeof jobs) =>
  median(stages.find((stage) => stage.name === name && stage.job === job)?.taken ?? []);
for (const name of ['layout', 'plan', 'tool paths']) {
  const [mixed, plain] = [took(name, 'mixed shapes'), took(name, 'rectangles')];
  const cells = [mixed.toFixed(2).padStart(10), plain.toFixed(2).padStart(15), (mixed / plain).toFixed(1).padStart(25)];
  console.log(`${name.padEnd(22)} ${cells.join(' ')}`);
}
