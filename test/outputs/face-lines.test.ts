/** Grooves and ruled lines on the template, in the lists and on the proof, read back by readers that are not ours. */
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { ExportOptions } from '../../src/bridge';
import { cutsOfLine } from '../../src/core/cutting/line-cuts';
import type { Point } from '../../src/core/geometry/box';
import { pointOn } from '../../src/core/geometry/edge';
import { areaOf, mirrorOutline, type Outline } from '../../src/core/geometry/outline';
import { makeCutList, makeProof, makeTemplate } from '../../src/outputs';
import { contextOf } from './contexts';
import { isCut } from './put-together';
import { readPdf, type ReadPage } from './read-pdf';

const JOB = {
  title: 'Ferns',
  frame: { size: '24 x 16 in' },
  mat: {
    layers: [{ board: 'Slate', thickness: '1/16 in' }, { board: 'Cream' }],
    lines: [
      { kind: 'groove', distance: '1/2 in' },
      { kind: 'ruled', distance: '3/4 in', width: '0.7 mm', colour: '#203040' },
    ],
  },
  windows: {
    kind: 'row',
    gap: '3 in',
    items: [
      { kind: 'window', size: '7 x 9 in' },
      { kind: 'window', size: '6 x 8 in', shape: 'oval' },
    ],
  },
};

async function pagesOf(options: Partial<ExportOptions>, job: object = JOB): Promise<readonly ReadPage[]> {
  const made = await makeTemplate(contextOf(job, { paper: 'blank', ...options }));
  if (!made.ok) throw new Error(made.problems[0]?.message);
  return readPdf(made.value).pages;
}

/** The page of the top layer at full scale. */
function layerPage(pages: readonly ReadPage[]): ReadPage {
  const page = pages.find(({ width }) => Math.abs(width - 24 * 25.4) < 0.01);
  if (!page) throw new Error('no page of the size of the blank');
  return page;
}

interface Drawn {
  readonly width: number;
  readonly dashed: boolean;
  readonly from: Point;
  readonly to: Point;
}

/** Everything stroked with one pen, curves as chords. */
function withPen(page: ReadPage, width: number, dashed: boolean): Drawn[] {
  const pen = (one: { width: number; dashed: boolean }) => Math.abs(one.width - width) < 0.001 && one.dashed === dashed;
  const chords = page.beziers.filter(pen).flatMap(({ points: [a, b, c, d] }): Drawn[] => {
    const at = (t: number): Point => {
      const w = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3] as const;
      return {
        x: w[0] * a.x + w[1] * b.x + w[2] * c.x + w[3] * d.x,
        y: w[0] * a.y + w[1] * b.y + w[2] * c.y + w[3] * d.y,
      };
    };
    return Array.from({ length: 40 }, (_, index) => ({
      width,
      dashed,
      from: at(index / 40),
      to: at((index + 1) / 40),
    }));
  });
  return [...page.strokes.filter(pen), ...chords];
}

function off(outline: Outline, drawn: readonly Drawn[]): number {
  const points = outline.flatMap((edge) => Array.from({ length: 25 }, (_, index) => pointOn(edge, index / 24)));
  return Math.max(...points.map((point) => Math.min(...drawn.map((stroke) => away(point, stroke)))));
}

function away(point: Point, { from, to }: Drawn): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const part = square === 0 ? 0 : ((point.x - from.x) * dx + (point.y - from.y) * dy) / square;
  const along = Math.min(1, Math.max(0, part));
  return Math.hypot(from.x + along * dx - point.x, from.y + along * dy - point.y);
}

const texts = (page: ReadPage) => page.words.map(({ text }) => text).join('\n');

