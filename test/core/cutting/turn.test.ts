/** A quarter turn of the job turns the cut plan: every line, in both views, with its guide setting. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { CutLine } from '../../../src/core/cutting/plan';
import type { Point, Size } from '../../../src/core/geometry/box';
import { contents } from '../arbitrary-jobs';
import { turnable, turnBackPoint, turnJob, turnPoint } from '../layout/turn';
import { tryPlan, written } from '../open';

const near = (a: Point, b: Point) => Math.abs(a.x - b.x) < 1e-7 && Math.abs(a.y - b.y) < 1e-7;

function expectTurned(
  line: CutLine,
  others: readonly CutLine[],
  turn: (point: Point, blank: Size) => Point,
  blank: Size,
): void {
  const [start, end, bladeStart] = [line.start, line.end, line.bladeStart].map((point) => turn(point, blank));
  const found = others.find((other) => near(other.start, start as Point) && near(other.end, end as Point));
  expect(found).toBeDefined();
  expect(near(found?.bladeStart ?? { x: NaN, y: NaN }, bladeStart as Point)).toBe(true);
  expect(found?.guideSetting).toBeCloseTo(line.guideSetting ?? NaN, 7);
  expect(found).toMatchObject({ bevelSide: line.bevelSide, slopesTo: line.slopesTo });
}

it('front and back', () => {
  const jobs = fc
    .constantFrom('made to fit' as const, 'given' as const)
    .chain(contents)
    .map((job) => turnable(written(job)));
  fc.assert(
    fc.property(jobs, (job) => {
      const { planned } = tryPlan(job);
      fc.pre(planned !== undefined);
      const turned = tryPlan(turnJob(job)).planned?.plan;
      planned.plan.layers.forEach((layer, index) => {
        const lines = (of: typeof layer | undefined, view: 'front' | 'back') =>
          (of?.windows ?? []).flatMap(({ cuts }) => cuts[view]);
        const other = turned?.layers[index];
        expect(lines(other, 'front')).toHaveLength(lines(layer, 'front').length);
        for (const line of lines(layer, 'front')) expectTurned(line, lines(other, 'front'), turnPoint, layer.blank);
        for (const line of lines(layer, 'back')) expectTurned(line, lines(other, 'back'), turnBackPoint, layer.blank);
        const moves = (of: typeof layer | undefined) => of?.order.back.filter(({ moveGuide }) => moveGuide).length;
        expect(moves(other)).toBe(moves(layer));
      });
    }),
    { numRuns: 50, maxSkipsPerRun: 3 },
  );
});
