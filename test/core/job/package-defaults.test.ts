/** What a job leaves out of its package: tolerances, what holds it, how thick canvases are; held against the reference. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseJobText } from '../../../src/core/job/text';
import { thickestWithin, TOLERANCES, toleranceOf, type Material } from '../../../src/core/job/tolerances';
import { codesIn, tablesIn } from '../../helpers/markdown';

const told = tablesIn(readFileSync('resources/README.md', 'utf8')).find(({ section }) => section === 'Thicknesses')!;

function open(job: object) {
  const opened = parseJobText(JSON.stringify({ format: 'matwright-job', version: 1, ...job }));
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  return opened.value.job;
}

describe('the usual tolerances', () => {
  /** `0.4 mm + 3 %`, `0.2 mm to 6 mm, 0.3 mm above`. */
  const bandsIn = (cell: string) =>
    cell.split(', ').map((text) => ({
      upTo: Number(/to ([\d.]+) mm/.exec(text)?.[1] ?? Infinity),
      fixed: Number(/^([\d.]+) mm/.exec(text)?.[1] ?? 0),
      share: Number(/([\d.]+) %/.exec(text)?.[1] ?? 0) / 100,
    }));

  it('are those that are told, with their sources', () => {
    const rows = told.rows.map(([name, amount, source]) => [
      codesIn(name!)[0]!,
      amount === 'nothing' ? undefined : { bands: bandsIn(amount!), source },
    ]);
    expect(rows).toHaveLength(10);
    expect(Object.fromEntries(rows)).toEqual(TOLERANCES);
  });

  it('hold for what a job does not say', () => {
    const { layers, package: held, pictures } = open({ pictures: [{ size: '8 x 10 in' }] });
    // 1/16 in less and more 4 points of 0.001 in (S. Saitzyk, Art Hardware, 1987).
    expect(layers[0]!.thinnest / 25.4).toBeCloseTo(0.0585, 12);
    expect(layers[0]!.thickest / 25.4).toBeCloseTo(0.0665, 12);
    expect(held.glazing?.thickness).toEqual({ nominal: 2.5, least: 2.3, greatest: 2.7, varies: 'as usual' });
    expect(pictures[0]).toMatchObject({ thickness: 0.25, thinnest: 0.25, thickest: 0.25, varies: 'unknown' });
    const glazing = { thickness: '2 mm', thickest: '2.1 mm' };
    expect(open({ pictures: [{ size: '8x10' }], package: { glazing } }).package.glazing?.thickness).toEqual({
      nominal: 2,
      least: 1.8,
      greatest: 2.1,
      varies: 'as given',
    });
  });

  it.each(Object.keys(TOLERANCES) as Material[])('%s: the thickest within a room is the thickest', (material) => {
    for (let room = 0.5; room < 12; room += 0.125) {
      const most = thickestWithin(material, room);
      if (most <= 0) continue;
      expect(most + toleranceOf(material, most)).toBeLessThanOrEqual(room + 1e-9);
      const more = most + 1e-6;
      expect(more + toleranceOf(material, more)).toBeGreaterThan(room);
    }
  });
});

describe('what holds a package where the job does not say', () => {
  const fixing = (job: object) => open({ pictures: [{ size: '8x10' }], ...job }).package.fixing;
  const canvas = { pictures: [{ size: '8x10', kind: 'painting on canvas' }] };

  it('is as told under Fixing', () => {
    expect(fixing({})).toEqual({ kind: 'points', room: 3.175 });
    expect(fixing({ units: 'mm' })).toEqual({ kind: 'points', room: 3 });
    expect(fixing(canvas)).toEqual({ kind: 'offset clips', room: 0 });
    expect(fixing({ frame: { build: 'with back' } })).toEqual({ kind: 'turn buttons', room: 0 });
    expect(fixing({ frame: { build: 'with back', grooves: ['1/2'] } })).toEqual({ kind: 'groove', room: 0 });
    expect(fixing({ ...canvas, frame: { build: 'float' } })).toEqual({ kind: 'screws', room: 0 });
    expect(fixing({ package: { fixing: { kind: 'bent tabs' } } })).toEqual({ kind: 'bent tabs', room: 3.175 });
    expect(fixing({ package: { fixing: { kind: 'turn buttons', room: '2 mm' } } })).toEqual({
      kind: 'turn buttons',
      room: 2,
    });
  });

  it('and a canvas or a panel is as thick as told under Picture', () => {
    const thick = (kind: string, units: string) => open({ units, pictures: [{ size: '8x10 in', kind }] }).pictures[0];
    expect(thick('painting on canvas', 'in')).toMatchObject({ thickness: 19.05, thicknessSaid: false });
    expect(thick('painting on canvas', 'mm')).toMatchObject({ thickness: 19, thicknessSaid: false });
    expect(thick('painting on panel', 'in')).toMatchObject({ thickness: 3.175 });
    expect(thick('painting on panel', 'cm')).toMatchObject({ thickness: 3 });
  });
});
