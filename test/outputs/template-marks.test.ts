/** What a person joins, pricks and reads by on the tiles: joins, corner marks, overcuts, sizes, page numbers, empty tiles. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/core/geometry/box';
import { makeTemplate, type OutputContext } from '../../src/outputs';
import { divide } from '../../src/outputs/template/joins';
import { contextOf } from './contexts';
import { CHART, FERN, LINOCUTS } from './jobs';
import { readTiles, type ReadTile } from './put-together';
import { readPdf, type ReadPage } from './read-pdf';

async function pagesOf(context: OutputContext): Promise<readonly ReadPage[]> {
  const made = await makeTemplate(context);
  if (!made.ok) throw new Error(made.problems[0]?.message);
  return readPdf(made.value).pages;
}

const SEA_CHART = { title: 'Sea chart', frame: { size: '40 x 60 in' }, pictures: [{ size: '30 x 50 in' }] };

describe('joins', () => {
  it('have a letter each, on two pages of their layer, with halves that meet in one ring', async () => {
    for (const [job, units] of [
      [LINOCUTS, 'in'],
      [CHART, 'mm'],
    ] as const) {
      const tiles = readTiles(await pagesOf(contextOf(job, { units })), units === 'in' ? 25.4 : 1);
      for (const layer of new Set(tiles.map((tile) => tile.layer))) {
        const letters = new Map<string, Point[]>();
        for (const tile of tiles.filter((one) => one.layer === layer)) {
          for (const word of tile.page.words.filter(({ text }) => /^[a-z]{1,2}$/.test(text))) {
            letters.set(word.text, [...(letters.get(word.text) ?? []), onBlank(tile, word.at)]);
          }
        }
        expect(letters.size).toBeGreaterThan(1);
        for (const [first, second, ...more] of letters.values()) {
          expect(more).toEqual([]);
          if (!first || !second) throw new Error('a join has one letter only');
          // Both letters stand in one ring of 4 mm radius.
          expect(Math.hypot(first.x - second.x, first.y - second.y)).toBeLessThan(6);
        }
      }
    }
  });

  it('divide a side into as few parts as fit, on round measures, all within what a page takes', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 3000, noNaN: true }),
        fc.double({ min: 120, max: 380, noNaN: true }),
        fc.array(fc.double({ min: 0, max: 3000, noNaN: true }), { maxLength: 12 }),
        (length, most, avoid) => {
          const ends = divide(length, most, [5, 1], avoid);
          const parts = ends.slice(1).map((end, index) => end - (ends[index] ?? 0));
          expect(ends[0]).toBe(0);
          expect(ends.at(-1)).toBe(length);
          for (const part of parts) {
            expect(part).toBeGreaterThan(0);
            expect(part).toBeLessThanOrEqual(most + 1e-6);
          }
          for (const join of ends.slice(1, -1)) expect(Number.isInteger(join)).toBe(true);
          expect(parts.length).toBeLessThanOrEqual(Math.ceil(length / most) + 1);
        },
      ),
    );
  });

  it('keep clear of a cut that an even division would meet', () => {
    expect(divide(300, 160, [5], [150])).toEqual([0, 140, 300]);
    expect(divide(300, 160, [5], [])).toEqual([0, 150, 300]);
  });
});

function onBlank(tile: ReadTile, at: Point): Point {
  const own = tile.cuts[0];
  // The lower left cross is the tile's corner; its place on the page follows from any cut and its place on the blank.
  const cut = tile.page.strokes.find(({ width, dashed }) => Math.abs(width - 0.4) < 0.01 && !dashed);
  if (!own || !cut) throw new Error('a tile of these jobs has a cut');
  return { x: at.x - cut.from.x + own[0].x, y: at.y - cut.from.y + own[0].y };
}

describe('marks', () => {
  it('a slanting cross has its middle on every corner to be pricked, and dashes run past it as far as the overcut', async () => {
    const context = contextOf(FERN);
    const tiles = readTiles(await pagesOf(context), 25.4);
    const crosses = tiles.flatMap((tile) =>
      tile.page.strokes
        .filter(
          ({ from, to }) =>
            Math.abs(Math.abs(from.x - to.x) - 2) < 0.01 && Math.abs(Math.abs(from.y - to.y) - 2) < 0.01,
        )
        .map(({ from, to }) => onBlank(tile, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 })),
    );
    const dashes = tiles.flatMap((tile) =>
      tile.page.strokes
        .filter(({ dashed, width }) => dashed && Math.abs(width - 0.15) < 0.01)
        .map(({ from, to }) => [onBlank(tile, from), onBlank(tile, to)] as const),
    );
    const lines = context.plan.layers.flatMap((layer) => layer.windows.flatMap((window) => window.cuts.back));
    expect(lines).toHaveLength(4);
    for (const line of lines) {
      expect(Math.min(line.overcutStart, line.overcutEnd)).toBeGreaterThan(0);
      for (const [corner, blade] of [
        [line.start, line.bladeStart],
        [line.end, line.bladeEnd],
      ] as const) {
        expect(crosses.filter((at) => near(at, corner)).length).toBeGreaterThanOrEqual(2);
        expect(dashes.some(([from, to]) => near(from, corner) && near(to, blade))).toBe(true);
      }
    }
  });

  it('openings, borders and guide settings are written with true fractions', async () => {
    // By hand: 8 x 10 with 1/8 overlap in 11 x 14 (common practice, no source).
    const words = (await pagesOf(contextOf(FERN))).slice(1, 5).flatMap((page) => page.words.map(({ text }) => text));
    expect(words).toContain('7 3⁄4 in × 9 3⁄4 in');
    expect(words).toContain('1 5⁄8 in');
    expect(words).toContain('2 1⁄8 in');
    expect(words.some((text) => /^(← )?cut 1 · guide 2 1⁄8 in( →)?$/.test(text))).toBe(true);
  });
});

function near(a: Point, b: Point): boolean {
  return Math.hypot(a.x - b.x, a.y - b.y) < 0.01;
}

describe('the overview', () => {
  it('numbers every printed tile, leaves empty ones out and says how many', async () => {
    const pages = await pagesOf(contextOf(SEA_CHART));
    pages.forEach((page, index) =>
      expect(page.words.some(({ text }) => text === `Page ${index + 1} of ${pages.length}`)).toBe(true),
    );
    const printed = pages.flatMap((page, index) =>
      page.words.some(({ text }) => /^column \d+ of 7, row \d+ of 8/.test(text)) ? [index + 1] : [],
    );
    // 7 columns and 8 rows; inside the ring of 26 tiles at the edge nothing is drawn but the empty middle of the window.
    expect(printed).toHaveLength(26);
    const overview = pages[0]?.words.map(({ text }) => text) ?? [];
    expect(overview).toContain(`pages ${printed[0]} to ${printed.at(-1)}; 30 crossed: not printed`);
    for (const page of printed) expect(overview).toContain(String(page));
  });

  it('gives the remedy for a page printed too small: 100 × true ÷ measured', async () => {
    // Common practice, no source: a page printed at 93.75 % needs 106.67 %.
    const words =
      (await pagesOf(contextOf(FERN)))[0]?.words
        .map(({ text }) => text)
        .join(' ')
        .replaceAll('\u00a0', ' ') ?? '';
    expect(words).toContain('100 × true ÷ measured');
    expect((100 * 100) / 93.75).toBeCloseTo(106.67, 2);
    expect(words).toContain('106.67 %');
    for (const caution of ['Cut away from the body', 'guard', 'conservator']) expect(words).toContain(caution);
  });
});

describe('dimensions of borders beside a shape that reaches furthest in one point', () => {
  it.each(['oval', 'polygon', 'pointed'])('%s: nothing leaves the sheet', async (shape) => {
    const job = {
      title: 'Lady fern',
      frame: { size: '20 x 20 in' },
      windows: { kind: 'window', size: '8 x 10 in', shape },
    };
    const made = await makeTemplate(contextOf(job, { paper: 'letter' }));
    const pages = made.ok ? readPdf(made.value).pages : [];
    expect(pages.length).toBeGreaterThan(4);
    for (const { width, height, strokes } of pages) {
      const ends = strokes.flatMap(({ from, to }) => [from, to]);
      expect(ends.filter(({ x, y }) => x < 0 || y < 0 || x > width || y > height)).toEqual([]);
    }
  });
});
