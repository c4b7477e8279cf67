/** Whether a package goes into its rabbet or a groove, and what is left free. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitOf, squeezeOf } from '../../../src/core/package/fit';
import { grooveFits } from '../../../src/core/package/groove-fit';
import { fitWords, grooveWords } from '../../../src/core/package/fit-words';
import { stackOf } from '../../../src/core/package/stack';
import { showFor } from '../../../src/core/layout/show';
import type { Contents } from '../open';
import { fitIn, measured, opened, stackIn, withoutMat } from './opened';

/** 2 + 1 + 3 mm, and 2 for points: 8 mm, from 7.4 to 8.9. */
const eight: Contents = {
  units: 'mm',
  windows: { kind: 'window', size: '200 x 250' },
  mat: { layers: [{ thickness: 1, thinnest: 0.9, thickest: 1.1 }] },
  package: {
    glazing: { thickness: 2, thinnest: 1.8, thickest: 2.3 },
    mountBoard: { without: true },
    backing: { thickness: 3, thinnest: 2.7, thickest: 3.5 },
    fixing: { room: 2 },
  },
};
const inRabbet = (rabbetDepth?: number, more: Contents = {}): Contents => ({
  ...eight,
  ...more,
  frame: { size: '300 x 350', ...(rabbetDepth === undefined ? {} : { rabbetDepth }), ...more.frame },
});
const close = (value: number) => expect.closeTo(value, 9) as number;

describe('in a rabbet', () => {
  it.each([
    [9, 'fits', 1.6, 1, 0.1],
    [8.9, 'fits', 1.5, 0.9, 0],
    [8.8, 'may not fit', 1.4, 0.8, -0.1],
    [8, 'may not fit', 0.6, 0, -0.9],
    [7.9, 'does not fit', 0.5, -0.1, -1],
    [5, 'does not fit', -2.4, -3, -3.9],
  ])('%d mm deep: %s', (depth, verdict, best, nominal, worst) => {
    const fit = fitIn(opened(inRabbet(depth)));
    expect(fit).toMatchObject({ verdict, free: { best: close(best), nominal: close(nominal), worst: close(worst) } });
    expect(fit.room).toEqual({ kind: 'rabbet', name: 'the rabbet', at: 'frame.rabbetDepth', depth });
  });

  it('of unknown depth has no verdict, but says what is needed', () => {
    const { job, layout } = opened(inRabbet());
    const fit = fitOf(job, stackOf(job, layout));
    expect(fit).toMatchObject({ verdict: 'depth unknown', needs: { nominal: close(8), greatest: close(8.9) } });
    expect(fit.free).toBeUndefined();
    expect(fitWords(job, fit, showFor(job))[0]).toMatch(/has to be 8 mm deep as all is named, and 8\.90 mm .* 9 mm/);
  });

  it('too deep for it, is held behind by clips', () => {
    const clips = { package: { ...eight.package, fixing: { kind: 'offset clips' as const } } };
    expect(fitIn(opened(inRabbet(5, clips)))).toMatchObject({ verdict: 'held behind', free: { nominal: close(-1) } });
    expect(fitIn(opened(inRabbet(7, clips))).verdict).toBe('fits');
  });

  it('is squeezed by what it is too deep, and not where it fits or is held behind', () => {
    expect(squeezeOf(fitIn(opened(inRabbet(7.9))))).toEqual({ least: 0, nominal: close(0.1), greatest: close(1) });
    expect(squeezeOf(fitIn(opened(inRabbet(9))))).toBeUndefined();
    expect(squeezeOf(fitIn(opened(inRabbet())))).toBeUndefined();
  });
});

describe('in grooves', () => {
  const grooves = (depths: readonly number[]) => ({
    frame: { build: 'with back' as const, grooves: [...depths] },
    package: { ...eight.package, fixing: {} },
  });

  it('goes what lies before the back: glazing and mat, 2 + 1 mm, from 2.7 to 3.4', () => {
    const { job, layout } = opened(inRabbet(undefined, grooves([5, 2.9, 3.2])));
    const found = grooveFits(job, stackOf(job, layout));
    expect(found.map(({ room, verdict }) => [room.depth, verdict])).toEqual([
      [2.9, 'does not fit'],
      [3.2, 'may not fit'],
      [5, 'fits'],
    ]);
    expect(found[1]?.free).toEqual({ best: close(0.5), nominal: close(0.2), worst: close(-0.2) });
    expect(fitOf(job, stackOf(job, layout))).toMatchObject({ verdict: 'fits', room: { name: 'groove 3' } });
    expect(found.map((one) => grooveWords(one, showFor(job)))).toEqual([
      expect.stringContaining('2.90 mm behind the lip: it is 0.10 mm too deep as named'),
      expect.stringContaining('0.20 mm to spare'),
      expect.stringContaining('fill 1.60 mm to 2.30 mm'),
    ]);
  });

  it('takes the nearest that holds it at its thickest, else the nearest that may, else the furthest', () => {
    const chosen = (...depths: number[]) => fitIn(opened(inRabbet(undefined, grooves(depths)))).room?.depth;
    expect(chosen(2, 3.1, 4, 6)).toBe(4);
    expect(chosen(2, 3.1, 3.3)).toBe(3.1);
    expect(chosen(1, 2)).toBe(2);
  });
});

it('a float frame has no rabbet to fit', () => {
  const canvas = { pictures: [{ kind: 'painting on canvas' as const, size: '300 x 350' }], frame: { build: 'float' as const, rabbetDepth: 3 } }; // prettier-ignore
  expect(fitIn(withoutMat({ units: 'mm', ...canvas })).verdict).toBe('float frame');
});

it('free depth is worst at the thickest and best at the thinnest, and falls by what is added', () => {
  const thickness = fc.integer({ min: 10, max: 80 }).map((tenths) => tenths / 10);
  fc.assert(
    fc.property(thickness, thickness, fc.integer({ min: 30, max: 300 }), (glass, more, tenths) => {
      const depth = tenths / 10;
      const of = (glazing: number, spacer?: number) =>
        fitIn(
          opened(
            inRabbet(depth, {
              package: {
                ...eight.package,
                glazing: { thickness: glazing },
                ...(spacer === undefined ? {} : { spacer: { thickness: spacer } }),
              },
            }),
          ),
        ).free!;
      const free = of(glass);
      expect(free.worst).toBeLessThanOrEqual(free.nominal);
      expect(free.nominal).toBeLessThanOrEqual(free.best);
      expect(of(glass, more).worst).toBeCloseTo(free.worst - more, 9);
    }),
    { numRuns: 40 },
  );
});

it('no layers at all leave the sum of the rest', () => {
  const { whole } = stackIn(
    withoutMat({ pictures: [{ size: '8x10', ...measured('1 mm') }], package: { hinging: { method: 'none' }, fixing: { room: 0 } } }), // prettier-ignore
  );
  expect(whole.nominal).toBeCloseTo(2.5 + 1 + 1.5875 + 4.7625, 9);
});
