/** Tables and drawings of a plan read back by libraries not ours: they are the plan. */
import Papa from 'papaparse';
import { SaxesParser, type SaxesAttributePlain } from 'saxes';
import { describe, expect, it } from 'vitest';
import type { Box } from '../../../src/core/geometry/box';
import { planBoard } from '../../../src/core/sheets/planned-board';
import { keepingOf, USUAL_KEEP } from '../../../src/core/sheets/remnants';
import { windowsOnSheet } from '../../../src/core/sheets/windows-on-sheet';
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
    const steps = sheets.flatMap(({ sheet, board, number }) => sheet.steps.map((step, index) => ({ ...step, board, sheet: number, number: index + 1, isFallout: sheet.stock.kind === 'fallout' }))); // prettier-ignore
    expect(rows).toHaveLength(steps.length);
    for (const [index, step] of steps.entries()) {
      const row = rows[index]!;
      expect([row['board'], row['sheet'], row['step'], row['kind'], row['times'], row['stage']]).toEqual([step.board, ...[step.sheet, step.number].map(String), step.kind, String(step.times), String(step.stage)]); // prettier-ignore
      expect(row['way']).toBe(step.kind === 'cut' ? step.way : 'all round');
      expect(row['in hand']).toBe(step.of === '' ? (step.isFallout ? 'the fallout' : 'the sheet') : step.of);
      expect(row['gives']).toBe(step.gives.filter((name) => name !== '').join(' '));
      expect([row['leaves'], row['guide stays']]).toEqual([step.leaves ?? '', step.guideStays ? 'yes' : 'no']);
      // What fell out is larger by its bevels until they are off.
      const bevel = step.kind === 'square' ? step.setting : 0;
      const [left, bottom] = [step.part.left - bevel, step.part.bottom - bevel];
      const [right, top] = [step.part.right + bevel, step.part.top + bevel];
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

describe.each(CASES)('the signs in the drawings of %s', (_, one) => {
  const { plans } = one;
  const rule = plans.keep ?? USUAL_KEEP;
  const sheets = plans.boards.flatMap(({ plan }) => plan.sheets);

  it('are those of the plan on paper: hatched waste, faint windows with letters, the first cuts thickest, trimming dashed', async () => {
    const texts = [...(await textsOf(one, 'sheet-drawings')).values()];
    for (const [index, sheet] of sheets.entries()) {
      const { marks } = readDrawing(texts[index]!);
      const { height } = sheet.stock;
      sheet.left.forEach((box, at) => {
        const own = marks.filter(({ group }) => group === `left-${at + 1}`);
        const isWaste = keepingOf(box, rule) === 'waste';
        const [rect] = own.filter(({ name }) => name === 'rect');
        expect(rect!.given['fill'] === 'none').toBe(isWaste);
        const hatching = own.filter(({ name }) => name === 'path');
        expect(hatching).toHaveLength(isWaste ? 1 : 0);
        const ends = hatching.flatMap(({ given }) => pointsOf(given['d']!));
        for (const { x, y } of ends) expect(x >= box.left - 1e-5 && x <= box.right + 1e-5 && height - y >= box.bottom - 1e-5 && height - y <= box.top + 1e-5).toBe(true); // prettier-ignore
      });
      for (const placed of sheet.pieces) {
        const letters = marks.filter(({ group, name, given }) => group === `piece-${placed.number}` && name === 'text' && given['fill'] === '#707070'); // prettier-ignore
        expect(letters.map(({ words }) => words)).toEqual(windowsOnSheet(placed).map(({ name }) => name));
        windowsOnSheet(placed).forEach(({ box }, at) => {
          const [x, y] = [Number(letters[at]!.given['x']), height - Number(letters[at]!.given['y'])];
          expect(x > box.left && x < box.right && y > box.bottom && y < box.top).toBe(true);
        });
      }
      const pens = sheet.steps.map(({ kind, stage }, at) => {
        const { given } = marks.find(({ name, given }) => name === 'g' && given['id'] === `step-${at + 1}`)!;
        expect(given['stroke-dasharray'] === undefined).toBe(kind === 'cut');
        return { width: Number(given['stroke-width']), thick: kind === 'cut' && stage === 1 };
      });
      const thinner = pens.filter(({ thick }) => !thick).map(({ width }) => width);
      for (const { width } of pens.filter(({ thick }) => thick)) expect(width).toBeGreaterThan(Math.max(0, ...thinner));
    }
  });

  it('are circles on the cuts with the numbers of their steps, clear of every word and of one another', async () => {
    const texts = [...(await textsOf(one, 'sheet-drawings')).values()];
    for (const [index, sheet] of sheets.entries()) {
      const { marks } = readDrawing(texts[index]!);
      const circles = marks.filter(({ name }) => name === 'circle').map(({ group, given }) => ({ group, x: Number(given['cx']), y: Number(given['cy']), r: Number(given['r']) })); // prettier-ignore
      const words = marks.filter(({ group, name, words }) => name === 'text' && !/^step-/.test(group) && words !== '').map(boxOfText); // prettier-ignore
      sheet.steps.forEach((step, at) => {
        const own = circles.filter(({ group }) => group === `step-${at + 1}`);
        expect(own.length).toBeGreaterThan(0);
        const lines = marks.filter(({ group, name }) => name === 'path' && group === `step-${at + 1}`).map(({ given }) => pointsOf(given['d']!)); // prettier-ignore
        for (const { x, y, r } of own) {
          const off = lines.map(([from, to]) => (Math.abs(from!.x - to!.x) < 1e-5 ? Math.abs(x - from!.x) : Math.abs(y - from!.y)));
          // What comes off a fallout is cut along its very edge, and the circle stands beside that.
          expect(Math.min(...off)).toBeLessThan((step.kind === 'square' ? r : 0) + 1e-5);
        }
      }); // prettier-ignore
      for (const [at, { x, y, r }] of circles.entries()) {
        for (const other of circles.slice(at + 1)) expect(Math.hypot(x - other.x, y - other.y)).toBeGreaterThan(r + other.r - 1e-5); // prettier-ignore
        for (const box of words) {
          const [dx, dy] = [Math.max(box.left - x, x - box.right, 0), Math.max(box.bottom - y, y - box.top, 0)];
          expect(Math.hypot(dx, dy)).toBeGreaterThan(r - 1e-5);
        }
      }
    }
  });
});

it('reads upright wherever there is room, whether a piece lies turned or not', async () => {
  const id = 'Maidenhair fern in an oval, for the reading room';
  const stock = { id: 'sheet 1', kind: 'sheet', width: 500, height: 1000, cost: 1 } as const;
  const pieces = [true, false].map((mayTurn) => ({ id, width: mayTurn ? 480 : 350, height: mayTurn ? 380 : 470, count: 1, mayTurn })); // prettier-ignore
  const board = planBoard({ board: 'Moss', isPriced: false, ask: { pieces, stock: [stock], kerf: 0, trim: 0, aim: 'cost', seed: 1 } }, { goOn: () => false })!; // prettier-ignore
  const [sheet] = board.plan.sheets;
  for (const turned of [false, true]) {
    const plan = {
      ...board.plan,
      sheets: [{ ...sheet!, pieces: sheet!.pieces.map((piece) => ({ ...piece, turned })) }],
    };
    const one: Case = { plans: { title: 'Ferns', boards: [{ ...board, plan }], unplanned: [] }, showing: { unit: 'mm', inchStep: 16, metricStep: 0.5 } }; // prettier-ignore
    const [text] = [...(await textsOf(one, 'sheet-drawings')).values()];
    const own = readDrawing(text!).marks.filter(({ group, name }) => group.startsWith('piece-') && name === 'text');
    expect(own.map(({ words }) => words).filter((words) => words === id)).toHaveLength(2);
    expect(own.filter(({ given }) => given['transform'] !== undefined)).toEqual([]);
  }
});

function pointsOf(d: string): { readonly x: number; readonly y: number }[] {
  return [...d.matchAll(/([-\d.]+) ([-\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));
}

/** About as wide as its letters are in a plain type. */
function boxOfText({ given, words }: Mark): Box {
  const [x, y, size] = [Number(given['x']), Number(given['y']), Number(given['font-size'])];
  const half = (0.5 * size * [...words].length) / 2;
  const flat = { left: x - half, right: x + half, bottom: y - 0.7 * size, top: y };
  const turn = /rotate\(-90 ([\d.]+) ([\d.]+)\)/.exec(given['transform'] ?? '');
  if (!turn) return flat;
  const [cx, cy] = [Number(turn[1]), Number(turn[2])];
  // Anticlockwise by a quarter, y downward: (dx, dy) goes to (dy, -dx).
  return { left: cx + flat.bottom - cy, right: cx + flat.top - cy, bottom: cy - (flat.right - cx), top: cy - (flat.left - cx) }; // prettier-ignore
}

function expectBox(found: Box, wanted: Box): void {
  for (const side of ['left', 'right', 'bottom', 'top'] as const) expect(Math.abs(found[side] - wanted[side])).toBeLessThanOrEqual(1.5e-6); // prettier-ignore
}

/** An element as it is drawn, with what it has from the groups round it. */
interface Mark {
  readonly group: string;
  readonly name: string;
  readonly given: Readonly<Record<string, string>>;
  words: string;
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
  const marks: Mark[] = [];
  const inherited: Record<string, string>[] = [];
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
    const { transform, 'font-size': size0 } = inherited.at(-1) ?? {};
    const own = { ...(transform === undefined ? {} : { transform }), ...(size0 === undefined ? {} : { 'font-size': size0 }), ...given }; // prettier-ignore
    marks.push({ group: id, name, given: own, words: '' });
    if (name === 'g') {
      open.push(given['id'] ?? id);
      inherited.push(own);
    }
    const [x, y, width, height] = ['x', 'y', 'width', 'height'].map((key) => Number(given[key]));
    if (name === 'rect') groupOf(id).rects.push({ left: x!, right: x! + width!, bottom: y!, top: y! + height! });
    if (name === 'path') groupOf(id).paths.push(given['d']!);
  });
  parser.on('text', (words) => {
    const id = open.at(-1) ?? '';
    if (current === 'title' && !titles.has(id)) titles.set(id, words);
    if (current === 'text') {
      groupOf(id).texts.push(words);
      marks.at(-1)!.words = words;
    }
  });
  parser.on('closetag', ({ name }) => {
    current = '';
    if (name === 'g') {
      open.pop();
      inherited.pop();
    }
  });
  parser.write(text).close();
  return { size, viewBox, groups, titles, marks };
}
