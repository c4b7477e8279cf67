/** Tables and drawings of a plan read back by libraries not ours: they are the plan. */
import Papa from 'papaparse';
import { SaxesParser, type SaxesAttributePlain } from 'saxes';
import { describe, expect, it } from 'vitest';
import type { Box } from '../../../src/core/geometry/box';
import { readLength, showSetting } from '../../../src/core/units';
import { makeSheetPapers, sheetPaperNames } from '../../../src/outputs/sheets/sheet-papers';
import { fonts } from '../contexts';
import { ask, CASES, type Case } from './plans';

async function textsOf(one: Case, kind: 'sheet-cuts' | 'sheet-drawings'): Promise<ReadonlyMap<string, string>> {
  const { files } = await makeSheetPapers(one.plans, 'show', ask(one, [kind]), { fonts });
  expect(files.map(({ name }) => name)).toEqual(sheetPaperNames(one.plans, 'show', [kind]));
  return new Map(files.map(({ name, bytes }) => [name, new TextDecoder().decode(bytes)]));
}

type Row = Readonly<Record<string, string>>;

function rowsOf(text: string): readonly Row[] {
  const { data, errors } = Papa.parse<Row>(text, { header: true, skipEmptyLines: true });
  expect(errors).toEqual([]);
  return data;
}

const MM = { in: 25.4, cm: 10, mm: 1 } as const;

describe.each(CASES)('%s', (_, one) => {
  const { plans, showing } = one;
  const sheets = plans.boards.flatMap(({ board, plan }) => plan.sheets.map((sheet, index) => ({ sheet, board, number: index + 1 }))); // prettier-ignore
  const unit = MM[showing.unit];

  it('has each piece where it lies in the list of pieces', async () => {
    const rows = rowsOf((await textsOf(one, 'sheet-cuts')).get('show-sheet-pieces.csv')!);
    const pieces = sheets.flatMap(({ sheet, board, number }) => sheet.pieces.map((piece) => ({ ...piece, board, sheet: number }))); // prettier-ignore
    expect(rows).toHaveLength(pieces.length);
    for (const [index, { piece, box, turned, number, board, sheet }] of pieces.entries()) {
      const row = rows[index]!;
      expect([row['board'], row['sheet'], row['number'], row['unit'], row['turned']]).toEqual([board, String(sheet), String(number), showing.unit, turned ? 'yes' : 'no']); // prettier-ignore
      expect([row['piece'], row['job'], row['job number'], row['layer']]).toEqual([piece.from?.name ?? piece.id, piece.from?.title ?? '', piece.from ? String(piece.from.job + 1) : '', String(piece.from?.layer ?? '')]); // prettier-ignore
      const lengths = { x: box.left, y: box.bottom, width: box.right - box.left, height: box.top - box.bottom };
      for (const [name, mm] of Object.entries(lengths)) {
        expect(Math.abs(Number(row[name]) * unit - mm)).toBeLessThan(1e-5);
        const read = readLength(row[`${name} shown`]!.replace('about ', ''), showing.unit);
        if (!read.ok) throw new Error(read.message);
        expect(Math.abs(read.mm - mm)).toBeLessThanOrEqual(unit * (showing.unit === 'in' ? 1 / 32 : 0.25) + 1e-6);
      }
    }
  });

  it('has each step in the list of cuts', async () => {
    const rows = rowsOf((await textsOf(one, 'sheet-cuts')).get('show-sheet-cuts.csv')!);
    const steps = sheets.flatMap(({ sheet, board, number }) => sheet.steps.map((step, index) => ({ ...step, board, sheet: number, number: index + 1 }))); // prettier-ignore
    expect(rows).toHaveLength(steps.length);
    for (const [index, step] of steps.entries()) {
      const row = rows[index]!;
      expect([row['board'], row['sheet'], row['step'], row['kind'], row['times'], row['stage']]).toEqual([step.board, ...[step.sheet, step.number].map(String), step.kind, String(step.times), String(step.stage)]); // prettier-ignore
      expect(row['way']).toBe(step.kind === 'cut' ? step.way : 'all round');
      expect(row['in hand']).toBe(step.of === '' ? 'the sheet' : step.of);
      expect(row['gives']).toBe(step.gives.filter((name) => name !== '').join(' '));
      expect([row['leaves'], row['guide stays']]).toEqual([step.leaves ?? '', step.guideStays ? 'yes' : 'no']);
      const { left, bottom, right, top } = step.part;
      const lengths = { setting: step.setting, 'part x': left, 'part y': bottom, 'part width': right - left, 'part height': top - bottom }; // prettier-ignore
      for (const [name, mm] of Object.entries(lengths)) expect(Math.abs(Number(row[name]) * unit - mm)).toBeLessThan(1e-5); // prettier-ignore
      expect(row['setting shown']).toBe(showSetting(step.setting, showing).withUnit);
    }
  });

  it('has a drawing of each sheet at its true size, that is the plan', async () => {
    const drawings = [...(await textsOf(one, 'sheet-drawings')).values()].map(readDrawing);
    expect(drawings).toHaveLength(sheets.length);
    for (const [index, { sheet, board, number }] of sheets.entries()) {
      const { size, viewBox, groups, titles } = drawings[index]!;
      const { width, height } = sheet.stock;
      expect(size.every((text) => text.endsWith('mm'))).toBe(true);
      size.forEach((text, at) => expect(Number.parseFloat(text)).toBeCloseTo([width, height][at]!, 5));
      expect(viewBox.slice(0, 2)).toEqual([0, 0]);
      [width, height].forEach((mm, at) => expect(viewBox[2 + at]).toBeCloseTo(mm, 5));
      expect(titles.get('')).toContain(`${board}, sheet ${number}: `);
      for (const { box, number: piece, piece: wanted } of sheet.pieces) {
        const { rects, texts } = groups.get(`piece-${piece}`)!;
        // y grows downward in an SVG.
        expectBox(rects[0]!, { ...box, bottom: height - box.top, top: height - box.bottom });
        expect(texts[0]).toBe(String(piece));
        expect(titles.get(`piece-${piece}`)).toContain(wanted.id);
      }
      sheet.left.forEach((box, at) => expectBox(groups.get(`left-${at + 1}`)!.rects[0]!, { ...box, bottom: height - box.top, top: height - box.bottom })); // prettier-ignore
      const cuts = [...groups.keys()].filter((id) => id.startsWith('step-'));
      expect(cuts).toEqual(sheet.steps.map((_, at) => `step-${at + 1}`));
      sheet.steps.forEach(({ kind, times }, at) => {
        const { paths, texts } = groups.get(`step-${at + 1}`)!;
        expect(paths).toHaveLength(kind === 'cut' ? times : 4);
        expect(new Set(texts)).toEqual(new Set([String(at + 1)]));
      });
      for (const layer of ['sheet', 'left', 'pieces', 'cuts']) expect(titles.has(layer)).toBe(true);
    }
  });
});

