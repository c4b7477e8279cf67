/** Grooves and ruled lines in files for machines, read back: each in a place of its own, on the plan, none of them from the back. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { MachineKind } from '../../../src/bridge';
import { cutsOfLine } from '../../../src/core/cutting/line-cuts';
import { bladePath } from '../../../src/core/cutting/outline-cuts';
import type { LinePlan } from '../../../src/core/cutting/plan';
import { exportFiles } from '../../../src/outputs/index';
import { fonts } from '../contexts';
import { defaults, jobText } from '../jobs';
import { alongEdge, context, fileOf, machineFiles } from './fixtures';
import { farthest, lengthOfStrokes, pointsAlong, type ReadStroke } from './pieces';
import { noReader, readDxf } from './read-dxf';
import { readGcode } from './read-gcode';
import { readHpgl } from './read-hpgl';
import { readSvg } from './read-svg';
import { readCsv, readJson } from './read-tables';

if (noReader !== undefined) console.warn(noReader);

/** A groove and two pens round an oval, an arch and a rectangle. */
const JOB = {
  title: 'Ferns',
  mat: {
    layers: [{ thickness: '1/16 in' }, { thickness: '1/16 in' }],
    lines: [
      { kind: 'groove', distance: '3/8 in', width: '1/16 in' },
      { kind: 'ruled', distance: '5/8 in', width: '0.7 mm' },
      { kind: 'ruled', distance: '3/4 in', width: '0.35 mm' },
    ],
  },
  windows: {
    kind: 'row',
    gap: '3 in',
    items: ['oval', 'arch', 'rectangle'].map((shape) => ({ kind: 'window', size: '5 x 7 in', shape })),
  },
  borders: { sides: '3 in' },
};
const KINDS: readonly MachineKind[] = ['dxf', 'svg', 'hpgl', 'gcode', 'csv', 'json'];

/** What is made of one kind of line, as strokes, by format. */
type Found = Readonly<Record<'groove' | 'ruled', readonly ReadStroke[]>>;
let files: ReadonlyMap<string, string>;
const found = new Map<MachineKind, Found>();

beforeAll(async () => {
  files = await machineFiles(JOB, KINDS, { view: 'front' });
  const text = (name: string) => fileOf(files, name);
  const { table, layers } = readJson(text('mat-cuts.json'));
  const kinds = (table.layers[0]!.paths as unknown as { kind: string }[]).map(({ kind }) => kind);
  const pick = (strokes: readonly ReadStroke[], kind: string) => strokes.filter((_, index) => kinds[index] === kind);
  const both = (strokes: readonly ReadStroke[]): Found => ({
    groove: pick(strokes, 'groove'),
    ruled: pick(strokes, 'ruled line'),
  });
  found.set('json', both(layers.get(1)!));
  found.set('csv', both(readCsv(text('mat-cuts.csv')).layers.get(1)!));
  found.set('gcode', both(readGcode(text('mat-layer-1.nc')).strokes));
  found.set('hpgl', both(readHpgl(text('mat-layer-1.plt')).strokes));
  const { groups } = readSvg(text('mat-cuts.svg'));
  found.set('svg', { groove: groups.get('layer-1-groove')!, ruled: groups.get('layer-1-ruled')! });
  if (noReader !== undefined) return;
  const [drawing] = readDxf([text('mat-cuts.dxf')]);
  expect(drawing!.errors).toEqual([]);
  const on = (name: string) => drawing!.entities.filter(({ layer }) => layer === name).map(({ pieces }) => pieces);
  found.set('dxf', { groove: on('LAYER1_GROOVE'), ruled: on('LAYER1_RULED') });
});

function planOf(kind: LinePlan['kind']): LinePlan[] {
  return context(JOB, { view: 'front' }).plan.layers[0]!.lines.filter((line) => line.kind === kind);
}

describe.each(['groove', 'ruled'] as const)('%s', (kind) => {
  it.each(KINDS)('in %s lies on the plan, and all of the plan is there', (format) => {
    if (format === 'dxf' && noReader !== undefined) return;
    const strokes = found.get(format)![kind];
    const blades = planOf(kind).flatMap((line) => cutsOfLine(line).flatMap(bladePath));
    // Round a curve without corners a groove runs over its own start: on the same line.
    const slack = (format === 'hpgl' ? 0.035 : format === 'dxf' || format === 'gcode' ? 0.01 : 0.001) + 0.004;
    const wanted = blades.flatMap((edge) => alongEdge(edge, 3));
    const drawn = strokes.flat().map((piece) => pointsAlong(piece, piece.bend ? 0.5 : Infinity));
    const looked = strokes.flat().flatMap((piece) => pointsAlong(piece, 3));
    expect(looked.length).toBeGreaterThan(100);
    expect(farthest(looked, blades.map((edge) => alongEdge(edge, 0.4)))).toBeLessThan(slack); // prettier-ignore
    expect(farthest(wanted, drawn)).toBeLessThan(slack);
  });
});

