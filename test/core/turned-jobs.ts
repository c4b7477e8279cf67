/** Jobs that are turned in tests: the samples, the saved files, the examples of the reference, and every shape. */
import { readdirSync, readFileSync } from 'node:fs';
import { jsonIn } from '../helpers/markdown';
import { GRID, jobOf, SHAPES } from '../outputs/machine/fixtures';
import { ASIDE, CHART, FERN, LINOCUTS, SQUARE } from '../outputs/jobs';
import { tryPlan, type Planned } from './open';

const heading = { format: 'matwright-job', version: 1 };

function filesOf(folder: string): [string, unknown][] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .map((name) => [name, JSON.parse(readFileSync(`${folder}/${name}`, 'utf8'))]);
}

/** Pictures off the middle of their sheets, turned and mirrored windows of every shape, with something joined to each. */
function shaped([name, shape]: readonly [string, unknown]): [string, unknown][] {
  const pictures = [
    { size: '7 x 9 in', image: '5 x 7 in', margins: { left: '1/2 in', top: '3/4 in' }, overlap: { left: '1/4 in', top: '1/8 in', right: '3/8 in', bottom: '1/2 in' } },
  ]; // prettier-ignore
  const over = (more: object) => ({ kind: 'window', picture: 1, shape, ...more });
  const joined = [
    { title: 'Name', size: '2 x 1 in', at: { left: '1 1/4 in', bottom: '-3/4 in' } },
    { size: '1 x 2 in', shape: 'arch', turned: 90, at: { right: '-3/4 in' } },
  ];
  const axes = typeof shape === 'object' && (shape as { reveal?: string }).reveal === 'axes';
  // The drawing of one's own has a part of its own kind as well.
  if (typeof shape === 'object' && 'path' in shape!)
    joined.push({ size: '2 x 2 in', shape, turned: 270, at: { top: '-1 in' } } as never);
  const windows = {
    kind: 'row',
    align: 'top',
    gap: '4 in',
    items: [
      over({}),
      over({ turned: 90, ...(axes ? {} : { joined }) }),
      over({ turned: 180, mirrored: true, ...(axes ? {} : { joined }) }),
      over({ size: '8 x 6 in', turned: 270 }),
      { kind: 'window', size: '6 x 8 in', shape },
    ],
  };
  const mat = {
    measuredAt: 'face',
    layers: [{}, { reveal: '1/8 in' }],
    lines: [
      { kind: 'groove', distance: '1/4 in' },
      { kind: 'ruled', distance: '3/8 in' },
    ],
  };
  return [
    [name, { ...heading, ...jobOf(shape) }],
    [`${name} with pictures`, { ...heading, pictures, mat, borders: { rule: 'equal', all: '5 in' }, windows }],
  ];
}

const DRAWN = { kind: 'outline', path: 'M0 0H60L100 50V100H30C20 80 0 70 0 50Z' };

const RINGS = ['first', 'none'].map((centre): [string, unknown] => [
  `ring, ${centre} in the middle`,
  {
    ...heading,
    units: 'mm',
    windows: {
      kind: 'ring',
      centre,
      start: 30,
      ...(centre === 'none' ? { on: '400 x 300 mm' } : { gap: '40 mm' }),
      items: [
        { kind: 'window', size: '100 x 80 mm', shape: 'oval' },
        ...[60, 70, 80, 65].map((width) => ({ kind: 'window', size: { width, height: '50 mm' }, shape: 'oval' })),
      ],
    },
  },
]);

const FIXTURES: readonly [string, unknown][] = [
  ...filesOf('resources/samples'),
  ...filesOf('test/files/v1'),
  ...jsonIn(readFileSync('resources/README.md', 'utf8')).map((job, index): [string, unknown] => [`example ${index + 1}`, job]),
  ...Object.entries({ FERN, CHART, LINOCUTS, ASIDE, SQUARE, GRID }).map(([name, job]): [string, unknown] => [name, { ...heading, ...job }]),
  ...Object.entries({ ...SHAPES, 'a drawing of no symmetry': DRAWN, pentagon: { kind: 'polygon', sides: 5 }, hexagon: { kind: 'polygon', sides: 6 } }).flatMap(shaped),
  ...RINGS,
]; // prettier-ignore

export const TURNED_JOBS: readonly (readonly [string, Planned])[] = FIXTURES.map(([name, job]) => {
  const { planned, problems } = tryPlan(job);
  if (!planned) throw new Error(`${name}: ${problems.map(({ message }) => message).join('\n')}`);
  return [name, planned];
});
