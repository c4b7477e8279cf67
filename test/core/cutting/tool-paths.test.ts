/** Order of paths: inner windows first, each window whole, nearest next; and strokes that are only parted at corners. */
import { describe, expect, it } from 'vitest';
import { bladeLength } from '../../../src/core/cutting/outline-cuts';
import type { CutPlan } from '../../../src/core/cutting/plan';
import { planToolPaths, type LayerPaths, type ToolPath } from '../../../src/core/cutting/tool-paths';
import { directionOn, distance } from '../../../src/core/geometry/edge';
import type { WrittenShape } from '../../../src/core/job/written-shape';
import { planned, type Contents } from '../open';

const CHOICES = { view: 'back', corner: 'lower-left' } as const;

function shaped(shape: WrittenShape, more: Contents = {}): CutPlan {
  return planned({
    frame: { size: '16 x 20 in' },
    mat: { layers: [{ thickness: '1/16 in' }, { thickness: '1/16 in', reveal: '1/4 in' }] },
    windows: { kind: 'window', size: '8 x 10 in', shape },
    ...more,
  }).plan;
}

function wall(): CutPlan {
  return planned({
    frame: { size: '40 x 20 in' },
    pictures: Array.from({ length: 8 }, (_, index) => ({ size: index % 3 ? '4 x 5 in' : '5 x 4 in' })),
    windows: { kind: 'grid', columns: 4, gap: '1 1/2 in', items: ['1', '2', '3', '4', '5', '6', '7', '8'] },
  }).plan;
}

function firstLayer(plan: CutPlan): LayerPaths {
  return planToolPaths(plan, CHOICES).layers[0]!;
}

describe('the order', () => {
  it('finishes each window, then takes what begins nearest to where the tool stands', () => {
    const { paths } = firstLayer(wall());
    expect(paths.map(({ number }) => number)).toEqual(paths.map((_, index) => index + 1));
    let at = { x: 0, y: 0 };
    paths.forEach((path, index) => {
      const rest = paths.slice(index);
      const before = paths[index - 1];
      const same = rest.filter(({ windowIndex }) => windowIndex === before?.windowIndex);
      const open: readonly ToolPath[] = same.length > 0 ? same : rest;
      const nearest = Math.min(...open.map(({ from }) => distance(at, from)));
      expect(path.travel).toBeCloseTo(nearest, 9);
      at = path.to;
    });
  });

  it('takes a window that lies in another one first, however near that one is', () => {
    // Two mats of one frame, the one window within the other.
    const [outer, inner] = (['12 x 16 in', '2 x 2 in'] as const).map(
      (size) => planned({ frame: { size: '20 x 24 in' }, windows: { kind: 'window', size } }).plan,
    ) as [CutPlan, CutPlan];
    const [large, small] = [outer.layers[0]!.windows[0]!, inner.layers[0]!.windows[0]!];
    const windows = [
      { ...large, index: 0, name: 'large' },
      { ...small, index: 1, name: 'small' },
    ];
    const plan = { ...outer, layers: [{ ...outer.layers[0]!, windows }] };
    expect(firstLayer(plan).paths.map(({ window }) => window)).toEqual([
      ...Array.from({ length: 4 }, () => 'small'),
      ...Array.from({ length: 4 }, () => 'large'),
    ]);
  });

  it('starts every layer at the origin corner', () => {
    const plan = shaped('arch');
    for (const { paths, travel } of planToolPaths(plan, CHOICES).layers) {
      expect(paths[0]!.travel).toBeCloseTo(Math.hypot(paths[0]!.from.x, paths[0]!.from.y), 9);
      const back = Math.hypot(paths.at(-1)!.to.x, paths.at(-1)!.to.y);
      expect(travel).toBeCloseTo(
        paths.reduce((sum, path) => sum + path.travel, back),
        9,
      );
    }
  });
});

describe.each([
  'rectangle',
  'rounded',
  'oval',
  'arch',
  'pointed',
  'polygon',
  'cut-corners',
  'stepped',
  'scooped',
] as const)('strokes of %s', (shape) => {
  it.each(['left', 'right'] as const)(
    'with the waste on the %s make every cut once, without a corner in any',
    (waste) => {
      for (const view of ['front', 'back'] as const) {
        const plan = shaped(shape, { cutting: { waste } });
        planToolPaths(plan, { view, corner: 'lower-left' }).layers.forEach(({ paths, cutLength }, index) => {
          const cuts = plan.layers[index]!.windows[0]!.cuts[view];
          expect(paths.flatMap((path) => path.cuts).sort()).toEqual(cuts.map(({ name }) => name).sort());
          for (const { edges } of paths) {
            edges.slice(1).forEach((edge, place) => {
              const before = edges[place]!;
              expect(distance(before.to, edge.from)).toBeLessThan(1e-9);
              const [a, b] = [directionOn(before, 1), directionOn(edge, 0)];
              expect(a.x * b.x + a.y * b.y).toBeGreaterThan(1 - 1e-9);
            });
          }
          const ring = paths.length === 1 && cuts.length > 1 ? plan.layers[index]!.bevel.run : 0;
          expect(cutLength).toBeCloseTo(cuts.reduce((sum, cut) => sum + bladeLength(cut), 0) + ring, 6);
        });
      }
    },
  );
});

describe('an outline without corners', () => {
  it('is entered on the line and runs past its start by the overcut that is set', () => {
    for (const shape of ['oval', 'rounded'] as const) {
      const plan = shaped(shape);
      const rings = planToolPaths(plan, { ...CHOICES, overcut: 3 }).layers.flatMap(({ paths }) => paths);
      for (const ring of rings) {
        expect(ring.closed).toBe(true);
        expect(ring.overcutStart).toBe(0);
        // The oval's single cut brings what the plan was made with.
        const past = shape === 'rounded' ? 3 : plan.layers[0]!.bevel.run;
        expect(ring.overcutEnd).toBeCloseTo(past, 9);
        const away = distance(ring.from, ring.to);
        expect(away).toBeGreaterThan(past * 0.99);
        expect(away).toBeLessThanOrEqual(past + 1e-9);
      }
    }
  });
});