describe('G-code', () => {
  it('lowers a pen to the face, a groove to its depth and a window through the board, and stops for each tool', () => {
    const { strokes, stops, comments } = readGcode(fileOf(files, 'mat-layer-1.nc'));
    const lines = planOf('ruled').length;
    // Two pens, then the knife, which leans alike for grooves and windows.
    expect(stops).toEqual([lines / 2, lines]);
    const text = fileOf(files, 'mat-layer-1.nc');
    const heights = [...text.matchAll(/^G1 Z(\S+)$/gm)].map(([, height]) => Number(height) * 25.4);
    expect(heights).toHaveLength(strokes.length);
    heights.slice(0, lines).forEach((height) => expect(height).toBeCloseTo(0, 9));
    const grooves = found.get('json')!.groove.length;
    // 1/32 in deep at 45 degrees.
    heights.slice(lines, lines + grooves).forEach((height) => expect(height).toBeCloseTo(-25.4 / 32, 4));
    heights.slice(lines + grooves).forEach((height) => expect(height).toBeCloseTo(-25.4 / 16, 4));
    expect(comments.join('\n')).toMatch(
      /knife leaning 45 degrees towards the middle, an angle that is set on your machine/,
    );
    expect(comments.join('\n')).toMatch(/Begin with: pen of 0.7 mm/);
  });

  it('stops before windows whose bevel leans otherwise than a groove', async () => {
    const lines = [{ kind: 'groove', angle: 60 }];
    const one = { frame: { size: '11 x 14 in' }, windows: { kind: 'window', size: '5 x 7 in', lines } };
    const text = fileOf(await machineFiles(one, ['gcode'], { view: 'front' }), 'mat-layer-1.nc');
    expect(readGcode(text).stops).toEqual([8]);
    expect(text).toContain('(Change to: knife leaning 45 degrees)');
  });
});

describe('HPGL', () => {
  it('has a tool for windows, and one for each pen and groove that differs', () => {
    const { tools } = readHpgl(fileOf(files, 'mat-layer-1.plt'));
    const runs = tools.filter((tool, index) => tool !== tools[index - 1]);
    expect(runs).toEqual([2, 3, 4, 1]);
  });
});

describe('tables', () => {
  it('say what each path makes, with what, and how deep', () => {
    const { rows } = readCsv(fileOf(files, 'mat-cuts.csv'));
    const groove = rows.find(({ makes }) => makes === 'groove');
    expect(groove).toMatchObject({ tool: 'knife leaning 45 degrees', depth: '0.03125', view: 'front' });
    expect(rows.find(({ makes }) => makes === 'ruled line')).toMatchObject({
      tool: 'pen of 0.7 mm, #5b5348',
      depth: '',
    });
  });
});

describe('from the back', () => {
  it('there are windows alone, each file that can says so, and the export warns', async () => {
    const made = await exportFiles(jobText(JOB), 'mat', { ...defaults, only: KINDS }, { fonts });
    if (!made.ok) throw new Error('not made');
    const warnings = made.problems.filter(({ code }) => code === 'lines-left-out');
    expect(warnings).toMatchObject([{ severity: 'warning', at: 'mat.lines[0]' }]);
    const text = (name: string) => new TextDecoder().decode(made.value.find((file) => file.name === name)?.bytes);
    for (const name of ['mat-cuts.dxf', 'mat-cuts.svg', 'mat-layer-1.nc'])
      expect(text(name)).toContain('Grooves and ruled lines are not in here');
    for (const name of ['mat-cuts.dxf', 'mat-cuts.svg']) expect(text(name)).not.toMatch(/GROOVE|RULED|-groove|-ruled/);
    const { strokes } = readGcode(text('mat-layer-1.nc'));
    const bare = { ...JOB, mat: { layers: JOB.mat.layers } };
    const without = readGcode(fileOf(await machineFiles(bare, ['gcode']), 'mat-layer-1.nc')).strokes;
    expect(lengthOfStrokes(strokes)).toBe(lengthOfStrokes(without));
  });

  it('no warning where there is nothing to leave out, or nothing for machines', async () => {
    const bare = { ...JOB, mat: { layers: JOB.mat.layers } };
    for (const [job, only] of [
      [bare, ['dxf']],
      [JOB, ['cut-list']],
    ] as const) {
      const made = await exportFiles(jobText(job), 'mat', { ...defaults, only: [...only] }, { fonts });
      expect(made.problems.map(({ code }) => code)).not.toContain('lines-left-out');
    }
  });
});

describe('layers cut behind one another', () => {
  it('an export for machines warns that its files hold them on the full blank, and no other does', async () => {
    const layers = [{}, { reveal: '1/4 in' }];
    const codesOf = async (cutting: object, only: typeof KINDS | ['cut-list']) => {
      const job = { ...JOB, mat: { layers }, cutting };
      const made = await exportFiles(jobText(job), 'mat', { ...defaults, only: [...only] }, { fonts });
      expect(made.ok).toBe(true);
      return made.problems.filter(({ code }) => code === 'machine-blank-full');
    };
    expect(await codesOf({ layers: 'behind' }, KINDS)).toMatchObject([
      { severity: 'warning', at: 'cutting.layers', value: '1/4 in' },
    ]);
    expect(await codesOf({ layers: 'behind' }, ['cut-list'])).toEqual([]);
    expect(await codesOf({}, KINDS)).toEqual([]);
  });
});
