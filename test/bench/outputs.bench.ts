/** Every output of the largest sample job, each from the job's text to its last byte, beside opening and planning that job alone in the same run. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { OutputKind } from '../../src/bridge';
import { planCuts } from '../../src/core/cutting/plan-cuts';
import { parseJobText } from '../../src/core/job/text';
import { layOut } from '../../src/core/layout/lay-out';
import { exportFiles } from '../../src/outputs';
import { median } from './median';

const ROUNDS = 25;
const WARM_UP = 4;
const KINDS: readonly OutputKind[] = [
  'template',
  'cut-card',
  'cut-list',
  'proof',
  'dxf',
  'svg',
  'hpgl',
  'gcode',
  'csv',
  'json',
];

// Benches run from the project's folder.
const folder = join('resources', 'samples');
const font = (name: string) => new Uint8Array(readFileSync(join('resources', 'fonts', name)));
const fonts = { regular: font('Inter-Regular.ttf'), bold: font('Inter-SemiBold.ttf') };

function plan(text: string) {
  const opened = parseJobText(text);
  const layout = opened.ok ? layOut(opened.value.job) : opened;
  if (!opened.ok || !layout.ok) throw new Error('a sample job has errors');
  return planCuts(opened.value.job, layout.value);
}

function cutsOf(text: string): number {
  return plan(text)
    .layers.flatMap(({ windows }) => windows)
    .reduce((sum, { cuts }) => sum + cuts.back.length, 0);
}

const samples = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }))
  .map((sample) => ({ ...sample, cuts: cutsOf(sample.text) }));
const largest = samples.reduce((most, sample) => (sample.cuts > most.cuts ? sample : most));

interface Timed {
  readonly name: string;
  readonly work: () => Promise<number>;
  readonly taken: number[];
  bytes: number;
}

async function made(only: readonly OutputKind[]): Promise<number> {
  const options = { paper: 'letter', view: 'back', units: 'in', only, turnEverySecondPage: false } as const;
  const files = await exportFiles(largest.text, 'bench', options, { fonts });
  if (!files.ok) throw new Error(`nothing was made: ${files.problems[0]?.message}`);
  return files.value.reduce((sum, { bytes }) => sum + bytes.length, 0);
}

/** Opens, lays out and plans; no bytes come of it. */
function planned(): Promise<number> {
  plan(largest.text);
  return Promise.resolve(0);
}

const timed = (name: string, work: () => Promise<number>): Timed => ({ name, work, taken: [], bytes: 0 });
const all: readonly Timed[] = [
  timed('job to plan', planned),
  ...KINDS.map((kind) => timed(kind, () => made([kind]))),
  timed('all of them', () => made(KINDS)),
];

// Turn and turn about, so that a busy moment of the machine falls on all.
for (let round = 0; round < WARM_UP + ROUNDS; round += 1) {
  for (const one of all) {
    const start = performance.now();
    one.bytes = await one.work();
    if (round >= WARM_UP) one.taken.push(performance.now() - start);
  }
}

const least = median(all[0]?.taken ?? []);
console.log(`${largest.name}, ${largest.cuts} cuts       ms   beside job to plan        kB`);
for (const { name, taken, bytes } of all) {
  const ms = median(taken);
  const cells = [
    ms.toFixed(2).padStart(9),
    (ms / least).toFixed(1).padStart(20),
    (bytes / 1000).toFixed(1).padStart(9),
  ];
  console.log(`${name.padEnd(28)} ${cells.join(' ')}`);
}