describe('the template', () => {
  it('in front view draws both edges of a groove and the path of a pen, within 0.01 mm', async () => {
    const page = layerPage(await pagesOf({ view: 'front' }));
    const { lines } = contextOf(JOB, { view: 'front' }).plan.layers[0]!;
    for (const { kind, inner, middle, outer } of lines) {
      const outlines = kind === 'groove' ? [inner, outer] : [middle];
      const drawn = kind === 'groove' ? withPen(page, 0.2, false) : withPen(page, 0.3, true);
      for (const outline of outlines) expect(off(outline, drawn)).toBeLessThan(0.01);
    }
    // Fractions have a slash of their own.
    expect(texts(page)).toMatch(/A groove · 1⁄16 in wide, 1⁄32 in deep/);
    expect(texts(page)).toMatch(/3⁄4 in from the edge of B on the face/);
    expect(texts(page)).toMatch(/pen of 0\.7 mm/);
  });

  it('in back view shows them dotted, turned over, and says that they are on the face', async () => {
    const pages = await pagesOf({ view: 'back' });
    const page = layerPage(pages);
    const { lines, blank } = contextOf(JOB).plan.layers[0]!;
    const dots = withPen(page, 0.2, true);
    for (const { middle } of lines) expect(off(mirrorOutline(middle, blank.width), dots)).toBeLessThan(0.01);
    expect(withPen(page, 0.2, false)).toEqual([]);
    expect(texts(page)).toMatch(/A groove, on the FACE/);
    expect(texts(pages[0]!).replaceAll('\n', ' ')).toMatch(/made on the FACE before the windows are cut/);
  });

  it('draws the same cuts as without them, whatever pens came before', async () => {
    const bare = { ...JOB, mat: { layers: JOB.mat.layers } };
    for (const view of ['front', 'back'] as const) {
      const [lined, plain] = [layerPage(await pagesOf({ view })), layerPage(await pagesOf({ view }, bare))];
      expect(lined.strokes.filter(isCut)).toEqual(plain.strokes.filter(isCut));
      expect(lined.beziers.filter(isCut)).toEqual(plain.beziers.filter(isCut));
      expect(lined.beziers.filter(isCut).length).toBeGreaterThan(0);
    }
  });

  it('keeps the numbers of the borders, whose lines cross them', async () => {
    const bare = { ...JOB, mat: { layers: JOB.mat.layers } };
    const opening = (page: ReadPage) => page.words.filter(({ text, size }) => size > 13 && /^\d[\d ⁄]* in$/.test(text));
    const [lined, plain] = [
      layerPage(await pagesOf({ view: 'front' })),
      layerPage(await pagesOf({ view: 'front' }, bare)),
    ];
    expect(opening(lined).length).toBeGreaterThan(0);
    expect(opening(lined).length).toBe(opening(plain).length);
  });

  it('prints on tiles every part of a line on the face', async () => {
    const far = {
      ...JOB,
      windows: { kind: 'window', size: '5 x 5 in', lines: [{ kind: 'groove', distance: '4 in' }] },
    };
    const pages = await pagesOf({ view: 'front', paper: 'a4' }, far);
    const tiles = pages.filter(
      (page) =>
        page.words.some(({ text }) => /^Layer 1 of 2/.test(text)) &&
        page.words.some(({ text }) => /row \d of/.test(text)),
    );
    const { inner, outer } = contextOf(far, { view: 'front' }).plan.layers[0]!.lines[0]!;
    const length = (outline: Outline) =>
      outline.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);
    const drawn = tiles
      .flatMap((page) => withPen(page, 0.2, false))
      .reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);
    // Overlaps are drawn twice.
    expect(drawn).toBeGreaterThanOrEqual(length(inner) + length(outer) - 0.01);
  });

  it('lists them on a page of the front before the cuts, whatever the windows are cut from', async () => {
    const pages = await pagesOf({ view: 'back' });
    const at = pages.findIndex(
      (page) =>
        /On the face of layer 1, before its windows/.test(texts(page)) &&
        page.words.some(({ text }) => text === 'FRONT'),
    );
    const list = pages.findIndex((page) => /^Cutting list, layer 1$/m.test(texts(page)));
    expect(at).toBeGreaterThan(0);
    expect(at).toBeLessThan(list);
    // 24 in less windows and gap leave 4 in at either side; reveal, bevel and distance come off, less half the mouth.
    const { plan } = contextOf(JOB);
    const [first] = plan.layers[0]!.lineOrder.filter(({ line }) => plan.layers[0]!.lines[line]?.kind === 'groove');
    expect(first).toBeDefined();
    for (const wanted of [/A groove, inner left/, /B ruled line, curve/, /1⁄32 in/, /0\.7 mm/])
      expect(texts(pages[at]!)).toMatch(wanted);
  });
});

