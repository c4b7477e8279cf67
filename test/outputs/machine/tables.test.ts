/** SVG, CSV and JSON beyond their geometry: groups and titles, texts that are safe, files and their names. */
import { describe, expect, it } from 'vitest';
import { exportFiles } from '../../../src/outputs/index';
import { fonts } from '../contexts';
import { defaults, jobText } from '../jobs';
import { fileOf, GRID, jobOf, machineFiles } from './fixtures';
import { readSvg } from './read-svg';
import { readCsv, readJson } from './read-tables';

const MACHINE = ['dxf', 'svg', 'hpgl', 'gcode', 'csv', 'json'] as const;

describe('files', () => {
  it('hold all layers apart, or one for each board where a machine cuts one at a time', async () => {
    const made = await exportFiles(jobText(GRID), 'mat', { ...defaults, only: [...MACHINE] }, { fonts });
    if (!made.ok) throw new Error('not made');
    expect(made.value.map(({ kind, name }) => [kind, name])).toEqual([
      ['dxf', 'mat-cuts.dxf'],
      ['svg', 'mat-cuts.svg'],
      ['hpgl', 'mat-layer-1.plt'],
      ['hpgl', 'mat-layer-2.plt'],
      ['gcode', 'mat-layer-1.nc'],
      ['gcode', 'mat-layer-2.nc'],
      ['csv', 'mat-cuts.csv'],
      ['json', 'mat-cuts.json'],
    ]);
  });

  it('are the same bytes for the same job', async () => {
    const [one, two] = await Promise.all([machineFiles(GRID, MACHINE), machineFiles(GRID, MACHINE)]);
    expect([...one]).toEqual([...two]);
  });
});

describe('SVG', () => {
  it('is as large as the board, with a group for each layer and window', async () => {
    const job = { ...GRID, title: 'Linocuts <6> & "more"' };
    const plain = readSvg(fileOf(await machineFiles(job, ['svg']), 'mat-cuts.svg'));
    expect(plain.size).toEqual(['508mm', '508mm']);
    expect(plain.viewBox).toEqual([0, -508, 508, 508]);
    expect([...plain.groups.keys()].sort()).toEqual(
      [1, 2].flatMap((layer) => [1, 2, 3, 4, 5, 6].map((window) => `layer-${layer}-window-${window}`)),
    );
    expect([...plain.groups.values()].map((strokes) => strokes.length)).toEqual(Array.from({ length: 12 }, () => 4));
    expect(plain.titles[0]).toBe('Linocuts <6> & "more", back view');
    const upper = readSvg(
      fileOf(await machineFiles(job, ['svg'], { machine: { corner: 'upper-right' } }), 'mat-cuts.svg'),
    );
    expect(upper.viewBox).toEqual([-508, 0, 508, 508]);
  });
});

describe('CSV', () => {
  it('gives spreadsheets no formula to run', async () => {
    const job = {
      ...jobOf('arch'),
      title: '=HYPERLINK("x")',
      windows: { kind: 'window', size: '8 x 10 in', shape: 'arch', title: '+1 "ferns", @home' },
      mat: { layers: [{ board: '-board' }] },
    };
    const text = fileOf(await machineFiles(job, ['csv']), 'mat-cuts.csv');
    const { rows } = readCsv(text);
    // Left side, arc, right side in one stroke, and the bottom.
    expect(rows.slice(0, 4).map((row) => `${row['path']}.${row['piece']} ${row['form']}`)).toEqual([
      '1.1 line',
      '1.2 arc of a circle',
      '1.3 line',
      '2.1 line',
    ]);
    for (const row of rows) {
      for (const [name, cell] of Object.entries(row)) {
        if (/^[=+\-@]/.test(cell)) expect(Number(cell), `${name}: ${cell}`).not.toBeNaN();
      }
    }
    expect(rows[0]).toMatchObject({ job: `'=HYPERLINK("x")`, title: `'+1 "ferns", @home`, board: `'-board` });
    expect(text.split('\r\n').at(-1)).toBe('');
  });
});

describe('JSON', () => {
  it('keeps full precision, millimetres, and no exponent', async () => {
    const text = fileOf(await machineFiles(jobOf('oval'), ['json']), 'mat-cuts.json');
    expect(text).not.toMatch(/\d[eE][-+]?\d/);
    const { table } = readJson(text);
    expect(table.unit).toBe('mm');
    // A third of an inch is never rounded to what is shown.
    const thirds = {
      ...jobOf('rectangle'),
      windows: { kind: 'window', size: '8 1/3 x 10 in' },
      cutting: { overcut: '0 in' },
    };
    const lengths = readJson(fileOf(await machineFiles(thirds, ['json']), 'mat-cuts.json')).table.layers[1]!.paths.map(
      ({ length }) => length,
    );
    expect(
      Math.max(...lengths.map((length) => Math.min(Math.abs(length - 254), Math.abs(length - (25 * 25.4) / 3)))),
    ).toBeLessThan(1e-9);
  });
});
