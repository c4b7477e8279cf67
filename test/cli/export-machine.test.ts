/** `export --only machine`: files for machines on demand alone, one a board where need be, and values refused that a blade would follow. */
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeTempFolder } from '../helpers/temp-folder';
import { jobText, runHere } from './run-cli';

const root = await makeTempFolder();
let count = 0;

async function newJob(): Promise<{ folder: string; job: string }> {
  const folder = join(root, String((count += 1)));
  await mkdir(folder);
  const job = join(folder, 'fern.json');
  const text = jobText({
    title: 'Lady fern',
    frame: { size: '11 x 14 in' },
    windows: { kind: 'window', size: '8 x 10 in', shape: 'oval' },
    mat: { layers: [{}, {}] },
  });
  await writeFile(job, text);
  return { folder, job };
}

const ALL = [
  'fern-cuts.csv',
  'fern-cuts.dxf',
  'fern-cuts.json',
  'fern-cuts.svg',
  'fern-layer-1.nc',
  'fern-layer-1.plt',
  'fern-layer-2.nc',
  'fern-layer-2.plt',
];

async function madeIn(folder: string): Promise<string[]> {
  return (await readdir(folder)).filter((name) => name !== 'fern.json').sort();
}

describe('files for machines', () => {
  it('are made when they are asked for, together or by name, and not otherwise', async () => {
    const all = await newJob();
    expect(await runHere(['export', all.job, '--only', 'machine'])).toMatchObject({ code: 0, err: '' });
    expect(await madeIn(all.folder)).toEqual(ALL);
    const some = await newJob();
    const named = await runHere(['export', some.job, '--only', 'gcode,dxf', '--json']);
    expect((JSON.parse(named.out) as { files: { kind: string }[] }).files.map(({ kind }) => kind)).toEqual([
      'dxf',
      'gcode',
      'gcode',
    ]);
    const none = await newJob();
    expect(await runHere(['export', none.job])).toMatchObject({ code: 0 });
    expect(await madeIn(none.folder)).toEqual(['fern-cut-list.csv', 'fern-proof.svg', 'fern-template.pdf']);
  });

  it('never take the place of a file that is there, on any layer', async () => {
    const { folder, job } = await newJob();
    await writeFile(join(folder, 'fern-layer-2.nc'), 'mine');
    expect(await runHere(['export', job, '--only', 'gcode'])).toMatchObject({ code: 2 });
    expect(await madeIn(folder)).toEqual(['fern-layer-2.nc']);
    expect(await readFile(join(folder, 'fern-layer-2.nc'), 'utf8')).toBe('mine');
  });

  it('are written as the options say', async () => {
    const { folder, job } = await newJob();
    const words = ['--units', 'mm', '--origin', 'lower-right', '--depth', '1/8 in', '--safe-height', '1 cm'];
    const more = [
      '--feed',
      '20 in',
      '--rotary',
      'B',
      '--curves',
      'lines',
      '--tolerance',
      '0.2 mm',
      '--lift-angle',
      '30',
    ];
    expect(await runHere(['export', job, '--only', 'gcode', ...words, ...more])).toMatchObject({ code: 0, err: '' });
    const text = await readFile(join(folder, 'fern-layer-1.nc'), 'utf8');
    for (const line of ['F508', 'G0 Z10', 'G1 Z-3.175']) expect(text.split('\n')).toContain(line);
    expect(text).toMatch(/^G0 X-\d/m);
    expect(text).toMatch(/^G1 B-?\d/m);
    expect(text).not.toMatch(/^G[23] /m);
    expect(text).toContain('curves within 0.2 mm');
  });

  it.each([
    [['--only', 'machines'], '"machines" is none of'],
    [['--depth', '1'], 'say the unit: 1 mm or 1 in (between 0.05 mm and 50 mm).'],
    [['--depth', '2'], 'say the unit: 2 mm (between 0.05 mm and 50 mm).'],
    [['--depth', '0'], 'a length between 0.05 mm and 50 mm is wanted, with its unit.'],
    [['--feed', '0'], 'a length between 10 mm and 100000 mm is wanted, with its unit.'],
    [['--depth', '0 mm'], '0 mm is not between 0.05 mm and 50 mm.'],
    [['--depth', '5 in'], '5 in is not between'],
    [['--tolerance', '2 mm'], '2 mm is not between 0.001 mm and 1 mm.'],
    [['--safe-height', '-3 mm'], '-3 mm is not between 0.5 mm and 200 mm.'],
    [['--feed', 'fast'], 'fast is not a length'],
    [['--lift-angle', '-1'], '"-1" is not a number of degrees between 1 and 180.'],
    [['--rotary', 'D'], 'Allowed choices are A, B, C.'],
    [['--origin', 'middle'], 'Allowed choices are lower-left'],
    [['--curves', 'splines'], 'Allowed choices are arcs, lines.'],
  ])('are refused for %j, saying what would be right', async (words, said) => {
    const { folder, job } = await newJob();
    const { code, err } = await runHere(['export', job, '--only', 'gcode', ...words]);
    expect(code).toBe(2);
    expect(err.replace(/\s+/g, ' ')).toContain(said);
    expect(await madeIn(folder)).toEqual([]);
  });
});

describe('how far the tool goes', () => {
  it('is told after the files of each layer and in all, as the files themselves have it', async () => {
    const { job, folder } = await newJob();
    const { out } = await runHere([
      'export',
      job,
      '--only',
      'json,gcode',
      '--view',
      'front',
      '--origin',
      'upper-right',
    ]);
    const file = JSON.parse(await readFile(join(folder, 'fern-cuts.json'), 'utf8')) as Lengths;
    const inches = (mm: number) => `${(mm / 25.4).toFixed(3)} in`;
    const row = (name: string, { cutLength, travel }: Omit<Lengths, 'layers'>) =>
      `${name} cut ${inches(cutLength)} travel ${inches(travel)}`;
    const told = out.replace(/ +/g, ' ');
    for (const [index, layer] of file.layers.entries()) expect(told).toContain(row(`layer ${index + 1}`, layer));
    expect(told).toContain(row('in all', file));
    const head = /Cut ([\d.]+) in, travel ([\d.]+) in/.exec(await readFile(join(folder, 'fern-layer-1.nc'), 'utf8'));
    expect(Number(head?.[1])).toBeCloseTo(file.layers[0]!.cutLength / 25.4, 3);
    expect(Number(head?.[2])).toBeCloseTo(file.layers[0]!.travel / 25.4, 3);
  });

  it('is in the answer with --json, in mm, and nowhere without files for machines', async () => {
    const { job, folder } = await newJob();
    const { out } = await runHere(['export', job, '--only', 'json', '--json']);
    const file = JSON.parse(await readFile(join(folder, 'fern-cuts.json'), 'utf8')) as Lengths;
    const { paths } = JSON.parse(out) as { paths: Lengths };
    expect(paths).toMatchObject({ cutLength: file.cutLength, travel: file.travel });
    expect(paths.layers.map(({ travel }) => travel)).toEqual(file.layers.map(({ travel }) => travel));
    const none = await newJob();
    expect((await runHere(['export', none.job, '--only', 'proof'])).out).not.toContain('travel');
  });
});

interface Lengths {
  readonly cutLength: number;
  readonly travel: number;
  readonly layers: readonly Omit<Lengths, 'layers'>[];
}
