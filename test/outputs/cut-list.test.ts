/** The bevel-cut coordinate list read back by an independent CSV reader and held against the plan. */
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { ExportOptions } from '../../src/bridge';
import { makeCutList, type OutputContext } from '../../src/outputs';
import { csvText } from '../../src/core/tables/csv-text';
import { contextOf } from './contexts';
import { ASIDE, CHART, FERN, LINOCUTS } from './jobs';

const MM_PER_UNIT = { in: 25.4, mm: 1, cm: 10 };

async function textOf(context: OutputContext): Promise<string> {
  const made = await makeCutList(context);
  if (!made.ok) throw new Error('no list');
  return new TextDecoder('utf-8', { fatal: true }).decode(made.value);
}

async function rowsOf(context: OutputContext): Promise<Record<string, string>[]> {
  const parsed = Papa.parse<Record<string, string>>(await textOf(context), { header: true, skipEmptyLines: true });
  expect(parsed.errors).toEqual([]);
  return parsed.data;
}

const CASES: readonly (readonly [string, object, Partial<ExportOptions>])[] = [
  ['one window, inches, back', FERN, {}],
  ['two layers, millimetres, front', CHART, { view: 'front', units: 'mm' }],
  ['nine windows, centimetres', LINOCUTS, { units: 'cm' }],
  ['a window to one side, back', ASIDE, { units: 'mm' }],
];

describe('the list', () => {
  for (const [name, job, options] of CASES) {
    it(`${name}: has every cut of the plan once, in cutting order, within 0.00001 mm`, async () => {
      const context = contextOf(job, options);
      const { view, units } = context.options;
      const rows = await rowsOf(context);
      const number = (row: Record<string, string>, field: string) => Number(row[field]) * MM_PER_UNIT[units];
      let at = 0;
      for (const layer of context.plan.layers) {
        for (const step of layer.order[view]) {
          const window = layer.windows[step.window];
          const line = window?.cuts[view][step.cut];
          const row = rows[at++];
          if (!window || !line || !row) throw new Error('a cut is missing');
          expect(row).toMatchObject({
            view,
            layer: String(layer.number),
            step: String(step.number),
            window: window.name,
            cut: line.side,
            unit: units,
            'bevel side': line.bevelSide,
            'bevel angle (degrees)': String(layer.bevel.angleDegrees),
            'move guide': step.moveGuide ? 'yes' : 'no',
            'falls out': step.dropsOut ? 'yes' : 'no',
          });
          expect(number(row, 'x1')).toBeCloseTo(line.start.x, 5);
          expect(number(row, 'y1')).toBeCloseTo(line.start.y, 5);
          expect(number(row, 'x2')).toBeCloseTo(line.end.x, 5);
          expect(number(row, 'y2')).toBeCloseTo(line.end.y, 5);
          expect(number(row, 'guide setting')).toBeCloseTo(line.guideSetting ?? NaN, 5);
          expect(number(row, 'overcut at start')).toBeCloseTo(line.overcutStart, 5);
          expect(number(row, 'overcut at end')).toBeCloseTo(line.overcutEnd, 5);
          expect(row).toMatchObject({ piece: '1', form: 'line', 'centre x': '' });
        }
      }
      expect(rows).toHaveLength(at);
    });
  }

  it('picture 8 x 10 in 11 x 14, overlap 1/8: numbers by hand (common practice, no source)', async () => {
    const rows = await rowsOf(contextOf(FERN));
    const left = rows.find(({ cut }) => cut === 'left');
    // Window 7 3/4 x 9 3/4, so borders 1 5/8 at the sides and 2 1/8 above and below; seen from the back, waste on the right.
    expect(left).toMatchObject({ x1: '1.625', y1: '2.125', x2: '1.625', y2: '11.875', 'guide setting': '1.625' });
    expect(left).toMatchObject({ 'x1 shown': '1 5/8 in', 'y2 shown': '11 7/8 in', 'guide setting shown': '1 5/8 in' });
  });

  it('is RFC 4180: CRLF ends every row, every row has as many fields, shown lengths are quoted', async () => {
    const text = await textOf(contextOf({ ...FERN, title: 'Ferns, "maidenhair"\nand others' }));
    expect(text.endsWith('\r\n')).toBe(true);
    expect(text.includes('"Ferns, ""maidenhair""')).toBe(true);
    expect(text).toMatch(/,1\.625,"1 5\/8 in",/);
    const { data } = Papa.parse<string[]>(text, { newline: '\r\n' });
    const filled = data.filter((row) => row.length > 1);
    expect(new Set(filled.map((row) => row.length)).size).toBe(1);
    expect(filled).toHaveLength(5);
  });

  it('lets no text be taken for a formula by a spreadsheet', async () => {
    for (const sign of ['=', '+', '-', '@', '\t', '\r']) {
      const title = `${sign}SUM(A1:A9)`;
      const context = contextOf(FERN);
      const [row] = await rowsOf({ ...context, job: { ...context.job, title } });
      expect(row?.['job']).toBe(`'${title}`);
    }
  });

  it('marks a length that its step rounds', async () => {
    const [row] = await rowsOf(contextOf(CHART, { units: 'in' }));
    expect(row?.['x1 shown']).toMatch(/^about \d/);
  });
});

describe('the writer', () => {
  it('gives back any text through an independent reader', () => {
    const rows = [
      ['plain', 'with, comma', 'with "quotes"', 'two\r\nlines', ' spaced ', ''],
      ['é½', "'", ';', 'x\ny', '"', ','],
    ];
    const { data } = Papa.parse<string[]>(csvText(rows), { newline: '\r\n' });
    expect(data.slice(0, 2)).toEqual(rows);
  });
});