function expectBox(found: Box, wanted: Box): void {
  for (const side of ['left', 'right', 'bottom', 'top'] as const) expect(Math.abs(found[side] - wanted[side])).toBeLessThanOrEqual(1.5e-6); // prettier-ignore
}

interface Group {
  readonly rects: Box[];
  readonly paths: string[];
  readonly texts: string[];
}

/** By the id of the group that each stands in, or of the nearest one round it that has an id. */
function readDrawing(text: string) {
  const groups = new Map<string, Group>();
  const titles = new Map<string, string>();
  const open: string[] = [];
  let size: readonly string[] = [];
  let viewBox: readonly number[] = [];
  let current = '';
  const groupOf = (id: string) => {
    const there = groups.get(id) ?? { rects: [], paths: [], texts: [] };
    groups.set(id, there);
    return there;
  };
  const ids = new Set<string>();
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const given = attributes as Record<string, SaxesAttributePlain['value']>;
    if (given['id'] !== undefined) {
      expect(ids.has(given['id'])).toBe(false);
      ids.add(given['id']);
    }
    current = name;
    const id = open.at(-1) ?? '';
    if (name === 'svg') {
      size = [given['width']!, given['height']!];
      viewBox = given['viewBox']!.split(' ').map(Number);
    }
    if (name === 'g') open.push(given['id'] ?? id);
    const [x, y, width, height] = ['x', 'y', 'width', 'height'].map((key) => Number(given[key]));
    if (name === 'rect') groupOf(id).rects.push({ left: x!, right: x! + width!, bottom: y!, top: y! + height! });
    if (name === 'path') groupOf(id).paths.push(given['d']!);
  });
  parser.on('text', (words) => {
    const id = open.at(-1) ?? '';
    if (current === 'title' && !titles.has(id)) titles.set(id, words);
    if (current === 'text') groupOf(id).texts.push(words);
  });
  parser.on('closetag', ({ name }) => {
    current = '';
    if (name === 'g') open.pop();
  });
  parser.write(text).close();
  return { size, viewBox, groups, titles };
}
