/** The template read back by an independent reader and put together: every cut lies where the plan has it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ExportOptions, PaperName } from '../../src/bridge';
import { makeTemplate, type OutputContext } from '../../src/outputs';
import { contextOf, tryContext } from './contexts';
import { ASIDE, CHART, FERN, LINOCUTS, SQUARE } from './jobs';
import { error, isCut, readTiles, type ReadTile } from './put-together';
import { readPdf, type ReadDocument } from './read-pdf';

/** What the issue of a template asks for: within a hundredth of a millimetre after the tiles are put together. */
const TOLERANCE = 0.01;
const MM_PER_UNIT = { in: 25.4, mm: 1, cm: 10 };

async function read(context: OutputContext): Promise<ReadDocument> {
  const made = await makeTemplate(context);
  if (!made.ok) throw new Error(made.problems[0]?.message);
  return readPdf(made.value);
}

function tilesOf(context: OutputContext, document: ReadDocument): ReadTile[] {
  return readTiles(document.pages, MM_PER_UNIT[context.options.units]);
}

/** The worst error of any cut of the plan, and the worst of any drawn piece that belongs to no cut. */
function worstErrors(context: OutputContext, tiles: readonly ReadTile[]): { missing: number; stray: number } {
  let missing = 0;
  let stray = 0;
  for (const layer of context.plan.layers) {
    const pieces = tiles.filter((tile) => tile.layer === layer.number).flatMap((tile) => tile.cuts);
    const lines = layer.windows.flatMap((window) => window.cuts[context.options.view]);
    for (const line of lines) missing = Math.max(missing, error([line.start, line.end], pieces));
    for (const [from, to] of pieces) {
      const off = lines.map(({ start, end }) => {
        const low = { x: Math.min(start.x, end.x), y: Math.min(start.y, end.y) };
        const high = { x: Math.max(start.x, end.x), y: Math.max(start.y, end.y) };
        return Math.max(...[from, to].flatMap((at) => [low.x - at.x, at.x - high.x, low.y - at.y, at.y - high.y]));
      });
      stray = Math.max(stray, Math.min(...off));
    }
  }
  return { missing, stray };
}

const PAPERS: readonly PaperName[] = ['letter', 'legal', 'tabloid', 'a4', 'a3'];

