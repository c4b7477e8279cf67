/** Any picture in its frame without a mat: what is seen of it, in every unit, and turned. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { insets, sizeOf } from '../../../src/core/geometry/box';
import { readJob } from '../../../src/core/job/read';
import { layOut } from '../../../src/core/layout/lay-out';
import { planned, tryPlan, written, type Contents } from '../open';
import { expectMoved, plannedAfter, turned, WAYS } from './turn';

/** Tenths of a millimetre. */
const tenths = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((count) => count / 10);

/** A picture near the size of its frame, or in one made to fit. */
const anyBare = fc
  .record({
    width: tenths(100, 900),
    height: tenths(100, 900),
    more: fc.option(fc.tuple(tenths(-6, 6), tenths(-6, 6))),
    lip: tenths(0, 12),
    allowance: tenths(0, 6),
    mouldingWidth: tenths(12, 60),
    gap: tenths(0, 20),
    isFloat: fc.boolean(),
    turned: fc.constantFrom(undefined, 90 as const, 180 as const, 270 as const),
    units: fc.constantFrom('in' as const, 'mm' as const, 'cm' as const),
  })
  .map(({ width, height, more, lip, allowance, mouldingWidth, gap, isFloat, turned, units }) => {
    const lying = turned === 90 || turned === 270;
    const [w, h] = lying ? [height, width] : [width, height];
    const mm = (length: number) => `${Number(length.toFixed(1))} mm`;
    const size = more && { size: { width: mm(w + more[0]), height: mm(h + more[1]) } };
    const job: Contents = {
      units,
      pictures: [{ kind: 'painting on panel', size: { width: mm(width), height: mm(height) } }],
      frame: {
        ...size,
        mouldingWidth: mm(mouldingWidth),
        ...(isFloat ? { build: 'float', float: { gap: mm(gap) } } : { lip: mm(lip), allowance: mm(allowance) }),
      },
      mat: { layers: [] },
      windows: turned === undefined ? '1' : { kind: 'window', picture: 1, turned },
    };
    return { job, picture: { w, h }, blank: { w: w + (more?.[0] ?? 0), h: h + (more?.[1] ?? 0) }, lip, allowance, gap, mouldingWidth, isFloat }; // prettier-ignore
  });

describe('of any picture without a mat', () => {
  it('is seen what the frame does not cover, in the middle of it', () => {
    fc.assert(
      fc.property(anyBare, ({ job, picture, blank, lip, allowance, gap, mouldingWidth, isFloat }) => {
        const read = readJob(written(job));
        const laid = read.ok ? layOut(read.value.job) : undefined;
        const layout = laid?.ok ? laid.value : laid?.sketch;
        const [window] = layout!.windows;
        const inner = (side: 'w' | 'h') => (isFloat ? blank[side] + 2 * gap : blank[side] + allowance);
        const open = (side: 'w' | 'h') => (isFloat ? inner(side) : inner(side) - 2 * lip);
        const { width, height } = sizeOf(window!.window);
        expect(width).toBeCloseTo(Math.min(picture.w, open('w')), 6);
        expect(height).toBeCloseTo(Math.min(picture.h, open('h')), 6);
        const out = layout!.frame.outside;
        expect(out.width).toBeCloseTo(inner('w') + 2 * (mouldingWidth - (isFloat ? 0 : lip)), 6);
        const over = insets(window!.window, window!.picture!.sheet);
        expect(over.left).toBeCloseTo(over.right, 6);
        expect(over.top).toBeCloseTo(over.bottom, 6);
        // It can be framed where it goes between the walls, and the lip reaches over it on every side.
        const near = (['w', 'h'] as const).some(
          (side) => Math.abs(picture[side] - inner(side)) < 1e-5 || Math.abs(picture[side] - open(side)) < 1e-5,
        );
        fc.pre(!near);
        const goesIn = (['w', 'h'] as const).every((side) => picture[side] <= inner(side));
        const holds = isFloat || (['w', 'h'] as const).every((side) => picture[side] > open(side));
        expect(laid?.ok).toBe(goesIn && holds);
      }),
      { numRuns: 300, endOnFailure: true },
    );
  });

  it('nothing is cut, and no unit or step of display changes anything', () => {
    fc.assert(
      fc.property(anyBare, ({ job }) => {
        const one = tryPlan(written(job)).planned;
        fc.pre(one !== undefined);
        expect(one.plan.layers).toEqual([]);
        for (const units of ['in', 'mm', 'cm'] as const) {
          const other = tryPlan(written({ ...job, units, steps: { in: '1/64', mm: '0.1' } })).planned!;
          expect(other.layout.windows).toEqual(one.layout.windows);
          expect(other.layout.frame).toEqual(one.layout.frame);
        }
      }),
      { numRuns: 100, endOnFailure: true },
    );
  });

  it.each(WAYS)('the layout turns as the job does: %s', (way) => {
    fc.assert(
      fc.property(anyBare, ({ job }) => {
        const before = tryPlan(written(job)).planned;
        fc.pre(before !== undefined);
        expectMoved(before.layout, plannedAfter(before, way).layout, way, 1e-6);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  it('turning over leaves the job as it is, also what it keeps for a mat', () => {
    const before = planned({
      pictures: [{ size: '8 x 10 in' }],
      mat: { layers: [] },
      windows: { kind: 'window', picture: 1, shape: 'arch' },
      borders: { rule: 'bottom-amount' },
    });
    for (const way of ['left-right', 'top-bottom'] as const)
      expect(turned(before, way)).toEqual({ ok: true, value: before.written, problems: [] });
    expect(turned(before, 'left')).toMatchObject({ ok: true, value: { borders: { rule: 'bottom-amount' } } });
  });
});
