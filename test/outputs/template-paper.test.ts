/** Every page of a template as paper: its size, what it asks of viewer and printer, its words, bars and margins. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { ExportOptions, PaperName } from '../../src/bridge';
import { makeTemplate } from '../../src/outputs';
import { contextOf } from './contexts';
import { CHART, FERN, LINOCUTS, SQUARE } from './jobs';
import { readPdf, type ReadPage, type Stroke, type Words } from './read-pdf';

async function bytesOf(job: object, options: Partial<ExportOptions>): Promise<Uint8Array> {
  const made = await makeTemplate(contextOf(job, options));
  if (!made.ok) throw new Error(made.problems[0]?.message);
  return made.value;
}

async function pagesOf(job: object, options: Partial<ExportOptions>): Promise<readonly ReadPage[]> {
  return readPdf(await bytesOf(job, options)).pages;
}

/** Points, upright: ISO 216 gives A4 as 210 x 297 mm and A3 as 297 x 420 mm; the others are whole inches at 72 points. */
const SIZES: readonly (readonly [PaperName, number, number])[] = [
  ['letter', 612, 792],
  ['legal', 612, 1008],
  ['tabloid', 792, 1224],
  ['a4', 595.276, 841.89],
  ['a3', 841.89, 1190.551],
];

afterEach(() => {
  vi.useRealTimers();
});

describe('page boxes', () => {
  for (const [paper, width, height] of SIZES) {
    it(`${paper}: ${width} x ${height} points, either way round`, async () => {
      for (const { mediaBox } of await pagesOf(LINOCUTS, { paper })) {
        const [left, bottom, right = 0, top = 0] = mediaBox;
        expect([left, bottom]).toEqual([0, 0]);
        expect(Math.min(right, top)).toBeCloseTo(width, 3);
        expect(Math.max(right, top)).toBeCloseTo(height, 3);
      }
    });
  }

  it("the blank's own paper has exactly the blank's size", async () => {
    const boxes = (await pagesOf(CHART, { paper: 'blank', units: 'mm' })).map(({ mediaBox }) => mediaBox);
    const own = boxes.filter(([, , right = 0]) => Math.abs(right - (300 / 25.4) * 72) < 1e-4);
    expect(own).toHaveLength(2);
    for (const [, , , top = 0] of own) expect(top).toBeCloseTo((400 / 25.4) * 72, 3);
  });

  it('a blank longer than 14,400 units of 1/72 in (ISO 32000-1, Annex C) is a problem on its own paper, not on tiles', async () => {
    const long = {
      title: 'Long',
      frame: { size: '20 x 201 in' },
      free: [{ use: 'empty', size: '10 x 100 in', at: {} }],
    };
    const made = await makeTemplate(contextOf(long, { paper: 'blank' }));
    expect(made.ok).toBe(false);
    expect(made.problems[0]).toMatchObject({
      code: 'page-too-large',
      at: 'frame.size',
      value: '201 in',
      limit: '200 in',
    });
    const justFits = { ...long, frame: { size: '20 x 200 in' } };
    const [, page] = await pagesOf(justFits, { paper: 'blank' });
    expect(page?.mediaBox[3]).toBeCloseTo(14400, 6);
  });
});