describe('the list as a file', () => {
  it.each(['back', 'front'] as const)(
    'has them first, in front view, when windows are cut from the %s',
    async (view) => {
      const context = contextOf(JOB, { view, units: 'mm' });
      const made = await makeCutList(context);
      if (!made.ok) throw new Error('no list');
      const { data, errors } = Papa.parse<Record<string, string>>(new TextDecoder().decode(made.value), {
        header: true,
        skipEmptyLines: true,
      });
      expect(errors).toEqual([]);
      const layer = context.plan.layers[0]!;
      const rows = data.filter(({ makes }) => makes !== 'window');
      expect(data.slice(0, rows.length)).toEqual(rows);
      expect(new Set(rows.map((row) => row['view']))).toEqual(new Set(['front']));
      const straight = layer.lineOrder.flatMap((step) => {
        const made = layer.lines[step.line]!;
        const cut = cutsOfLine(made)[step.cut]!;
        return cut.curve ? [] : [{ step, made, cut }];
      });
      const lines = rows.filter((row) => row['form'] === 'line');
      expect(lines).toHaveLength(straight.length);
      straight.forEach(({ step, made, cut }, index) => {
        const row = lines[index]!;
        expect(row['step']).toBe(String(step.number));
        expect(Number(row['x1'])).toBeCloseTo(cut.start.x, 5);
        expect(Number(row['y2'])).toBeCloseTo(cut.end.y, 5);
        expect(Number(row['guide setting'])).toBeCloseTo(cut.guideSetting ?? NaN, 5);
        expect(Number(row['line width'])).toBeCloseTo(made.width, 5);
        expect(row).toMatchObject(
          made.kind === 'groove'
            ? { makes: 'groove', depth: '0.79375', 'bevel angle (degrees)': '45', ink: '' }
            : { makes: 'ruled line', depth: '', 'bevel angle (degrees)': '', ink: '#203040' },
        );
      });
    },
  );
});

describe('the proof', () => {
  it('fills a groove with its two slopes and nothing else, and draws a ruled line in its ink', async () => {
    const context = contextOf(JOB);
    const made = await makeProof(context);
    if (!made.ok) throw new Error('not made');
    const svg = new TextDecoder().decode(made.value);
    const [line] = context.layout.windows[0]!.lines;
    const paths = [...svg.matchAll(/<path d="([^"]+)"[^>]*class="groove" data-window="A"/g)].map(([, data]) => data!);
    const area = paths.reduce((sum, data) => sum + Math.abs(polygonArea(data)), 0);
    expect(paths).toHaveLength(8);
    expect(area).toBeCloseTo(areaOf(line!.outer) - areaOf(line!.inner), 1);
    expect(svg).toMatch(/stroke="#203040" stroke-width="0.7"[^>]*class="ruled-line" data-window="B"/);
  });
});

/** Of straight path data, by the shoelace. */
function polygonArea(data: string): number {
  const points = [...data.matchAll(/[ML](\S+) ([^LMZ]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));
  return points.reduce((sum, { x, y }, index) => {
    const next = points[(index + 1) % points.length]!;
    return sum + (x * next.y - next.x * y) / 2;
  }, 0);
}
