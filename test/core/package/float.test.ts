/** A canvas in a float frame: gap, face, packing and screws. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { floatOf, type FloatFit } from '../../../src/core/package/float';
import { floatWords } from '../../../src/core/package/float-words';
import { packageProblems } from '../../../src/core/package/problems';
import { showFor } from '../../../src/core/layout/show';
import type { Shelf } from '../../../src/core/shelf/shelf';
import type { Contents } from '../open';
import { inches, inFloatFrame, opened, withoutMat, type Opened } from './opened';

const INCH = 25.4;
const shelf: Shelf = [1, 1.5, 2].map((length) => ({ kind: 'screw', name: `${length} in`, length: length * INCH }));

function floating(frame: Contents['frame'], thickness = '1 1/2', held: Contents['package'] = {}): Opened {
  return withoutMat({
    pictures: [{ kind: 'painting on canvas', size: '16x20', thickness }],
    frame: { size: '16x20', build: 'float', ...frame },
    windows: { kind: 'window', picture: 1, size: '12x16' },
    package: held,
  });
}
const fitOf = ({ job, layout }: Opened): FloatFit => floatOf(job, layout, shelf)!;
const told = ({ job, layout }: Opened) => packageProblems(job, layout).map(({ code }) => code);

describe('a canvas 1 1/2 in deep', () => {
  it.each([
    ['1 1/2', '0', 'flush', 0, 0, 0],
    ['1 3/4', '0', 'flush', 0, 0.25, 0],
    ['1 3/4', '1/8', 'recessed', 0.125, 0.125, 0],
    ['1 3/4', '-1/8', 'proud', -0.125, 0.375, 0],
    ['1 1/4', '0', 'proud', -0.25, 0, 0.25],
    ['1 1/2', '1/8', 'flush', 0, 0, 0.125],
  ])('in a frame %s in deep inside, set back %s: %s', (insideDepth, setBack, words, face, packing, short) => {
    const { lies } = fitOf(floating({ float: { insideDepth, setBack } }));
    expect(lies?.words).toBe(words);
    expect([lies?.face.nominal, lies?.packing, lies?.short].map(inches)).toEqual([face, packing, short]);
  });

  it('is screwed through ledge and packing: no longer than leaves 1/8 in, no shorter than holds 1/4 in', () => {
    const { screws, lies } = fitOf(floating({ mouldingDepth: '2', float: { insideDepth: '1 3/4' } }));
    expect(inches(lies?.ledge)).toBe(0.25);
    // 1/4 of ledge, 1/4 of packing, 1 1/2 of bar.
    expect([screws.longest, screws.shortest].map(inches)).toEqual([1.875, 0.75]);
    expect(screws.chosen?.name).toBe('1.5 in');
  });

  it('behind a ledge of unknown thickness takes no screw of the shelf: that is to be measured, and what it may be longer is told', () => {
    const one = floating({ float: { insideDepth: '1 3/4' } });
    const { screws } = fitOf(one);
    expect([screws.chosen, screws.passes]).toEqual([undefined, 'the ledge']);
    // 1/4 of packing with 1/4 of hold; with 1 1/2 of bar less 1/8.
    expect([screws.shortest, screws.longest].map(inches)).toEqual([0.5, 1.625]);
    expect(floatWords(one.job, fitOf(one), showFor(one.job)).join(' ')).toContain(
      'measure the ledge, and take one that is 1/2 in to 1 5/8 in longer than that, never more',
    );
    expect(told(floating({ float: { insideDepth: '1 3/4' } }, '1 1/2', { fixing: { screw: '1' } }))).toEqual(['screw-depth-unknown']); // prettier-ignore
    expect(told(floating({ float: { insideDepth: '1 3/4' } }, '1 1/2', { fixing: { screw: '3/8' } }))).toEqual(['screw-too-short']); // prettier-ignore
  });

  it('in a frame of unknown depth says how deep it has to be', () => {
    const one = floating({ float: { setBack: '1/4' } });
    expect(fitOf(one).lies).toBeUndefined();
    expect(floatWords(one.job, fitOf(one), showFor(one.job))[1]).toContain('1 3/4 in or more');
  });
});

describe('the gap', () => {
  it('is what the frame is made for, round a canvas of its size', () => {
    const { gap, inside } = fitOf(floating({ float: { gap: '3/8' } }));
    expect([gap.across, gap.up, inside.width, inside.height].map(inches)).toEqual([0.375, 0.375, 16.75, 20.75]);
  });

  it('is uneven round a canvas of another size', () => {
    const one = floating({ size: '16x22', float: { gap: '1/4' } });
    expect([fitOf(one).gap.across, fitOf(one).gap.up].map(inches)).toEqual([0.25, 1.25]);
    expect(floatWords(one.job, fitOf(one), showFor(one.job))[0]).toContain(
      '1/4 in at the left and the right, 1 1/4 in',
    );
  });
});

describe('what is told', () => {
  it('is nothing where all is right', () => {
    expect(told(floating({ float: { insideDepth: '1 3/4' } }))).toEqual([]);
  });
  it('is a frame that is not deep enough', () => {
    expect(told(floating({ float: { insideDepth: '1' } }))).toEqual(['canvas-stands-proud']);
  });
  it('is glazing or a spacer before the canvas, and the fix takes it away', () => {
    const { job, layout } = floating({}, '1', { glazing: {}, spacer: { thickness: '1/8' } });
    expect(packageProblems(job, layout)).toContainEqual(
      expect.objectContaining({
        code: 'float-face-covered',
        severity: 'warning',
        fix: { label: 'Leave it out', edits: [{ at: 'package.glazing', value: undefined }, { at: 'package.spacer', value: undefined }] }, // prettier-ignore
      }),
    );
  });
  it('is a screw that would come out in front', () => {
    const frame = { mouldingDepth: '2', float: { insideDepth: '1 3/4' } };
    expect(told(floating(frame, '1 1/2', { fixing: { screw: '2' } }))).toEqual(['screw-too-long']);
    expect(told(floating(frame, '1 1/2', { fixing: { screw: '1/2' } }))).toEqual(['screw-too-short']);
    expect(told(floating(frame, '1 1/2', { fixing: { screw: '1 3/4' } }))).toEqual([]);
  });
  it('is in words that paper must not go into one', () => {
    const { job, layout } = inFloatFrame(opened({ pictures: [{ kind: 'watercolour', size: '8x10' }] }));
    const found = floatOf(job, layout, [])!;
    expect(found.isCanvas).toBe(false);
    expect(floatWords(job, found, showFor(job))).toEqual([expect.stringMatching(/must not go into a float frame/)]);
  });
});

it('packing and face make up the inside depth, and packing is never negative', () => {
  const tenths = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 10);
  fc.assert(
    fc.property(tenths(100, 500), tenths(100, 500), tenths(-50, 50), (depth, insideDepth, setBack) => {
      const lies = fitOf(
        withoutMat({
          units: 'mm',
          pictures: [{ kind: 'painting on canvas', size: '300x400', thickness: depth }],
          frame: { size: '300x400', build: 'float', float: { insideDepth, setBack } },
          windows: { kind: 'window', picture: 1, size: '200x300' },
        }),
      ).lies!;
      expect(lies.packing).toBeGreaterThanOrEqual(0);
      expect(lies.packing + depth + lies.face.nominal).toBeCloseTo(insideDepth, 9);
      expect(lies.face.nominal).toBeCloseTo(setBack - lies.short, 6);
    }),
    { numRuns: 60 },
  );
});
