/** Jobs for the tests of outputs, and what the makers take of them. */
import type { ExportOptions } from '../../src/bridge';
import { planCuts } from '../../src/core/cutting/plan-cuts';
import { parseJobText } from '../../src/core/job/text';
import { layOut } from '../../src/core/layout/lay-out';
import { showingOf } from '../../src/core/units';
import type { Fonts, OutputContext } from '../../src/outputs/context';

export const defaults: ExportOptions = {
  paper: 'letter',
  view: 'back',
  units: 'in',
  only: ['template', 'cut-list', 'proof'],
  turnEverySecondPage: false,
};

/** The text of a job file. */
export function jobText(job: object): string {
  return JSON.stringify({ format: 'matwright-job', version: 1, ...job });
}

/** A job opened the same way as a user's file; undefined when it has errors. */
export function planContext(job: object, options: Partial<ExportOptions>, fonts: Fonts): OutputContext | undefined {
  const opened = parseJobText(jobText(job));
  if (!opened.ok) return undefined;
  const layout = layOut(opened.value.job);
  if (!layout.ok) return undefined;
  const chosen = { ...defaults, ...options };
  return {
    job: opened.value.job,
    layout: layout.value,
    plan: planCuts(opened.value.job, layout.value),
    showing: showingOf(opened.value.job, chosen.units),
    options: chosen,
    fonts,
    pictures: new Map(),
  };
}

/** One picture, one layer, Letter in nine tiles at most. */
export const FERN = {
  title: 'Lady fern, cyanotype',
  pictures: [{ title: 'Lady fern', size: '8 x 10 in' }],
  frame: { size: '11 x 14 in' },
};

/** Two layers and a heavier bottom, in millimetres. */
export const CHART = {
  title: 'Harbour chart',
  units: 'mm',
  pictures: [{ title: 'Harbour chart', size: 'A4' }],
  frame: { size: '300 x 400 mm' },
  mat: { layers: [{ board: 'Warm white' }, { board: 'Deep blue', reveal: '6 mm' }] },
  borders: { rule: 'bottom-amount' },
};

/** Nine windows in 20 x 20 in. */
export const LINOCUTS = {
  title: "Children's linocuts",
  pictures: Array.from({ length: 9 }, (_, index) => ({ title: `Linocut ${index + 1}`, size: '4 x 4 in' })),
  frame: { size: '20 x 20 in' },
  windows: { kind: 'grid', columns: 3, gap: '1 in', items: Array.from({ length: 9 }, (_, index) => String(index + 1)) },
};

/** A window off the middle, so that a mirror image can be told. */
export const ASIDE = {
  title: 'Set to one side',
  units: 'mm',
  frame: { size: '500 x 500 mm' },
  free: [{ use: 'title', title: 'Title', size: '310 x 120 mm', at: { left: '37 mm', bottom: '61 mm' } }],
};

/** One square window in 500 x 500 mm. */
export const SQUARE = {
  title: 'Square',
  units: 'mm',
  pictures: [{ title: 'Square', size: '300 x 300 mm' }],
  frame: { size: '500 x 500 mm' },
};

/** A canvas in a frame of its own size, with nothing to cut. */
export const BARE = {
  title: 'The sea',
  pictures: [{ title: 'The sea', kind: 'painting on canvas', size: '16 x 20 in', thickness: '3/4 in' }],
  frame: { size: '16 x 20 in' },
  mat: { layers: [] },
};

/** The same in a float frame. */
export const FLOAT = { ...BARE, frame: { size: '16 x 20 in', build: 'float', float: { gap: '1/4 in' } } };