describe('what the file says', () => {
  it('asks viewers not to scale it and to pick the paper by its size (ISO 32000-1, Table 150)', async () => {
    const { preferences } = readPdf(await bytesOf(FERN, {}));
    expect(preferences['PrintScaling']).toBe('None');
    expect(preferences['PickTrayByPDFSize']).toBe('true');
  });

  it('the same job gives the same bytes, whatever the day', async () => {
    vi.useFakeTimers({ toFake: ['Date'], now: new Date('2026-01-02T03:04:05Z') });
    const first = await bytesOf(CHART, { paper: 'a4', units: 'mm' });
    vi.setSystemTime(new Date('2031-12-30T22:11:00Z'));
    const second = await bytesOf(CHART, { paper: 'a4', units: 'mm' });
    expect(first.length).toBeGreaterThan(10_000);
    expect(Buffer.compare(first, second)).toBe(0);
  });

  it('embeds the one family, and never touches a standard font', async () => {
    const { fonts } = readPdf(await bytesOf(LINOCUTS, {}));
    expect(fonts.map(({ name }) => name.replace(/^.*\+/, '')).sort()).toEqual(['Inter-Regular', 'Inter-SemiBold']);
    expect(fonts.every(({ embedded }) => embedded)).toBe(true);
  });

  it('is sound to two readers', async () => {
    const bytes = await bytesOf(LINOCUTS, { paper: 'a4', turnEverySecondPage: true });
    expect(readPdf(bytes).repaired).toBe(false);
    const folder = mkdtempSync(join(tmpdir(), 'template-'));
    try {
      const file = join(folder, 'template.pdf');
      writeFileSync(file, bytes);
      const checked = spawnSync('qpdf', ['--check', file], { encoding: 'utf8' });
      expect(`${checked.error?.message ?? ''}${checked.stderr}`).toBe('');
      expect(checked.stdout).toContain('No syntax or stream encoding errors found');
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

const CASES: readonly (readonly [string, object, Partial<ExportOptions>])[] = [
  ['one window on Letter', FERN, {}],
  ['two layers on A4', CHART, { paper: 'a4', units: 'mm' }],
  ['nine windows on Tabloid', LINOCUTS, { paper: 'tabloid' }],
  ['nine windows on Letter, every second page turned', LINOCUTS, { turnEverySecondPage: true }],
  ['500 mm square on A4, front view', SQUARE, { paper: 'a4', units: 'cm', view: 'front' }],
];

describe('every page', () => {
  for (const [name, job, options] of CASES) {
    it(`${name}: check bars of 100 mm and 4 in, across and up`, async () => {
      for (const page of await pagesOf(job, options)) {
        for (const [length, ends] of [
          [100, '100 mm'],
          [4 * 25.4, '4 in'],
        ] as const) {
          const bars = page.strokes.filter((stroke) => Math.abs(lengthOf(stroke) - length) < 0.001);
          expect(bars.some(isLying)).toBe(true);
          expect(bars.some((bar) => !isLying(bar))).toBe(true);
          expect(page.words.filter(({ text }) => text === ends)).toHaveLength(2);
        }
      }
    });

    it(`${name}: nothing within 12 mm of the paper's edge`, async () => {
      for (const page of await pagesOf(job, options)) {
        const points = [
          ...page.strokes.flatMap(({ from, to }) => [from, to]),
          ...page.curves,
          ...page.words.flatMap((words) =>
            [boxOf(words)].flatMap(({ left, bottom, right, top }) => [
              { x: left, y: bottom },
              { x: right, y: top },
            ]),
          ),
        ];
        expect(Math.min(...points.map(({ x }) => x))).toBeGreaterThanOrEqual(12);
        expect(Math.min(...points.map(({ y }) => y))).toBeGreaterThanOrEqual(12);
        expect(Math.max(...points.map(({ x }) => x))).toBeLessThanOrEqual(page.width - 12);
        expect(Math.max(...points.map(({ y }) => y))).toBeLessThanOrEqual(page.height - 12);
      }
    });

    it(`${name}: no words touch one another, none is mirrored, none lacks a glyph`, async () => {
      for (const { words } of await pagesOf(job, options)) {
        expect(words.length).toBeGreaterThan(10);
        expect(words.filter(({ determinant }) => determinant <= 0)).toEqual([]);
        expect(words.filter(({ missing }) => missing)).toEqual([]);
        expect(touching(words)).toEqual([]);
      }
    });
  }

  it('of the back says so in big letters and has a double, hatched border; the front has a single one', async () => {
    for (const view of ['back', 'front'] as const) {
      const pages = (await pagesOf(FERN, { view })).slice(1);
      for (const page of pages) {
        const word = page.words.filter(({ text }) => text === view.toUpperCase());
        expect(Math.max(...word.map(({ size }) => size))).toBeGreaterThanOrEqual(24);
        expect(page.words.filter(({ text }) => text.includes(view.toUpperCase())).length).toBeGreaterThanOrEqual(2);
        expect(page.words.some(({ text }) => text.includes(view === 'back' ? 'FRONT' : 'BACK'))).toBe(false);
        const slanting = page.strokes.filter(
          ({ from, to }) =>
            Math.abs(Math.abs(from.x - to.x) - Math.abs(from.y - to.y)) < 1e-3 &&
            Math.abs(from.x - to.x) < 1.7 &&
            Math.abs(from.x - to.x) > 1.5,
        );
        expect(slanting.length > 50).toBe(view === 'back');
      }
    }
  });
});

describe('titles', () => {
  it('a sign the font lacks becomes a neutral mark, and a title of any length is cut with …', async () => {
    const title = `Fern 🌿 ${'and another fern, '.repeat(10)}`.slice(0, 190);
    for (const paper of ['letter', 'blank'] as const) {
      const pages = await pagesOf({ ...FERN, title, pictures: [{ title, size: '8 x 10 in' }] }, { paper });
      const words = pages.flatMap((page) => page.words);
      expect(words.some(({ text }) => text.startsWith('Fern □ and') && text.endsWith('…'))).toBe(true);
      expect(words.filter(({ missing }) => missing)).toEqual([]);
      for (const page of pages) {
        for (const { at, last } of page.words) {
          expect(Math.min(at.x, last.x)).toBeGreaterThan(11.9);
          expect(Math.max(at.x, last.x)).toBeLessThan(page.width - 12);
        }
      }
    }
  });

  it('a title of 3,000 characters, of control characters or of nothing makes no trouble', async () => {
    for (const title of ['long '.repeat(600), 'a\u0000\u001b[0m\u202e\ud800b', '']) {
      const context = contextOf(FERN);
      const made = await makeTemplate({ ...context, job: { ...context.job, title } });
      expect(made.ok).toBe(true);
      if (made.ok)
        expect(readPdf(made.value).pages.flatMap((page) => page.words.filter(({ missing }) => missing))).toEqual([]);
    }
  });
});

function lengthOf({ from, to }: Stroke): number {
  return Math.hypot(from.x - to.x, from.y - to.y);
}

function isLying({ from, to }: Stroke): boolean {
  return Math.abs(from.y - to.y) < 1e-3;
}

interface WordBox {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** Round the capitals and figures, to the start of the last glyph. */
function boxOf({ at, last, size, turn }: Words): WordBox {
  const high = size * (25.4 / 72) * 0.72;
  const [up, across] = turn === 0 ? [high, 0] : turn === 180 ? [-high, 0] : [0, turn === 90 ? -high : high];
  const xs = [at.x, last.x, at.x + across];
  const ys = [at.y, last.y, at.y + up];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

function touching(words: readonly Words[]): string[] {
  return words.flatMap((one, index) => {
    const a = boxOf(one);
    return words.slice(index + 1).flatMap((other) => {
      const b = boxOf(other);
      const apart = a.left >= b.right || b.left >= a.right || a.bottom >= b.top || b.bottom >= a.top;
      return apart ? [] : [`${one.text} | ${other.text}`];
    });
  });
}