describe('the tiles put together by their registration marks', () => {
  const jobs = { FERN, CHART, LINOCUTS, ASIDE, SQUARE };
  for (const [name, job] of Object.entries(jobs)) {
    for (const paper of PAPERS) {
      it(`${name} on ${paper}: every cut line within ${TOLERANCE} mm of the plan, and no other`, async () => {
        const units: ExportOptions['units'] = name === 'FERN' || name === 'LINOCUTS' ? 'in' : 'mm';
        const context = contextOf(job, { paper, units });
        const tiles = tilesOf(context, await read(context));
        const { missing, stray } = worstErrors(context, tiles);
        expect(missing).toBeLessThan(TOLERANCE);
        expect(stray).toBeLessThan(TOLERANCE);
      });
    }
  }

  it('the front view shows the cuts as they hang, the back view their mirror image', async () => {
    for (const view of ['front', 'back'] as const) {
      const context = contextOf(ASIDE, { paper: 'a3', units: 'mm', view });
      const tiles = tilesOf(context, await read(context));
      expect(worstErrors(context, tiles).missing).toBeLessThan(TOLERANCE);
      // By hand: the opening starts 37 mm from the left as it hangs and is 310 mm wide; the face edge lies 1.5 mm further out.
      const lefts = tiles.flatMap((tile) => tile.cuts.flatMap((cut) => cut.map(({ x }) => x)));
      expect(Math.min(...lefts)).toBeCloseTo(view === 'front' ? 37 - 1.5 : 500 - 37 - 310, 2);
    }
  });

  it('pages printed head down fit as well', async () => {
    const context = contextOf(LINOCUTS, { paper: 'letter', turnEverySecondPage: true });
    const document = await read(context);
    const turns = document.pages.flatMap((page) =>
      page.words
        .filter(({ text }) => text === 'BACK')
        .slice(0, 1)
        .map(({ turn }) => turn),
    );
    expect(turns.filter((turn) => turn === 180).length).toBeGreaterThanOrEqual(4);
    const { missing, stray } = worstErrors(context, tilesOf(context, document));
    expect(missing).toBeLessThan(TOLERANCE);
    expect(stray).toBeLessThan(TOLERANCE);
  });

  // Common practice, no source: a 500 x 500 mm blank tiled on A4 and on Letter must come out at 500.0.
  for (const paper of ['a4', 'letter'] as const) {
    it(`the trimmed parts of a 500 x 500 mm blank on ${paper} add up to 500.0 mm both ways`, async () => {
      const context = contextOf(SQUARE, { paper, units: 'mm' });
      const tiles = tilesOf(context, await read(context));
      const across = tiles.filter(({ corner }) => corner.y === 0);
      const up = tiles.filter(({ corner }) => corner.x === 0);
      expect(across.length).toBeGreaterThan(1);
      expect(across.reduce((sum, { own }) => sum + own.width, 0)).toBeCloseTo(500, 3);
      expect(up.reduce((sum, { own }) => sum + own.height, 0)).toBeCloseTo(500, 3);
    });
  }

  it('any job: sizes, windows, layers, paper, view and units', async () => {
    const inches = (most: number) => fc.integer({ min: 1, max: most * 16 }).map((steps) => `${steps}/16 in`);
    const job = fc.record({
      width: fc.integer({ min: 4 * 16, max: 30 * 16 }),
      height: fc.integer({ min: 4 * 16, max: 30 * 16 }),
      windows: fc.integer({ min: 1, max: 4 }),
      reveals: fc.array(inches(1), { maxLength: 3 }),
      paper: fc.constantFrom(...PAPERS),
      view: fc.constantFrom('front' as const, 'back' as const),
      units: fc.constantFrom('in' as const, 'mm' as const, 'cm' as const),
      reverse: fc.boolean(),
    });
    await fc.assert(
      fc.asyncProperty(job, async ({ width, height, windows, reveals, paper, view, units, reverse }) => {
        const bevel = { direction: reverse ? 'reverse' : 'standard' };
        const written = {
          pictures: Array.from({ length: windows }, () => ({
            size: {
              width: `${Math.max(1, Math.floor(width / windows) - 32)}/16 in`,
              height: `${Math.max(1, height - 48)}/16 in`,
            },
          })),
          frame: { size: { width: `${width}/16 in`, height: `${height}/16 in` } },
          mat: { layers: [{ bevel }, ...reveals.map((reveal) => ({ bevel, reveal }))] },
        };
        const context = tryContext(written, { paper, view, units });
        // What can't be laid out is drawn anew.
        fc.pre(context !== undefined);
        const { missing, stray } = worstErrors(context, tilesOf(context, await read(context)));
        expect(missing).toBeLessThan(TOLERANCE);
        expect(stray).toBeLessThan(TOLERANCE);
      }),
      { numRuns: 12 },
    );
  });
});

describe("a page of the blank's own size", () => {
  it('holds each layer where its corner is the origin', async () => {
    const context = contextOf(CHART, { paper: 'blank', units: 'mm' });
    const document = await read(context);
    const pages = document.pages.filter(
      (page) => Math.abs(page.width - 300) < 0.001 && Math.abs(page.height - 400) < 0.001,
    );
    expect(pages).toHaveLength(2);
    const tiles = pages.map((page, index) => ({
      layer: index + 1,
      page,
      cuts: page.strokes.filter(isCut).map(({ from, to }) => [from, to] as const),
      curves: [],
      own: { width: 300, height: 400 },
      corner: { x: 0, y: 0 },
      move: (point: { x: number; y: number }) => point,
    }));
    const { missing, stray } = worstErrors(context, tiles);
    expect(missing).toBeLessThan(TOLERANCE);
    expect(stray).toBeLessThan(TOLERANCE);
  });
});
