/** Curved cuts on the template, read back by an independent reader: every point of the plan within 0.01 mm, after the tiles are joined. */
import { describe, expect, it } from 'vitest';
import type { CutLine } from '../../src/core/cutting/plan';
import type { Point } from '../../src/core/geometry/box';
import { lengthOfEdge, pointOn } from '../../src/core/geometry/edge';
import { SHAPE_KINDS } from '../../src/core/job/written-shape';
import type { OutputContext } from '../../src/outputs/context';
import { makeTemplate } from '../../src/outputs/template/template';
import { contextOf } from './contexts';
import { isCut, readTiles, type ReadTile } from './put-together';
import { readPdf, type Bezier } from './read-pdf';

const CLOSE = 0.01;

const ofShape = (shape: unknown, more: object = {}) => ({
  title: 'Lady fern',
  frame: { size: '11 x 14 in' },
  mat: { layers: [{}, { reveal: '1/4 in' }] },
  windows: { kind: 'window', size: '7 x 9 in', shape, ...more },
});

async function tilesOf(context: OutputContext): Promise<ReadTile[]> {
  const made = await makeTemplate(context);
  if (!made.ok) throw new Error(made.problems[0]?.message);
  return readTiles(readPdf(made.value).pages, 25.4);
}

/** Points along the curves of a plan, about every millimetre. */
function curvePoints(lines: readonly CutLine[]): Point[] {
  return lines
    .flatMap(({ curve }) => curve ?? [])
    .flatMap((edge) => {
      const count = Math.ceil(lengthOfEdge(edge));
      return Array.from({ length: count + 1 }, (_, index) => pointOn(edge, index / count));
    });
}

/** Chords of a Bézier curve, shorter than what their sagitta could hide. */
function chords([a, b, c, d]: Bezier['points']): (readonly [Point, Point])[] {
  const at = (t: number): Point => {
    const [w0, w1, w2, w3] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
    return { x: w0 * a.x + w1 * b.x + w2 * c.x + w3 * d.x, y: w0 * a.y + w1 * b.y + w2 * c.y + w3 * d.y };
  };
  return Array.from({ length: 40 }, (_, index) => [at(index / 40), at((index + 1) / 40)]);
}

function toChord(point: Point, [from, to]: readonly [Point, Point]): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const part = square === 0 ? 0 : ((point.x - from.x) * dx + (point.y - from.y) * dy) / square;
  const along = Math.min(1, Math.max(0, part));
  return Math.hypot(from.x + along * dx - point.x, from.y + along * dy - point.y);
}

function worst(points: readonly Point[], drawn: readonly (readonly [Point, Point])[]): number {
  return Math.max(...points.map((point) => Math.min(...drawn.map((chord) => toChord(point, chord)))));
}

const CURVED: [string, unknown][] = SHAPE_KINDS.filter(
  (kind) => !['rectangle', 'polygon', 'cut-corners', 'stepped'].includes(kind),
).map((kind) => [kind, kind]);
const DRAWN = { kind: 'outline', path: 'M50 0C50 30 100 55 100 85A50 40 0 0 1 0 85C0 55 50 30 50 0Z' };

describe.each([...CURVED, ['a drawing of one’s own', DRAWN] as [string, unknown]])('%s', (_, shape) => {
  it.each(['back', 'front'] as const)(
    'from the %s: every curve of the plan is on paper, within 0.01 mm',
    async (view) => {
      const context = contextOf(ofShape(shape), { view });
      const tiles = await tilesOf(context);
      for (const layer of context.plan.layers) {
        const curves = tiles.filter((tile) => tile.layer === layer.number).flatMap((tile) => tile.curves);
        const points = curvePoints(layer.windows[0]?.cuts[view] ?? []);
        expect(points.length).toBeGreaterThan(20);
        expect(curves.length).toBeGreaterThan(0);
        expect(worst(points, curves.flatMap(chords))).toBeLessThan(CLOSE);
      }
    },
  );
});

it('straight cuts of other shapes are on paper too, from corner to corner', async () => {
  for (const kind of ['polygon', 'cut-corners', 'stepped', 'arch']) {
    const context = contextOf(ofShape(kind), {});
    const tiles = await tilesOf(context);
    for (const layer of context.plan.layers) {
      const drawn = tiles.filter((tile) => tile.layer === layer.number).flatMap((tile) => tile.cuts);
      const straight = (layer.windows[0]?.cuts.back ?? []).filter(({ curve }) => !curve);
      expect(straight.length).toBeGreaterThan(2);
      expect(
        worst(
          straight.flatMap(({ start, end }) => [start, end]),
          drawn,
        ),
      ).toBeLessThan(CLOSE);
    }
  }
});

it('an oval names its axes, its centre from two edges, and has a cross there', async () => {
  const context = contextOf(ofShape('oval'), { paper: 'blank' });
  const made = await makeTemplate(context);
  if (!made.ok) throw new Error('the template is made');
  const { pages } = readPdf(made.value);
  const page = pages.findLast(({ beziers }) => beziers.some(isCut));
  const words = page?.words.map(({ text }) => text) ?? [];
  expect(words.some((text) => /^long axis 9 in up, short axis 7 in across$/.test(text))).toBe(true);
  expect(words.some((text) => /^centre 5 1⁄2 in from the left edge, 7 in from the bottom edge$/.test(text))).toBe(true);
  const centre = { x: 5.5 * 25.4, y: 7 * 25.4 };
  const strokes = page?.strokes ?? [];
  const through = strokes.filter((stroke) => toChord(centre, [stroke.from, stroke.to]) < CLOSE);
  // Two arms of the cross and the two axes.
  expect(through.length).toBeGreaterThanOrEqual(4);
});

it('ticks stand every half inch along a curve, or every centimetre', async () => {
  for (const [units, step] of [
    ['in', 12.7],
    ['mm', 10],
  ] as const) {
    const context = contextOf(ofShape('oval'), { paper: 'blank', units });
    const made = await makeTemplate(context);
    if (!made.ok) throw new Error('the template is made');
    const page = readPdf(made.value).pages.findLast(({ beziers }) => beziers.some(isCut));
    const [line] = context.plan.layers[1]?.windows[0]?.cuts.back ?? [];
    const length = (line?.curve ?? []).reduce((sum, edge) => sum + lengthOfEdge(edge), 0);
    const points = page?.beziers.filter(isCut).flatMap(({ points: bezier }) => chords(bezier)) ?? [];
    const ticks = (page?.strokes ?? []).filter(
      ({ from, to }) =>
        [1.8, 3.2].some((long) => Math.abs(Math.hypot(to.x - from.x, to.y - from.y) - long) < 0.01) &&
        Math.min(...points.map((chord) => toChord(from, chord))) < CLOSE,
    );
    expect(ticks).toHaveLength(Math.ceil(length / step - 1e-9));
  }
});
